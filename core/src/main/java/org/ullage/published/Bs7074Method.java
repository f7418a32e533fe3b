package org.ullage.published;

import org.ullage.method.DensityExpansion;
import org.ullage.method.Method;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.PressureDifference;
import org.ullage.vessel.VesselKind;

/**
 * BS 7074: V = e V_s / (1 - p_1 / p_2) in absolute pressures, the real expansion of the fluid, the static head as least initial pressure,
 * 0.35 bar below the relief setting. Remembered; of part 1 only the contents page was seen.
 */
final class Bs7074Method {

    private static final Source RULE = Source.fromMemory("BS 7074-1:1989 and -2", "formula and domestic margin");

    static final Method METHOD = Method.named("bs-7074", "BS 7074 (UK)", RULE)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(new DensityExpansion(RULE))
            .pipeCredit(PipeCredit.NONE)
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0), RULE))
            .finalPressure(FinalPressureRule.below(PressureDifference.bar(0.35), RULE))
            .remark(MethodRemark.remembered(RULE))
            .build();

    private Bs7074Method() {}
}
