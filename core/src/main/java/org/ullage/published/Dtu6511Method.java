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
 * NF DTU 65.11 (France): V = V_e P_f / (P_f - P_i) in absolute pressures, charge static head + 0.3 bar. Remembered; no clause was found,
 * and what final pressure it means is not known: the relief setting is taken.
 */
final class Dtu6511Method {

    private static final Source RULE = Source.fromMemory("NF DTU 65.11", "volume and charge");

    private static final Source SETTING =
            Source.commonPractice("the relief setting itself, as the rule's P_f is not known");

    static final Method METHOD = Method.named("dtu-65.11", "NF DTU 65.11 (France)", RULE)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(new DensityExpansion(RULE))
            .pipeCredit(PipeCredit.NONE)
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.3), RULE))
            .finalPressure(FinalPressureRule.setting(SETTING))
            .remark(MethodRemark.remembered(RULE))
            .build();

    private Dtu6511Method() {}
}
