package org.ullage.support;

import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.Length;
import org.ullage.quantity.Mass;

/** Constants of the revised lifting equation in its metric form, which holds for typed quantities of either system. */
final class Niosh {

    static final String TITLE =
            "NIOSH, Applications Manual for the Revised NIOSH Lifting Equation, publication 94-110 (rev. 9/2021)";

    static final Source EQUATION =
            Source.secondHand(TITLE, "lifting equation, metric form", "a textbook of ergonomics");

    static final Source LIMITS = Source.fromMemory(TITLE, "limits of H, V, D and A, and 1 - 0.0032 A");

    static final Source DISTANCE = Source.fromMemory(TITLE, "distance multiplier 0.82 + 4.5 / D, D in cm");

    private static final Constant LOAD = new Constant("LC", 23, "kg", EQUATION);
    private static final Constant REACH = new Constant("H", 25, "cm", EQUATION);
    private static final Constant FAR = new Constant("H_max", 63, "cm", LIMITS);
    private static final Constant KNUCKLES = new Constant("V", 75, "cm", EQUATION);
    private static final Constant PER_HEIGHT = new Constant("k_V", 0.003, "1/cm", EQUATION);
    private static final Constant HIGH = new Constant("V_max", 175, "cm", LIMITS);
    private static final Constant SHORT = new Constant("D_min", 25, "cm", LIMITS);
    private static final Constant LONG = new Constant("D_max", 175, "cm", LIMITS);
    private static final Constant LONGEST_SHARE = new Constant("k_D", 0.82, "1", DISTANCE);
    private static final Constant PER_DISTANCE = new Constant("d_D", 4.5, "cm", DISTANCE);
    private static final Constant PER_DEGREE = new Constant("k_A", 0.0032, "1/deg", LIMITS);
    private static final Constant MOST_TURN = new Constant("A_max", 135, "deg", LIMITS);

    private Niosh() {}

    static Mass loadConstant() {
        return Mass.kilograms(LOAD.value());
    }

    static double horizontal(Length reach) {
        double h = centimetres(reach);
        return h > FAR.value() ? 0 : Math.min(1, REACH.value() / h);
    }

    static double vertical(Length height) {
        double v = centimetres(height);
        return v > HIGH.value() ? 0 : 1 - PER_HEIGHT.value() * Math.abs(v - KNUCKLES.value());
    }

    static boolean isHigh(Length height) {
        return centimetres(height) >= KNUCKLES.value();
    }

    static double distance(Length travel) {
        double d = centimetres(travel);
        if (d > LONG.value()) {
            return 0;
        }
        return d < SHORT.value() ? 1 : LONGEST_SHARE.value() + PER_DISTANCE.value() / d;
    }

    static double asymmetry(double degrees) {
        return degrees > MOST_TURN.value() ? 0 : 1 - PER_DEGREE.value() * degrees;
    }

    private static double centimetres(Length length) {
        return length.si() * 100;
    }
}
