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
 * PN-B-02414:1999 (Poland): V_u = 1.1 V rho_1 dv from 10 degC to the flow temperature, V_n = V_u (p_max + 1) / (p_max - p), static head
 * + 0.2 bar. The factor 1.1 is the national form of a reserve. Remembered. {@link ExpansionPipe} has the rule for the pipe.
 */
final class PnB02414Method {

    private static final Source RULE = Source.fromMemory("PN-B-02414:1999", "useful and total volume");

    static final Method METHOD = Method.named("pn-b-02414", "PN-B-02414:1999 (Poland)", RULE)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(new FixedFillExpansion(Temperature.celsius(10), RULE))
            .pipeCredit(PipeCredit.NONE)
            .reserve(WaterReserve.ofExpansion(0.1, RULE))
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.2), RULE))
            .finalPressure(FinalPressureRule.setting(RULE))
            .atmosphere(OneBar.of(RULE))
            .remark(MethodRemark.remembered(RULE))
            .build();

    private PnB02414Method() {}
}
