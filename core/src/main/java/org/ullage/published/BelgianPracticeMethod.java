package org.ullage.published;

import org.ullage.method.DensityExpansion;
import org.ullage.method.Method;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.method.WaterReserve;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;

/**
 * Belgian practice after a trade journal: real expansion to the flow temperature and a reserve of 1 % of the contents. The journal's
 * gross size was cut off, so the margins on both pressures are those of EN 12828 as a trade body and memory have them.
 */
final class BelgianPracticeMethod {

    private static final Source JOURNAL = Source.published(
            "PMG, Belgian trade journal, vessel against expansion system", "example of 1000 L, first part");

    private static final Source NEW_MARGIN = Source.secondHand(
            "EN 12828, Annex D", "2012+A1:2014: 0.2 bar in place of 0.3 bar", "a note of a Belgian trade body");

    private static final Source BELOW_SETTING = Source.fromMemory("EN 12828, Annex D", "0.5 bar, at least 10 %");

    static final Method METHOD = Method.named("practice-be", "Belgian practice, reserve 1 %", JOURNAL)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(new DensityExpansion(JOURNAL))
            .pipeCredit(PipeCredit.NONE)
            .reserve(WaterReserve.ofContents(VolumeFraction.percent(1), Volume.litres(0), JOURNAL))
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.2), NEW_MARGIN))
            .finalPressure(new FinalPressureRule(0.9, PressureDifference.bar(0.5), BELOW_SETTING))
            .atmosphere(OneBar.of(BELOW_SETTING))
            .remark(MethodRemark.practice(JOURNAL))
            .build();

    private BelgianPracticeMethod() {}
}
