package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Source;
import org.ullage.quantity.Force;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.Moment;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/**
 * A vessel on a wall bracket: M = W e; the top row of anchors is pulled out by M over the distance of the rows, shared by its anchors;
 * all anchors share the weight as shear. A force away from the wall, such as that of an earthquake, pulls the top row as well, on the
 * safe side all of it. Immutable.
 *
 * @param carried what hangs on it: the waterlogged mass, or twice that where the code asks so
 * @param arm distance from the wall to the centre of gravity, zero or more
 * @param rows vertical distance from the lowest to the highest row of anchors, above zero
 * @param topAnchors anchors in the top row, 1 or more
 * @param allAnchors all anchors, no fewer than those of the top row
 * @param outward force away from the wall, zero or more
 * @param strength what one anchor may carry
 */
public record Bracket(
        Mass carried, Length arm, Length rows, int topAnchors, int allAnchors, Force outward, AnchorStrength strength)
        implements Serializable {

    private static final Source STATICS = Source.computed(
            "statics of a rigid bracket", "turning about the lowest row, wall pressure below neglected");

    private static final Source INTERACTION = Source.fromMemory(
            "ACI 318, Building Code Requirements for Structural Concrete",
            "anchoring to concrete, interaction of tension and shear: the straight line is on the safe side of it");

    /**
     * Checks the geometry.
     *
     * @param carried what hangs on it
     * @param arm distance from the wall to the centre of gravity
     * @param rows vertical distance of the rows
     * @param topAnchors anchors in the top row
     * @param allAnchors all anchors
     * @param outward force away from the wall
     * @param strength what one anchor may carry
     * @throws OutOfRangeException if the mass or the distance of the rows is zero or negative, another value is negative, or the
     *     anchors do not add up
     */
    public Bracket {
        Inputs.requirePositive("mass carried by the bracket", carried, "take the waterlogged mass of the vessel");
        Inputs.requireNotNegative("distance from the wall to the centre of gravity", arm, "give it without a sign");
        Inputs.requirePositive("distance of the anchor rows", rows, "a bracket with one row of anchors is not covered");
        Inputs.requireNotNegative("force away from the wall", outward, "give its size without a sign");
        Inputs.requireCount("anchors in the top row", topAnchors, 1, "count the anchors of the top row");
        Inputs.requireCount("anchors in all", allAnchors, topAnchors, "count those of the top row among them");
    }

    /**
     * The moment at the wall.
     *
     * @return W e
     */
    public Moment moment() {
        return Moment.ofSi(carried.weight().si() * arm.si());
    }

    /**
     * Pull on one anchor of the top row.
     *
     * @return (M / s + F) / n
     */
    public Force tensionPerAnchor() {
        return Force.ofSi((moment().si() / rows.si() + outward.si()) / topAnchors);
    }

    /**
     * Shear on one anchor.
     *
     * @return W / N
     */
    public Force shearPerAnchor() {
        return Force.ofSi(carried.weight().si() / allAnchors);
    }

    /**
     * Pull against what an anchor may carry.
     *
     * @return the verdict with its margin
     */
    public LimitCheck<Force> tensionCheck() {
        return new LimitCheck<>("pull on a top anchor", tensionPerAnchor(), strength.tension(), Source.given());
    }

    /**
     * Shear against what an anchor may carry.
     *
     * @return the verdict with its margin
     */
    public LimitCheck<Force> shearCheck() {
        return new LimitCheck<>("shear on an anchor", shearPerAnchor(), strength.shear(), Source.given());
    }

    /**
     * Use of an anchor of the top row by pull and shear together.
     *
     * @return the sum of the two uses; 1 is the limit
     */
    public double combinedUse() {
        return tensionCheck().use() + shearCheck().use();
    }

    /**
     * The verdict on pull and shear together.
     *
     * @return whether {@link #combinedUse()} is no more than 1
     */
    public boolean passes() {
        return combinedUse() <= 1;
    }

    /**
     * What the reader must know.
     *
     * @return cautions, that about anchors among them
     */
    public List<Caution> cautions() {
        return List.of(SupportCautions.ENGINEER, SupportCautions.WATERLOGGED, SupportCautions.ANCHORS);
    }

    /**
     * How the anchor loads were reached, step by step.
     *
     * @return the steps with formulas, values and sources
     */
    public Workings workings() {
        Term weight = Term.of("W", carried.weight());
        Step moment = new Step(
                "moment at the wall",
                "W * e",
                List.of(weight, SupportText.term("e", arm)),
                Term.of("M", moment()),
                STATICS);
        Step tension = new Step(
                "pull on one anchor of the top row",
                "(M / s + F) / n",
                List.of(
                        moment.result(),
                        SupportText.term("s", rows),
                        Term.of("F", outward),
                        Term.number("n", topAnchors)),
                Term.of("T", tensionPerAnchor()),
                STATICS);
        Step shear = new Step(
                "shear on one anchor",
                "W / N",
                List.of(weight, Term.number("N", allAnchors)),
                Term.of("V", shearPerAnchor()),
                STATICS);
        Step combined = new Step(
                "use of an anchor by both together; 1 is the limit",
                "T / T_a + V / V_a",
                List.of(
                        tension.result(),
                        Term.of("T_a", strength.tension()),
                        shear.result(),
                        Term.of("V_a", strength.shear())),
                Term.number("u", combinedUse()),
                INTERACTION);
        return new Workings("Vessel on a wall bracket", List.of(moment, tension, shear, combined));
    }

    /**
     * The verdict in words.
     *
     * @param system metric or inch-pound
     * @return three lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return tensionCheck().text(system) + "\n" + shearCheck().text(system) + "\n" + "both together: "
                + (passes() ? "passes, " : "REFUSED, ") + SupportText.percent(combinedUse()) + " " + INTERACTION + "\n";
    }
}
