package org.ullage.fluids;

import org.ullage.provenance.Constant;

/**
 * The equation of region 1 (liquid water) of IAPWS R7-97(2012), without range checks. SI units throughout. The sums follow
 * Tables 2 to 4 of the release; coefficients keep their published numbers.
 */
final class Iapws97Region1 {

    /** Specific gas constant of water: release, eq. 1. */
    private static final double GAS_CONSTANT = new Constant("R", 461.526, "J/(kg K)", Iapws97.SOURCE).value();

    /** Reducing pressure: release, section 5.1. */
    private static final double REDUCING_PRESSURE = new Constant("p*", 16.53e6, "Pa", Iapws97.SOURCE).value();

    /** Reducing temperature: release, section 5.1. */
    private static final double REDUCING_TEMPERATURE = new Constant("T*", 1386, "K", Iapws97.SOURCE).value();

    /** Shift of the reduced pressure: release, eq. 7. */
    private static final double PI_SHIFT = new Constant("7.1", 7.1, "1", Iapws97.SOURCE).value();

    /** Shift of the reduced temperature: release, eq. 7. */
    private static final double TAU_SHIFT = new Constant("1.222", 1.222, "1", Iapws97.SOURCE).value();

    private static final double PER_REDUCING_PRESSURE = 1 / REDUCING_PRESSURE;

    private static final Iapws97Table TABLE_2 = Iapws97Table.read("iapws-r7-97-region-1.tsv");
    private static final double[] I = TABLE_2.column("I");
    private static final double[] J = TABLE_2.column("J");
    private static final double[] N = TABLE_2.column("n");

    /** I n of each term: what is left of the coefficient in the pressure derivative. Zero for terms 1 to 8. */
    private static final double[] D = products(I, N);

    private Iapws97Region1() {}

    /**
     * v = R T gamma_pi / p*, where gamma_pi = -sum of I n x^(I-1) y^J (Tables 3 and 4), in m3/kg.
     *
     * <p>This is the hot path. With x = 7.1 - pi, y = tau - 1.222 and s = 1/y the terms are grouped by their power of x, and
     * powers are built by multiplication. No term is dropped; the first eight have I = 0 and vanish in the derivative.
     */
    static double specificVolume(double kelvins, double pascals) {
        double x = PI_SHIFT - pascals * PER_REDUCING_PRESSURE;
        double y = REDUCING_TEMPERATURE / kelvins - TAU_SHIFT;
        // 1/y in a form that does not have to wait for y
        double s = kelvins / (REDUCING_TEMPERATURE - TAU_SHIFT * kelvins);
        double negativeGammaPi = termsUpToFifthPower(x, y, s) + termsOfHighPower(x, s);
        return -GAS_CONSTANT * PER_REDUCING_PRESSURE * kelvins * negativeGammaPi;
    }

    /** Terms 9 to 26, I = 1 to 5. */
    private static double termsUpToFifthPower(double x, double y, double s) {
        double y2 = y * y;
        double y3 = y2 * y;
        double y6 = y3 * y3;
        double y10 = y6 * y2 * y2;
        double y17 = y10 * y6 * y;
        double s2 = s * s;
        double s3 = s2 * s;
        double s4 = s2 * s2;
        double s5 = s4 * s;
        double s7 = s4 * s3;
        double s8 = s4 * s4;
        double s9 = s5 * s4;
        double i1 = D[9] * s9 + D[10] * s7 + D[11] * s + D[12] + D[13] * y + D[14] * y3;
        double i2 = D[15] * s3 + D[16] + D[17] * y + D[18] * y3 + D[19] * y17;
        double i3 = D[20] * s4 + D[21] + D[22] * y6;
        double i4 = D[23] * s5 + D[24] * s2 + D[25] * y10;
        double i5 = D[26] * s8;
        double x2 = x * x;
        return i1 + x * i2 + x2 * (i3 + x * i4 + x2 * i5);
    }

    /** Terms 27 to 34, I = 8 to 32: J lies near -I, so that q = x/y carries most of the power. */
    private static double termsOfHighPower(double x, double s) {
        double s2 = s * s;
        double s5 = s2 * s2 * s;
        double s9 = s5 * s2 * s2;
        double q = x * s;
        double q2 = q * q;
        double q4 = q2 * q2;
        double q8 = q4 * q4;
        double q20 = q8 * q8 * q4;
        double i8 = D[27] * s5 + D[28];
        double i21to23 = D[29] + D[30] * q2;
        double i29to32 = D[31] + D[32] * q + q2 * (D[33] + D[34] * q);
        return x * q4 * q2 * i8 + q20 * s9 * (i21to23 + q8 * s * i29to32);
    }

    /** h = R T* gamma_tau (Table 3), in J/kg. */
    static double specificEnthalpy(double kelvins, double pascals) {
        double x = PI_SHIFT - pascals / REDUCING_PRESSURE;
        double y = REDUCING_TEMPERATURE / kelvins - TAU_SHIFT;
        double gammaTau = 0;
        for (int i = 1; i < N.length; i++) {
            gammaTau += N[i] * Math.pow(x, I[i]) * J[i] * Math.pow(y, J[i] - 1);
        }
        return GAS_CONSTANT * REDUCING_TEMPERATURE * gammaTau;
    }

    /** cp = -R tau^2 gamma_tautau (Table 3), in J/(kg K). */
    static double specificHeatCapacity(double kelvins, double pascals) {
        double x = PI_SHIFT - pascals / REDUCING_PRESSURE;
        double tau = REDUCING_TEMPERATURE / kelvins;
        double y = tau - TAU_SHIFT;
        double gammaTauTau = 0;
        for (int i = 1; i < N.length; i++) {
            gammaTauTau += N[i] * Math.pow(x, I[i]) * J[i] * (J[i] - 1) * Math.pow(y, J[i] - 2);
        }
        return -GAS_CONSTANT * tau * tau * gammaTauTau;
    }

    private static double[] products(double[] a, double[] b) {
        double[] products = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            products[i] = a[i] * b[i];
        }
        return products;
    }
}
