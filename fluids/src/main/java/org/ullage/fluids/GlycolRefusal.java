package org.ullage.fluids;

import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Units;

/** The words in which a glycol mixture refuses a temperature. Kept apart so that the calculation path stays small. */
final class GlycolRefusal {

    private static final int DIGITS = 4;

    private GlycolRefusal() {}

    static OutOfRangeException of(GlycolSolution fluid, FreezingModel freezing, double kelvins) {
        boolean known = fluid.massFraction().in(Units.MASS_PERCENT) <= MelinderPolynomial.MOST_PERCENT;
        return known && kelvins < fluid.freezingPoint().si()
                ? frozen(fluid, freezing, kelvins)
                : outside(fluid, kelvins);
    }

    private static OutOfRangeException frozen(GlycolSolution fluid, FreezingModel freezing, double kelvins) {
        return new OutOfRangeException(
                "temperature of " + fluid.name(),
                Celsius.text(kelvins),
                "at or above its freezing point " + fluid.freezingPoint().text(Units.CELSIUS, DIGITS) + " by "
                        + freezing.words(),
                "it would hold ice: raise the temperature or the concentration");
    }

    private static OutOfRangeException outside(GlycolSolution fluid, double kelvins) {
        return new OutOfRangeException(
                "temperature of " + fluid.name(),
                Celsius.text(kelvins),
                fluid.lowest().text(Units.CELSIUS, DIGITS) + " to "
                        + fluid.highest().text(Units.CELSIUS, DIGITS) + " for " + fluid.model(),
                remedy(fluid, kelvins));
    }

    private static String remedy(GlycolSolution fluid, double kelvins) {
        if (kelvins > fluid.highest().si()) {
            return fluid.densityModel().reachesFurtherUp()
                    ? "no model here reaches further up: give a lower temperature"
                    : "give a lower temperature, or name a model that reaches 125 degC: /ashrae or /ideal";
        }
        return "give a temperature inside the range, or name a model that reaches down to the freezing point: /melinder or"
                + " /conde";
    }
}
