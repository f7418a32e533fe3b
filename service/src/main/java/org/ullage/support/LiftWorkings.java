package org.ullage.support;

import java.util.ArrayList;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/** Derives the steps of a {@link LiftLimit} on demand, from the same numbers. */
final class LiftWorkings {

    private LiftWorkings() {}

    static Workings of(LiftLimit lift) {
        List<Step> steps = new ArrayList<>();
        steps.addAll(hands(lift.origin(), "origin"));
        steps.addAll(hands(lift.destination(), "destination"));
        steps.add(given(
                "distance multiplier for a travel of " + SupportText.both(lift.travel()),
                "DM",
                lift.distanceMultiplier(),
                "0.82 + 4.5 cm / D",
                Niosh.DISTANCE));
        Step origin = lift.step(lift.origin(), "origin");
        Step destination = lift.step(lift.destination(), "destination");
        steps.add(origin);
        steps.add(destination);
        steps.add(new Step(
                "the lower of the two; frequency multiplier " + lift.spell().source() + ", coupling multiplier "
                        + lift.grip().source(),
                "min(RWL_o, RWL_d)",
                List.of(origin.result(), destination.result()),
                Term.of("RWL", lift.limit()),
                Niosh.EQUATION));
        return new Workings("Lifting limit by the revised NIOSH equation", steps);
    }

    private static List<Step> hands(HandPosition hands, String end) {
        return List.of(
                given(
                        "horizontal multiplier at the " + end + ", hands " + SupportText.both(hands.reach()) + " away",
                        "HM",
                        hands.horizontalMultiplier(),
                        "25 cm / H",
                        Niosh.EQUATION),
                given(
                        "vertical multiplier at the " + end + ", hands " + SupportText.both(hands.height()) + " high",
                        "VM",
                        hands.verticalMultiplier(),
                        "1 - 0.003 |V - 75 cm|",
                        Niosh.EQUATION),
                given(
                        "asymmetry multiplier at the " + end + ", turned by " + hands.turnDegrees() + " degrees",
                        "AM",
                        hands.asymmetryMultiplier(),
                        "1 - 0.0032 A",
                        Niosh.LIMITS));
    }

    private static Step given(String meaning, String symbol, double value, String rule, Source source) {
        return Step.given(meaning, Term.number(symbol, value), rule, source);
    }
}
