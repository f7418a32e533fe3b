package org.ullage.published;

import org.ullage.method.HotBasis;
import org.ullage.method.Method;
import org.ullage.method.PipeCredit;
import org.ullage.pressure.AtmosphereRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.vessel.VesselKind;

/**
 * INAIL Raccolta R (Italy, 2009): the European expansion line at the temperature at which the safety device acts, static head +
 * 0.15 bar but not below 1.5 bar absolute, up to the relief setting itself, no reserve.
 */
final class RaccoltaRMethod {

    private static final Source ONE_BAR = Source.commonPractice("atmosphere of 1 bar in European sizing texts");

    static final Method METHOD = Method.named(
                    "raccolta-r", "INAIL Raccolta R (2009), R.3.B par. 4.2", EuropeanExpansion.RACCOLTA_R)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER, VesselKind.PLAIN_STEEL)
            .hotBasis(HotBasis.SAFETY_DEVICE)
            .expansion(EuropeanExpansion.of(EuropeanExpansion.RACCOLTA_R, null))
            .pipeCredit(PipeCredit.NONE)
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.15), EuropeanExpansion.RACCOLTA_R)
                    .notBelow(AbsolutePressure.bar(1.5), EuropeanExpansion.RACCOLTA_R))
            .finalPressure(FinalPressureRule.setting(EuropeanExpansion.RACCOLTA_R))
            .atmosphere(new AtmosphereRule(AbsolutePressure.bar(1), ONE_BAR))
            .build();

    private RaccoltaRMethod() {}
}
