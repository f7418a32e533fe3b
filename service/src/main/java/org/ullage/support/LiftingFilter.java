package org.ullage.support;

import java.io.Serializable;
import java.util.List;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Mass;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/**
 * The lifting and lowering filter of the British regulator: below it a detailed assessment is seldom needed, above it one is. A filter, not
 * a limit in law; it covers lifts with both hands, in good conditions, up to about 30 an hour. Immutable.
 *
 * @param zone where the hands are
 * @param armsExtended whether the load is at arm's length, not close to the body
 * @param people who lifts
 */
public record LiftingFilter(Zone zone, boolean armsExtended, People people) implements Serializable {

    private static final Source CLOSE = Source.secondHand(
            "HSE, Manual handling, Manual Handling Operations Regulations 1992: guidance (L23)",
            "lifting and lowering filter",
            "a reference page with the filter values; the regulator's own diagram was not readable");

    private static final Source REMEMBERED = Source.fromMemory(
            "HSE, Manual handling, Manual Handling Operations Regulations 1992: guidance (L23)",
            "lifting and lowering filter");

    private static final Source FREQUENT = Source.secondHand(
            "HSE, Manual handling, Manual Handling Operations Regulations 1992: guidance (L23)",
            "reduction for repetition: 30 % at 1-2, 50 % at 5-8, 80 % above 12 lifts a minute",
            "a stored page of the guidance text");

    /** About 30 lifts an hour. */
    private static final Constant SELDOM = new Constant("seldom", 0.5, "1/min", FREQUENT);

    private static final Constant OFTEN = new Constant("often", 2, "1/min", FREQUENT);
    private static final Constant VERY_OFTEN = new Constant("very often", 8, "1/min", FREQUENT);
    private static final Constant AFTER_OFTEN = new Constant("left", 0.7, "1", FREQUENT);
    private static final Constant AFTER_VERY_OFTEN = new Constant("left", 0.5, "1", FREQUENT);
    private static final Constant AFTER_ALWAYS = new Constant("left", 0.2, "1", FREQUENT);

    /** Who lifts, as the filter sees it. */
    public enum People {
        /** Values for men. */
        MEN,
        /** Values for women. */
        WOMEN
    }

    /** Where the hands are; a lift through several zones takes the lowest value. */
    public enum Zone {
        /** Above the shoulder. */
        ABOVE_SHOULDER(zone(10, 7, CLOSE), zone(5, 3, REMEMBERED)),
        /** Shoulder to elbow. */
        SHOULDER_TO_ELBOW(zone(20, 13, CLOSE), zone(10, 7, REMEMBERED)),
        /** Elbow to knuckle. */
        ELBOW_TO_KNUCKLE(zone(25, 16, CLOSE), zone(15, 10, REMEMBERED)),
        /** Knuckle to the middle of the lower leg. */
        KNUCKLE_TO_MID_LOWER_LEG(zone(20, 13, REMEMBERED), zone(10, 7, REMEMBERED)),
        /** Below the middle of the lower leg. */
        BELOW_MID_LOWER_LEG(zone(10, 7, CLOSE), zone(5, 3, REMEMBERED));

        @SuppressWarnings("ImmutableEnumChecker") // an immutable record
        private final Values close;

        @SuppressWarnings("ImmutableEnumChecker") // an immutable record
        private final Values extended;

        Zone(Values close, Values extended) {
            this.close = close;
            this.extended = extended;
        }

        private static Values zone(double men, double women, Source source) {
            return new Values(men, women, source);
        }
    }

    private record Values(double men, double women, Source source) {}

    private Values values() {
        return armsExtended ? zone.extended : zone.close;
    }

    /**
     * The filter value.
     *
     * @return mass below which a detailed assessment is seldom needed
     */
    public Mass limit() {
        return Mass.kilograms(people == People.MEN ? values().men() : values().women());
    }

    /**
     * The filter value for frequent lifting. Between the printed frequencies the next harder reduction is taken.
     *
     * @param liftsPerMinute zero or more
     * @return the reduced filter value
     * @throws OutOfRangeException if the frequency is negative or not finite
     */
    public Mass limit(double liftsPerMinute) {
        Inputs.requireWithin("lifts per minute", liftsPerMinute, 0, Double.MAX_VALUE, "count the lifts of 15 minutes");
        if (liftsPerMinute <= SELDOM.value()) {
            return limit();
        }
        if (liftsPerMinute <= OFTEN.value()) {
            return limit().times(AFTER_OFTEN.value());
        }
        return limit().times(liftsPerMinute <= VERY_OFTEN.value() ? AFTER_VERY_OFTEN.value() : AFTER_ALWAYS.value());
    }

    /**
     * Where the filter value comes from.
     *
     * @return its source
     */
    public Source source() {
        return values().source();
    }

    /**
     * A load against the filter.
     *
     * @param load what is lifted
     * @return the verdict with its margin
     */
    public LimitCheck<Mass> check(Mass load) {
        return new LimitCheck<>("lift by one person, HSE filter", load, limit(), source());
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
     * The filter in words.
     *
     * @param system metric or inch-pound
     * @return one line
     */
    public String text(UnitSystem system) {
        return "lifting filter: " + SupportText.of(limit(), system) + " " + source();
    }
}
