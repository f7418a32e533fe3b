package org.ullage.published;

import org.ullage.method.FixedFillExpansion;
import org.ullage.method.Method;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.method.WaterReserve;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselKind;

/**
 * CSN 06 0830 and Czech practice: V_e = 1.3 V_0 n / eta with eta = (p_h - p_d) / p_h absolute, n from 10 degC, p_d at least 1.1 times the
 * static head, p_h the relief setting. The factor 1.3 is the national form of a reserve. Remembered. {@link ExpansionPipe} has the
 * rules for the pipe.
 */
final class Csn060830Method {

    private static final Source RULE = Source.fromMemory("CSN 06 0830 and Czech practice", "volume and least pressure");

    static final Method METHOD = Method.named("csn-06-0830", "CSN 06 0830 (Czech)", RULE)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(new FixedFillExpansion(Temperature.celsius(10), RULE))
            .pipeCredit(PipeCredit.NONE)
            .reserve(WaterReserve.ofExpansion(0.3, RULE))
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0), RULE)
                    .withHeadFactor(1.1, RULE))
            .finalPressure(FinalPressureRule.setting(RULE))
            .atmosphere(OneBar.of(RULE))
            .remark(MethodRemark.remembered(RULE))
            .build();

    private Csn060830Method() {}
}
