package org.ullage.uncertainty;

import java.util.Map;
import org.ullage.loop.LoopFluid;
import org.ullage.method.Method;
import org.ullage.method.SizingInput;
import org.ullage.method.SizingJob;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.vessel.VesselKind;

/** Refuses spreads of which it is known beforehand that they reach where no sizing is possible or have no effect. */
final class SpreadChecks {

    private static final String NARROW = "narrow it, or state bounds by a uniform or triangular spread";

    private SpreadChecks() {}

    static void require(Method method, SizingJob job, Map<SizingInput, Uncertain<?>> spreads) {
        spreads.forEach((input, value) -> {
            switch (input) {
                case CONTENTS -> require(input, value, value.spread().lowest() > 0, "above zero throughout");
                case STATIC_HEAD -> requireHead(job, spreads, value);
                case COLD_TEMPERATURE, HOT_TEMPERATURE -> requireInModel(job, input, value);
                case COLD_PRESSURE, CHARGE, FINAL_PRESSURE, RELIEF_SETTING ->
                    requirePressure(method, job, input, value);
            }
        });
        requireApart(spreads);
    }

    private static void require(SizingInput input, Uncertain<?> value, boolean holds, String allowed) {
        if (!holds) {
            throw new OutOfRangeException("spread of the " + input, value.text(UnitSystem.SI), allowed, NARROW);
        }
    }

    private static void requireHead(SizingJob job, Map<SizingInput, Uncertain<?>> spreads, Uncertain<?> value) {
        requireClosed(job, SizingInput.STATIC_HEAD, value);
        require(SizingInput.STATIC_HEAD, value, value.spread().lowest() >= 0, "zero or more throughout");
        if (job.pressures().coldPressure() != null || spreads.containsKey(SizingInput.COLD_PRESSURE)) {
            throw new OutOfRangeException(
                    "spread of the static head",
                    value.text(UnitSystem.SI),
                    "left out beside a cold pressure, which is taken as it is",
                    "give the spread of the cold pressure");
        }
    }

    private static void requireInModel(SizingJob job, SizingInput input, Uncertain<?> value) {
        LoopFluid fluid = job.loop().fluid();
        Spread spread = value.spread();
        require(
                input,
                value,
                spread.lowest() >= fluid.lowest().si()
                        && spread.highest() <= fluid.highest().si(),
                "within the model of " + fluid.name() + ", " + fluid.lowest().textInBothSystems() + " to "
                        + fluid.highest().textInBothSystems());
    }

    private static void requirePressure(Method method, SizingJob job, SizingInput input, Uncertain<?> value) {
        requireClosed(job, input, value);
        AbsolutePressure site = job.pressures().atmosphere();
        double air = (site == null ? method.atmosphere().pressure() : site).si();
        require(
                input,
                value,
                value.spread().lowest() + air > 0,
                "above vacuum throughout, that is above "
                        + GaugePressure.ofSi(-air).text(UnitSystem.SI));
    }

    private static void requireClosed(SizingJob job, SizingInput input, Uncertain<?> value) {
        if (job.vessel().kind() == VesselKind.OPEN) {
            throw new OutOfRangeException(
                    "spread of the " + input,
                    value.text(UnitSystem.SI),
                    "left out for an open tank, which has no pressures of its own",
                    "leave it out");
        }
    }

    private static void requireApart(Map<SizingInput, Uncertain<?>> spreads) {
        Uncertain<?> cold = spreads.get(SizingInput.COLD_TEMPERATURE);
        Uncertain<?> hot = spreads.get(SizingInput.HOT_TEMPERATURE);
        if (cold != null && hot != null) {
            require(
                    SizingInput.HOT_TEMPERATURE,
                    hot,
                    hot.spread().lowest() > cold.spread().highest(),
                    "above the cold temperature throughout ("
                            + Temperature.ofSi(cold.spread().highest()).textInBothSystems() + ")");
        }
    }
}
