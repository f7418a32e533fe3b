package org.ullage.operation;

import org.ullage.loop.LoopFluid;

/** Expansion and compressibility of a liquid by central differences of its specific volume, kept within what its model answers for. */
final class LiquidDerivatives {

    /** Half the width of the difference: wide against rounding, narrow against curvature. */
    private static final double HALF_KELVINS = 0.02;

    private static final double HALF_PASCALS = 2e4;

    private LiquidDerivatives() {}

    static double expansion(LoopFluid fluid, double kelvins, double pascals) {
        double low = Math.max(kelvins - HALF_KELVINS, fluid.lowest().si());
        double warmer = Math.min(kelvins + HALF_KELVINS, fluid.highest().si());
        double high = fluid.isLiquidSi(warmer, pascals) ? warmer : kelvins;
        double rise = fluid.specificVolumeSi(high, pascals) - fluid.specificVolumeSi(low, pascals);
        return rise / (high - low) / fluid.specificVolumeSi(kelvins, pascals);
    }

    static double compressibility(LoopFluid fluid, double kelvins, double pascals) {
        double low = Math.max(pascals - HALF_PASCALS, fluid.vapourPressureSi(kelvins));
        double high = low + 2 * HALF_PASCALS;
        double fall = fluid.specificVolumeSi(kelvins, low) - fluid.specificVolumeSi(kelvins, high);
        return fall / (high - low) / fluid.specificVolumeSi(kelvins, pascals);
    }
}
