package org.ullage.published;

import org.ullage.method.DensityExpansion;
import org.ullage.method.Method;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.pressure.ChargeRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.PressureDifference;
import org.ullage.vessel.VesselKind;

/**
 * Hungarian practice after an installer's article: charge static head + 0.3 bar, filled 0.3 bar above the charge, so the vessel holds
 * water when cold; real expansion. What final pressure it means was not seen; the margin of EN 12828 is taken.
 *
 * <p>The article lists expansion by temperature change (80: 2.9 %); the numbers are those of the temperature reached from 4 to 10 degC.
 */
final class HungarianPracticeMethod {

    private static final Source ARTICLE = Source.published(
            "installer's article on sizing closed vessels (Hungary)", "charge and fill pressure, first part");

    private static final Source BELOW_SETTING = Source.commonPractice(
            "0.5 bar, at least 10 %, below the relief setting, as the article's own was not seen");

    static final Method METHOD = Method.named("practice-hu", "Hungarian practice, filled above the charge", ARTICLE)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(new DensityExpansion(ARTICLE))
            .pipeCredit(PipeCredit.NONE)
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.6), ARTICLE))
            .charge(ChargeRule.belowColdPressure(PressureDifference.bar(0.3), ARTICLE))
            .finalPressure(new FinalPressureRule(0.9, PressureDifference.bar(0.5), BELOW_SETTING))
            .atmosphere(OneBar.of(BELOW_SETTING))
            .remark(MethodRemark.practice(ARTICLE))
            .remark("For boilers on solid fuel the article advises 4.3 %, water at 100 degC.", ARTICLE)
            .build();

    private HungarianPracticeMethod() {}
}
