package org.ullage.method;

import java.io.Serializable;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.LoopTemperatures;
import org.ullage.loop.PipeMaterial;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.GasLaw;

/**
 * What {@link SizingNumbers} works out for one closed vessel, as a function of a row of numbers: the same arithmetic in the same order,
 * without objects, and without words where there is no answer.
 */
final class ClosedSizing implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final int CONTENTS = SizingInput.CONTENTS.place();
    private static final int COLD_TEMPERATURE = SizingInput.COLD_TEMPERATURE.place();
    private static final int HOT_TEMPERATURE = SizingInput.HOT_TEMPERATURE.place();
    private static final int STATIC_HEAD = SizingInput.STATIC_HEAD.place();
    private static final int COLD_PRESSURE = SizingInput.COLD_PRESSURE.place();
    private static final int CHARGE = SizingInput.CHARGE.place();
    private static final int FINAL_PRESSURE = SizingInput.FINAL_PRESSURE.place();
    private static final int RELIEF_SETTING = SizingInput.RELIEF_SETTING.place();

    private final boolean[] isPresent = new boolean[SizingInput.values().length];
    private final LoopFluid fluid;
    private final ExpansionRule rule;
    private final PipeCredit pipeCredit;
    private final WaterReserve reserve;
    private final PressureArithmetic pressures;
    private final VesselArithmetic vessel;
    private final boolean countsVapourPressure;
    private final boolean mayBoil;
    private final double vapour;
    private final double alpha;
    private final double lowest;
    private final double ownCeiling;
    private final boolean hotVaries;
    private final @Nullable ExpansionTangent tangent;

    /**
     * @param tangent in place of the rule's expansion where the temperatures do not vary, or null for the rule itself
     */
    ClosedSizing(Method method, VariedJob varied, @Nullable ExpansionTangent tangent) {
        SizingJob job = varied.job();
        for (SizingInput input : varied.present(method)) {
            isPresent[input.place()] = true;
        }
        PipeMaterial pipe = job.loop().pipe();
        this.fluid = job.loop().fluid();
        this.rule = method.expansion();
        this.pipeCredit = method.pipeCredit();
        this.reserve = method.reserve();
        this.pressures = new PressureArithmetic(method, job);
        this.vessel = new VesselArithmetic(method, job);
        this.countsVapourPressure = method.coldPressure().countsVapourPressure();
        this.mayBoil = method.vapour().isForBoilingLoops();
        this.vapour = method.vapour().cubicMetres(job.loop().stagnation(), method.title());
        this.alpha = pipe == null ? 0 : pipe.linearExpansion().si();
        this.lowest = fluid.lowest().si();
        this.hotVaries = varied.varied().contains(SizingInput.HOT_TEMPERATURE);
        this.ownCeiling = ceiling(job.temperatures());
        this.tangent = tangent;
    }

    /** Whether every row has what the method needs, so that only numbers can be refused. */
    static boolean canAnswer(Method method, VariedJob varied) {
        Set<SizingInput> present = varied.present(method);
        boolean lacksStagnation =
                method.vapour().isForBoilingLoops() && varied.job().loop().stagnation() == null;
        return !lacksStagnation
                && (!method.needsHot() || present.contains(SizingInput.HOT_TEMPERATURE))
                && (!method.needsCold(varied.job().loop().fluid()) || present.contains(SizingInput.COLD_TEMPERATURE));
    }

    /** Smallest nominal volume in m3 for the row that begins at a place; NaN where the method refuses. */
    double cubicMetres(double[] row, int first) {
        double hot = isPresent[HOT_TEMPERATURE] ? row[first + HOT_TEMPERATURE] : lowest;
        double cold = isPresent[COLD_TEMPERATURE] ? row[first + COLD_TEMPERATURE] : hot;
        double coldPascals = cold(row, first, hot);
        double lastPascals = last(row, first);
        double charge = pressures.charge(of(CHARGE, row, first), coldPascals);
        boolean isInOrder = row[first + CONTENTS] > 0
                && charge > 0
                && coldPascals < lastPascals
                && lastPascals < Double.POSITIVE_INFINITY
                && !GasLaw.isAbove(vessel.chargeCold(charge), coldPascals);
        if (!isInOrder) {
            return Double.NaN;
        }
        double byGas = vessel.byGasLaw(charge, coldPascals, lastPascals);
        double free = vessel.freeShare(charge, coldPascals);
        boolean hasRoom = byGas > 0 && free > 0;
        if (!hasRoom || !isColder(row, first, hot) || !(mayBoil || fluid.isLiquidSi(hot, lastPascals))) {
            return Double.NaN;
        }
        double share = tangent == null
                ? share(cold, hot, coldPascals, lastPascals)
                : tangent.fraction(coldPascals, lastPascals);
        double expansion = row[first + CONTENTS] * (share - pipeCredit.fraction(alpha, hot - cold));
        double perWater = Math.max(byGas, vessel.least());
        if (free < Double.POSITIVE_INFINITY) {
            perWater = Math.max(perWater, 1 / free);
        }
        double taken = expansion + reserve.cubicMetres(row[first + CONTENTS], expansion, perWater) + vapour;
        return expansion + vapour > 0 ? taken * perWater : Double.NaN;
    }

    /** What the lowest temperature must stay below: the coolest of the others. */
    private static double ceiling(LoopTemperatures given) {
        return Stream.of(given.hot(), given.mean(), given.safety())
                .filter(Objects::nonNull)
                .mapToDouble(Temperature::si)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private boolean isColder(double[] row, int first, double hot) {
        return !isPresent[COLD_TEMPERATURE] || row[first + COLD_TEMPERATURE] < (hotVaries ? hot : ownCeiling);
    }

    private double of(int input, double[] row, int first) {
        return isPresent[input] ? row[first + input] : Double.NaN;
    }

    private double cold(double[] row, int first, double hot) {
        double stated = of(COLD_PRESSURE, row, first);
        double boiling = countsVapourPressure && Double.isNaN(stated) ? fluid.vapourPressureSi(hot) : 0;
        return pressures.cold(stated, of(STATIC_HEAD, row, first), boiling);
    }

    /** NaN if the relief valve would lift below the stated pressure. */
    private double last(double[] row, int first) {
        double stated = of(FINAL_PRESSURE, row, first);
        double setting = of(RELIEF_SETTING, row, first);
        return GasLaw.isAbove(stated, pressures.opening(setting)) ? Double.NaN : pressures.last(stated, setting);
    }

    private double share(double cold, double hot, double coldPascals, double lastPascals) {
        return rule.fraction(
                fluid,
                new ThermalStates(
                        cold,
                        hot,
                        coldPascals,
                        lastPascals,
                        isPresent[COLD_TEMPERATURE],
                        isPresent[HOT_TEMPERATURE],
                        alpha));
    }
}
