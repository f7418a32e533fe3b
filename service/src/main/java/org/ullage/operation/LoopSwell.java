package org.ullage.operation;

import org.ullage.loop.LoopFluid;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.PipeCredit;
import org.ullage.method.Sizing;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;

/** What goes out of a sized loop and into it between two temperatures; the pipe's growth counts where the sizing counted it. */
final class LoopSwell {

    private final LoopFluid fluid;
    private final Volume contents;
    private final double alpha;
    private final double coldKelvins;
    private final double coldPascals;
    private final double lastPascals;

    LoopSwell(Sizing sizing, Temperature cold) {
        AbsolutePressure air = sizing.atmosphere();
        PipeMaterial pipe = sizing.job().loop().pipe();
        this.fluid = sizing.job().loop().fluid();
        this.contents = sizing.job().loop().contents();
        this.alpha = pipe == null || sizing.method().pipeCredit() == PipeCredit.NONE
                ? 0
                : pipe.linearExpansion().si();
        this.coldKelvins = cold.si();
        this.coldPascals = sizing.coldPressure().absolute(air).si();
        this.lastPascals = sizing.finalPressure().absolute(air).si();
    }

    /** What the loop gives off from filling to the hottest state, zero if it gives off nothing. */
    Volume expansion(Temperature fill, Temperature hot) {
        double ratio = fluid.specificVolumeSi(hot.si(), lastPascals) / fluid.specificVolumeSi(fill.si(), coldPascals);
        return contents.times(Math.max(0, ratio - 1 - growth(fill.si(), hot.si())));
    }

    /** The most the loop takes in anywhere between filling and the coldest state, looked for at a number of points. */
    Volume contraction(Temperature fill, int points) {
        double filled = fluid.specificVolumeSi(fill.si(), coldPascals);
        double most = 0;
        for (int i = 0; i < points; i++) {
            double kelvins = coldKelvins + (fill.si() - coldKelvins) * i / points;
            double ratio = filled / fluid.specificVolumeSi(kelvins, coldPascals);
            most = Math.max(most, ratio - 1 - growth(kelvins, fill.si()));
        }
        return contents.times(most);
    }

    private double growth(double from, double to) {
        return PipeCredit.growth(alpha, to - from);
    }
}
