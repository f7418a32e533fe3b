package org.ullage.fluids;

import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;

/** Between kelvins, in which the library calculates, and degrees Celsius, in which tables and polynomials are published. */
final class Celsius {

    /** 0 degC in kelvins; exact by definition (BIPM, SI Brochure, 9th ed., 2019). */
    static final double ZERO = 273.15;

    /**
     * How far past a limit a temperature may lie and still count as the limit, K. Far above the rounding of a conversion from
     * Fahrenheit (1e-13 K), far below anything a density notices.
     */
    static final double SLACK = 1e-9;

    private Celsius() {}

    static double of(double kelvins) {
        return kelvins - ZERO;
    }

    static double of(Temperature temperature) {
        return temperature.in(Units.CELSIUS);
    }

    /** For messages; takes any number. */
    static String text(double kelvins) {
        boolean possible = Double.isFinite(kelvins) && kelvins > 0;
        return possible ? Temperature.ofSi(kelvins).text(Units.CELSIUS) : kelvins + " K";
    }
}
