package org.ullage.fluids;

import java.util.stream.IntStream;

/**
 * The saturation line (region 4) of IAPWS R7-97(2012), without range checks. SI units outside, the release's K and MPa inside;
 * coefficients keep their published numbers.
 */
final class Iapws97Region4 {

    private static final double[] N =
            Iapws97Table.read("iapws-r7-97-region-4.tsv").column("n");

    /** Pressure at the cold end of the line, Pa. */
    static final double LOWEST_PRESSURE = pressure(Iapws97.LOWEST_TEMPERATURE.value());

    /** Pressure at the critical point, Pa. */
    static final double HIGHEST_PRESSURE = pressure(Iapws97.CRITICAL_TEMPERATURE.value());

    private static final double CEILINGS_START = Iapws97.LOWEST_TEMPERATURE.value();

    /** Saturation pressure at the upper end of each 10 K of region 1, Pa. */
    private static final double[] CEILINGS = ceilings();

    private Iapws97Region4() {}

    /**
     * Whether water of a temperature in the range of region 1 is liquid under a pressure. The saturation pressure rises with
     * temperature, so a pressure above its value at the next full 10 K needs no exact one; that is the usual case.
     */
    static boolean isLiquid(double kelvins, double pascals) {
        double ceiling = CEILINGS[(int) ((kelvins - CEILINGS_START) / 10)];
        return pascals >= ceiling || pascals >= pressure(kelvins);
    }

    /** Saturation pressure in Pa: release, eqs. 29b and 30. */
    static double pressure(double kelvins) {
        double theta = kelvins + N[9] / (kelvins - N[10]);
        double a = (theta + N[1]) * theta + N[2];
        double b = (N[3] * theta + N[4]) * theta + N[5];
        double c = (N[6] * theta + N[7]) * theta + N[8];
        double beta = 2 * c / (Math.sqrt(b * b - 4 * a * c) - b);
        double beta2 = beta * beta;
        return beta2 * beta2 * 1e6;
    }

    /** Saturation temperature in K: release, eqs. 29a and 31. */
    static double temperature(double pascals) {
        double beta = Math.sqrt(Math.sqrt(pascals / 1e6));
        double e = (beta + N[3]) * beta + N[6];
        double f = (N[1] * beta + N[4]) * beta + N[7];
        double g = (N[2] * beta + N[5]) * beta + N[8];
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N[10] + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N[9] + N[10] * d))) / 2;
    }

    private static double[] ceilings() {
        int steps = (int) ((Iapws97.HIGHEST_TEMPERATURE.value() - CEILINGS_START) / 10) + 1;
        return IntStream.rangeClosed(1, steps)
                .mapToDouble(step -> pressure(CEILINGS_START + step * 10))
                .toArray();
    }
}
