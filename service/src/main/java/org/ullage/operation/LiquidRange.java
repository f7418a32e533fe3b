package org.ullage.operation;

import org.ullage.loop.LoopFluid;

/** Up to which temperature a fluid is liquid at a pressure. */
final class LiquidRange {

    /** Halvings of the range; each gains a binary digit. */
    private static final int HALVINGS = 50;

    private LiquidRange() {}

    /** The highest temperature at which the model answers with liquid; at least the lower end. */
    static double upTo(LoopFluid fluid, double pascals, double from) {
        double highest = fluid.highest().si();
        if (fluid.isLiquidSi(highest, pascals)) {
            return highest;
        }
        double liquid = from;
        double boils = highest;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (liquid + boils) / 2;
            if (fluid.isLiquidSi(middle, pascals)) {
                liquid = middle;
            } else {
                boils = middle;
            }
        }
        return liquid;
    }
}
