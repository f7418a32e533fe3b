package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;
import org.ullage.workings.Step;
import org.ullage.workings.Term;
import org.ullage.workings.Workings;

/**
 * What one person may lift or lower with both hands by the revised NIOSH lifting equation: RWL = LC HM VM DM AM FM CM, with the load
 * constant LC = 23 kg. It is worked out at both ends of the lift; the end counts where the load is put down with care. The inch form
 * of the equation (51 lb, 10 in, 30 in) is the same rounded up, by no more than 4 %. Immutable.
 *
 * @param origin where the hands take the load
 * @param destination where they put it down
 * @param liftsPerMinute how often, zero or more; 0.2 or less for a single removal
 * @param spell how long it goes on
 * @param grip how the hands hold it
 */
public record LiftLimit(
        HandPosition origin, HandPosition destination, double liftsPerMinute, LiftingSpell spell, Grip grip)
        implements Serializable {

    /**
     * Checks the frequency.
     *
     * @param origin where the hands take the load
     * @param destination where they put it down
     * @param liftsPerMinute how often
     * @param spell how long it goes on
     * @param grip how the hands hold it
     * @throws OutOfRangeException if the frequency is negative or not finite
     */
    public LiftLimit {
        Inputs.requireWithin("lifts per minute", liftsPerMinute, 0, Double.MAX_VALUE, "count the lifts of 15 minutes");
    }

    /**
     * A vessel taken off or put up once: a single lift with the poor grip of a smooth cylinder.
     *
     * @param origin where the hands take it
     * @param destination where they put it down
     * @return the limit
     */
    public static LiftLimit ofVessel(HandPosition origin, HandPosition destination) {
        return new LiftLimit(origin, destination, 0, LiftingSpell.UP_TO_1_HOUR, Grip.POOR);
    }

    /**
     * Height between the ends of the lift.
     *
     * @return D
     */
    public Length travel() {
        return Length.ofSi(Math.abs(destination.height().si() - origin.height().si()));
    }

    /**
     * Distance multiplier DM.
     *
     * @return 0.82 + 4.5 / D with D in cm; 1 below 25 cm, 0 beyond 175 cm
     */
    public double distanceMultiplier() {
        return Niosh.distance(travel());
    }

    /**
     * Recommended weight limit where the load is taken.
     *
     * @return RWL at the origin
     */
    public Mass atOrigin() {
        return at(origin);
    }

    /**
     * Recommended weight limit where the load is put down with care.
     *
     * @return RWL at the destination
     */
    public Mass atDestination() {
        return at(destination);
    }

    /**
     * The lower of the two.
     *
     * @return the recommended weight limit of the lift; zero where it must not be done by hand
     */
    public Mass limit() {
        return atOrigin().compareTo(atDestination()) <= 0 ? atOrigin() : atDestination();
    }

    private Mass at(HandPosition hands) {
        return Niosh.loadConstant()
                .times(hands.horizontalMultiplier()
                        * hands.verticalMultiplier()
                        * distanceMultiplier()
                        * hands.asymmetryMultiplier()
                        * frequencyMultiplier(hands)
                        * couplingMultiplier(hands));
    }

    private double frequencyMultiplier(HandPosition hands) {
        return spell.multiplier(liftsPerMinute, Niosh.isHigh(hands.height()));
    }

    private double couplingMultiplier(HandPosition hands) {
        return grip.multiplier(Niosh.isHigh(hands.height()));
    }

    /**
     * Lifting index: load over recommended weight limit, above 1 a raised risk.
     *
     * @param load what is lifted
     * @return LI
     * @throws OutOfRangeException if the limit is zero: the lift must not be done by hand at all
     */
    public double liftingIndex(Mass load) {
        return load.dividedBy(limit());
    }

    /**
     * A load against the limit.
     *
     * @param load what is lifted
     * @return the verdict with its margin
     */
    public LimitCheck<Mass> check(Mass load) {
        return new LimitCheck<>("lift by one person, NIOSH", load, limit(), Niosh.EQUATION);
    }

    /**
     * What the reader must know.
     *
     * @return cautions
     */
    public List<Caution> cautions() {
        return List.of(SupportCautions.DRAIN_FIRST, SupportCautions.LIFTING);
    }

    /**
     * How the limit was reached, step by step.
     *
     * @return multipliers and limit at both ends
     */
    public Workings workings() {
        return LiftWorkings.of(this);
    }

    /** The step of one end, for its workings. */
    Step step(HandPosition hands, String end) {
        return new Step(
                "recommended weight limit at the " + end,
                "LC * HM * VM * DM * AM * FM * CM",
                List.of(
                        Term.of("LC", Niosh.loadConstant()),
                        Term.number("HM", hands.horizontalMultiplier()),
                        Term.number("VM", hands.verticalMultiplier()),
                        Term.number("DM", distanceMultiplier()),
                        Term.number("AM", hands.asymmetryMultiplier()),
                        Term.number("FM", frequencyMultiplier(hands)),
                        Term.number("CM", couplingMultiplier(hands))),
                Term.of("RWL_" + end.charAt(0), at(hands)),
                Niosh.EQUATION);
    }

    /**
     * The limit in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return "one person may lift " + SupportText.of(limit(), system) + " (" + SupportText.of(atOrigin(), system)
                + " at the start, " + SupportText.of(atDestination(), system) + " where it is put down) "
                + Niosh.EQUATION;
    }
}
