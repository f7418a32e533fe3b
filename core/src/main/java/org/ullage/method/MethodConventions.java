package org.ullage.method;

import java.io.Serializable;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ullage.pressure.AtmosphereRule;
import org.ullage.pressure.ChargeRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselKind;

/** The parts of a method. */
record MethodConventions(
        String name,
        String title,
        HotBasis hotBasis,
        Set<VesselKind> kinds,
        ExpansionRule expansion,
        PipeCredit pipeCredit,
        WaterReserve reserve,
        VapourAllowance vapour,
        @Nullable Constant leastVolumePerWater,
        ColdPressureRule coldPressure,
        FinalPressureRule finalPressure,
        @Nullable ChargeRule charge,
        AtmosphereRule atmosphere,
        GasTemperatures gasTemperatures,
        @Nullable Constant openAllowance,
        List<MethodRemark> remarks,
        Source source)
        implements Serializable {}
