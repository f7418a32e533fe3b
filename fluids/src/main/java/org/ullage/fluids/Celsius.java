package org.ullage.fluids;

import org.ullage.provenance.Constant;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/** Between kelvins, in which the library calculates, and degrees Celsius, in which tables and polynomials are published. */
final class Celsius {

    /** 0 degC in kelvins; exact by definition. */
    static final double ZERO = new Constant("T_0", 273.15, "K", GlycolSources.KELVIN).value();

    /**
     * How far past a limit a temperature may lie and still count as the limit, K. Far above the rounding of a conversion from
     * Fahrenheit (1e-13 K), far below anything a density notices.
     */
    private static final double SLACK = 1e-9;

    private Celsius() {}

    static double of(double kelvins) {
        return kelvins - ZERO;
    }

    static double of(Temperature temperature) {
        return temperature.in(Units.CELSIUS);
    }

    /** Whether a temperature lies within two others, in kelvins or both in degrees Celsius; a NaN does not. */
    static boolean isWithin(double temperature, double lowest, double highest) {
        return temperature >= lowest - SLACK && temperature <= highest + SLACK;
    }

    /** For messages; takes any number. */
    static String text(double kelvins) {
        boolean possible = Double.isFinite(kelvins) && kelvins > 0;
        return possible ? Temperature.ofSi(kelvins).text(Units.CELSIUS) : kelvins + " K";
    }
}
