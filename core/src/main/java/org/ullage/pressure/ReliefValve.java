package org.ullage.pressure;

import java.io.Serializable;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;

/**
 * How far from its setting a relief valve may open and close. A valve that has lifted closes only below its setting, so the loop is
 * left with less water than before, and with a low pressure once it is cold: see {@link AfterLift}. Immutable.
 *
 * @param setting gauge pressure the valve is set to
 * @param tolerance how far above or below the setting it may begin to open
 * @param overpressure how far above the setting it is fully open at the latest
 * @param leastBlowdown how far below the setting it closes at the earliest
 * @param greatestBlowdown how far below the setting it closes at the latest
 * @param source where the limits come from
 */
public record ReliefValve(
        GaugePressure setting,
        PressureDifference tolerance,
        PressureDifference overpressure,
        PressureDifference leastBlowdown,
        PressureDifference greatestBlowdown,
        Source source)
        implements Serializable {

    private static final Source ISO_4126_1 = Source.secondHand(
            "EN ISO 4126-1, with its amendment 1", "limits for safety valves on liquids", "a copy of the amendment");

    private static final Constant SET_TOLERANCE = new Constant("set", 0.03, "1", ISO_4126_1);
    private static final Constant LEAST_TOLERANCE = new Constant("set", 0.1, "bar", ISO_4126_1);
    private static final Constant OVERPRESSURE = new Constant("lift", 0.1, "1", ISO_4126_1);
    private static final Constant LEAST_OVERPRESSURE = new Constant("lift", 0.1, "bar", ISO_4126_1);
    private static final Constant EARLIEST_CLOSING = new Constant("blowdown", 0.025, "1", ISO_4126_1);
    private static final Constant LATEST_CLOSING = new Constant("blowdown", 0.2, "1", ISO_4126_1);
    private static final Constant LATEST_CLOSING_LEAST = new Constant("blowdown", 0.6, "bar", ISO_4126_1);

    /**
     * Checks the limits.
     *
     * @param setting gauge pressure the valve is set to, above zero
     * @param tolerance zero or more
     * @param overpressure zero or more
     * @param leastBlowdown zero or more
     * @param greatestBlowdown at least the least blowdown
     * @param source where the limits come from
     * @throws OutOfRangeException if a limit is negative, the blowdowns are out of order or the valve could close at no pressure
     */
    public ReliefValve {
        requireNotNegative("tolerance", tolerance);
        requireNotNegative("overpressure", overpressure);
        requireNotNegative("least blowdown", leastBlowdown);
        if (greatestBlowdown.si() < leastBlowdown.si() || greatestBlowdown.si() >= setting.si()) {
            throw new OutOfRangeException(
                    "greatest blowdown",
                    greatestBlowdown.text(UnitSystem.SI),
                    "from the least blowdown " + leastBlowdown.text(UnitSystem.SI) + " to below the setting "
                            + setting.text(UnitSystem.SI),
                    "take both from the valve's data sheet");
        }
    }

    /**
     * A valve of which only its standard is known: EN ISO 4126-1 for liquids. Opens within 3 % or 0.1 bar of the setting, is fully open
     * 10 % or 0.1 bar above, and closes from 2.5 % down to 20 % or 0.6 bar below, each time the larger.
     *
     * @param setting gauge pressure the valve is set to
     * @return the valve
     * @throws OutOfRangeException if the setting is so low that the valve might not close
     */
    public static ReliefValve iso4126(GaugePressure setting) {
        return new ReliefValve(
                setting,
                larger(setting, SET_TOLERANCE, LEAST_TOLERANCE.value()),
                larger(setting, OVERPRESSURE, LEAST_OVERPRESSURE.value()),
                larger(setting, EARLIEST_CLOSING, 0),
                larger(setting, LATEST_CLOSING, LATEST_CLOSING_LEAST.value()),
                ISO_4126_1);
    }

    private static PressureDifference larger(GaugePressure setting, Constant share, double leastBar) {
        PressureDifference byShare = PressureDifference.ofSi(setting.si() * share.value());
        PressureDifference least = PressureDifference.bar(leastBar);
        return byShare.compareTo(least) > 0 ? byShare : least;
    }

    private static void requireNotNegative(String name, PressureDifference difference) {
        if (difference.si() < 0) {
            throw new OutOfRangeException(
                    name, difference.text(UnitSystem.SI), "zero or more", "take it from the valve's data sheet");
        }
    }

    /**
     * The pressure at which the valve may begin to open at the earliest.
     *
     * @return setting less tolerance
     */
    public GaugePressure mayOpenFrom() {
        return setting.minus(tolerance);
    }

    /**
     * The pressure at which the valve is fully open at the latest.
     *
     * @return setting and overpressure
     */
    public GaugePressure fullyOpenAt() {
        return setting.plus(overpressure);
    }

    /**
     * The pressure at which the valve closes again at the earliest.
     *
     * @return setting less least blowdown
     */
    public GaugePressure closesAtMost() {
        return setting.minus(leastBlowdown);
    }

    /**
     * The pressure at which the valve is closed again at the latest.
     *
     * @return setting less greatest blowdown
     */
    public GaugePressure closesAtLeast() {
        return setting.minus(greatestBlowdown);
    }
}
