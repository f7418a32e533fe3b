package org.ullage.fluids;

import static org.ullage.quantity.Temperature.celsius;

import org.ullage.loop.LoopFluid;
import org.ullage.quantity.VolumeFraction;

/** What the glycol tests share. */
final class GlycolCases {

    private GlycolCases() {}

    static Glycol glycol(String key) {
        return key.startsWith("propylene") ? Glycol.PROPYLENE : Glycol.ETHYLENE;
    }

    static VolumeFraction vol(double percent) {
        return VolumeFraction.percent(percent);
    }

    /** kg/m3 at a pressure that keeps it liquid; glycol models but ideal mixing do not look at it. */
    static double density(LoopFluid fluid, double celsius) {
        return 1 / fluid.specificVolumeSi(celsius(celsius).si(), 300_000);
    }

    static double expansion(LoopFluid fluid, double from, double to) {
        return Expansion.between(fluid, celsius(from), celsius(to)).percent();
    }
}
