package org.ullage.fluids;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Pressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Unit;
import org.ullage.quantity.Units;

/** The words in which the water models refuse a state. Kept apart so that the calculation path stays small. */
final class WaterRefusal {

    private static final int VAPOUR_PRESSURE_DIGITS = 4;

    /** A vapour pressure in a message is rounded up, so that the pressure it names is enough. */
    private static final MathContext ROUNDED_UP = new MathContext(VAPOUR_PRESSURE_DIGITS, RoundingMode.CEILING);

    /** All digits of a double, so that a value just outside a limit does not look like the limit. */
    private static final int ALL_DIGITS = 17;

    /** Digits in which the release names the ends of the saturation line. */
    private static final int RELEASE_DIGITS = 6;

    private WaterRefusal() {}

    static OutOfRangeException temperature(double kelvins, double lowest, double highest, Unit<Temperature> unit) {
        return new OutOfRangeException(
                "water temperature",
                temperatureText(kelvins, unit),
                temperatureText(lowest, unit) + " to " + temperatureText(highest, unit) + " for this model",
                temperatureRemedy(kelvins));
    }

    static OutOfRangeException pressure(double pascals) {
        return new OutOfRangeException(
                "water pressure",
                pressureText(pascals, Units.BAR),
                "above 0 and at most " + pressureText(Iapws97.HIGHEST_PRESSURE.value(), Units.BAR),
                "give the absolute pressure at the point whose temperature is meant");
    }

    static OutOfRangeException boiling(double kelvins, double pascals, double vapourPressure) {
        double enough = new BigDecimal(vapourPressure).round(ROUNDED_UP).doubleValue();
        return new OutOfRangeException(
                "water pressure",
                pressureText(pascals, Units.BAR) + " at " + temperatureText(kelvins, Units.CELSIUS),
                "at least " + pressureText(enough, Units.BAR)
                        + ", the pressure at which water of that temperature boils",
                "it would be steam: raise the pressure or lower the temperature");
    }

    static OutOfRangeException saturationTemperature(double kelvins) {
        return new OutOfRangeException(
                "temperature of boiling water",
                temperatureText(kelvins, Units.CELSIUS),
                temperatureText(Iapws97.LOWEST_TEMPERATURE.value(), Units.CELSIUS) + " to "
                        + temperatureText(Iapws97.CRITICAL_TEMPERATURE.value(), Units.CELSIUS) + ", the critical point",
                "give a temperature inside that range");
    }

    static OutOfRangeException saturationPressure(double pascals) {
        return new OutOfRangeException(
                "pressure of boiling water",
                pressureText(pascals, Units.KILOPASCAL),
                AbsolutePressure.ofSi(Iapws97Region4.LOWEST_PRESSURE).text(Units.KILOPASCAL, RELEASE_DIGITS) + " to "
                        + AbsolutePressure.ofSi(Iapws97Region4.HIGHEST_PRESSURE).text(Units.KILOPASCAL, RELEASE_DIGITS)
                        + ", the critical point",
                "give an absolute pressure inside that range");
    }

    private static String temperatureRemedy(double kelvins) {
        if (kelvins < Iapws97.LOWEST_TEMPERATURE.value()) {
            return "water freezes there: give a higher temperature or use a glycol mixture";
        }
        if (kelvins <= Iapws97.HIGHEST_TEMPERATURE.value()) {
            return "give a temperature inside the range or use the model IAPWS-IF97, which covers it";
        }
        return "give a temperature inside the range";
    }

    private static String temperatureText(double kelvins, Unit<Temperature> unit) {
        boolean possible = kelvins > 0 && Double.isFinite(unit.numberOf(kelvins));
        return possible ? Temperature.ofSi(kelvins).text(unit, ALL_DIGITS) : kelvins + " K";
    }

    private static String pressureText(double pascals, Unit<Pressure> unit) {
        boolean possible = Double.isFinite(pascals) && pascals > 0;
        return possible ? AbsolutePressure.ofSi(pascals).text(unit, ALL_DIGITS) : pascals + " Pa abs";
    }
}
