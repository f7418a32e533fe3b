package org.ullage.support;

import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/** Derives the steps of a {@link Rack} on demand, for one of its channels. */
final class RackWorkings {

    private static final Source STATICS = Source.computed("elementary beam theory", "simple beam with point loads");

    private final Rack rack;
    private final SimpleBeam beam;
    private final List<Term> terms = new ArrayList<>();

    private RackWorkings(Rack rack) {
        this.rack = rack;
        this.beam = rack.channel();
    }

    static Workings of(Rack rack) {
        return new RackWorkings(rack).workings();
    }

    private Workings workings() {
        Term span = SupportText.term("L", beam.span());
        List<Step> steps = new ArrayList<>();
        List<String> left = new ArrayList<>();
        List<String> right = new ArrayList<>();
        for (int i = 0; i < beam.loads().size(); i++) {
            PointLoad load = beam.loads().get(i);
            String force = force(i);
            String place = "a_" + (i + 1);
            terms.add(Term.of(force, load.load()));
            terms.add(SupportText.term(place, load.place()));
            left.add(force + " * (1 - " + place + " / L)");
            right.add(force + " * " + place + " / L");
            steps.add(Step.given(
                    "share of one of " + rack.channels() + " channels in load " + (i + 1) + ", "
                            + SupportText.both(load.place()) + " from the left",
                    Term.of(force, load.load()),
                    "given",
                    Source.given()));
        }
        terms.add(span);
        Step leftPull = reaction("left", String.join(" + ", left), "R_l", beam.leftReaction());
        steps.add(leftPull);
        steps.add(reaction("right", String.join(" + ", right), "R_r", beam.rightReaction()));
        Step moment = moment(leftPull.result());
        steps.add(moment);
        steps.add(new Step(
                "bending stress; allowable " + rack.section().allowable().textInBothSystems(),
                "M / S",
                List.of(moment.result(), Term.of("S", rack.section().modulus())),
                Term.of("f", rack.stressCheck().actual()),
                rack.section().source()));
        steps.add(Step.given(
                "greatest deflection; allowed " + rack.limit() + ", "
                        + SupportText.both(rack.limit().of(beam.span())),
                SupportText.term("y", rack.deflectionCheck().actual()),
                "sum of P b x (L^2 - b^2 - x^2) / (6 E I L) where it is greatest",
                STATICS));
        return new Workings("Vessels on a rack", steps);
    }

    private Step reaction(String side, String formula, String symbol, Force value) {
        return new Step(
                "pull on the " + side + " rod and anchor of one channel",
                formula,
                terms,
                Term.of(symbol, value),
                STATICS);
    }

    /** The moment under the load where it is greatest, from the left. */
    private Step moment(Term leftPull) {
        int worst = 0;
        for (int i = 1; i < beam.loads().size(); i++) {
            if (beam.momentAt(place(i)).compareTo(beam.momentAt(place(worst))) > 0) {
                worst = i;
            }
        }
        StringBuilder formula = new StringBuilder("R_l * x");
        for (int i = 0; i < beam.loads().size(); i++) {
            if (place(i).compareTo(place(worst)) < 0) {
                formula.append(" - ")
                        .append(force(i))
                        .append(" * (x - a_")
                        .append(i + 1)
                        .append(')');
            }
        }
        List<Term> known = new ArrayList<>(terms);
        known.add(leftPull);
        known.add(SupportText.term("x", place(worst)));
        return new Step(
                "greatest bending moment, under load " + (worst + 1),
                formula.toString(),
                known,
                Term.of("M", beam.greatestMoment()),
                STATICS);
    }

    private Length place(int i) {
        return beam.loads().get(i).place();
    }

    private static String force(int i) {
        return "P_" + (i + 1);
    }
}
