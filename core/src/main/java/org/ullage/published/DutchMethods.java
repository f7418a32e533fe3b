package org.ullage.published;

import org.ullage.method.DensityExpansion;
import org.ullage.method.FixedFillExpansion;
import org.ullage.method.HotBasis;
import org.ullage.method.Method;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.method.WaterReserve;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;

/**
 * Dutch practice as a vocational lesson and a knowledge base print it. Classic: water from 10 degC to the mean temperature, 25 % on the
 * vessel, the final pressure without margin. Newer: to the highest temperature, reserve 1 % of the contents, 0.5 bar below. Both charge
 * to the static head, 1 bar for 10 m.
 */
final class DutchMethods {

    private static final Source CLASSIC_LESSON = Source.published(
            "Dutch vocational lesson and knowledge base on expansion",
            "classic: 25 %, mean temperature, 1 bar for 10 m");

    private static final Source NEWER_LESSON = Source.published(
            "Dutch vocational lesson on two calculation methods",
            "newer: reserve 1 %, margin 0.5 bar, highest temperature");

    private static final Source CHECK =
            Source.computed("density of water after Kell 1975", "2.9 % at 80 degC is water from about 10 degC");

    private static final Source CHILLED =
            Source.commonPractice("a chilled loop is warmest with the plant off, not in the mean");

    private static final ColdPressureRule STATIC_HEAD =
            ColdPressureRule.staticHeadPlus(PressureDifference.bar(0), CLASSIC_LESSON);

    static final Method CLASSIC = Method.named("practice-nl", "Dutch practice, mean temperature + 25 %", CLASSIC_LESSON)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .hotBasis(HotBasis.MEAN)
            .expansion(new FixedFillExpansion(Temperature.celsius(10), CHECK))
            .pipeCredit(PipeCredit.NONE)
            .reserve(WaterReserve.ofExpansion(0.25, CLASSIC_LESSON))
            .coldPressure(STATIC_HEAD)
            .finalPressure(FinalPressureRule.setting(CLASSIC_LESSON))
            .atmosphere(OneBar.of(CLASSIC_LESSON))
            .remark(MethodRemark.practice(CLASSIC_LESSON))
            .remark(MethodRemark.below(
                    Temperature.celsius(40),
                    "For chilled water this rule means nothing: it counts the mean, not the standstill at which the loop is"
                            + " warmest. The vessel is far too small.",
                    CHILLED))
            .build();

    static final Method ONE_PERCENT = Method.named(
                    "practice-nl-1-percent", "Dutch practice, highest temperature, reserve 1 %", NEWER_LESSON)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(new DensityExpansion(NEWER_LESSON))
            .pipeCredit(PipeCredit.NONE)
            .reserve(WaterReserve.ofContents(VolumeFraction.percent(1), Volume.litres(0), NEWER_LESSON))
            .coldPressure(STATIC_HEAD)
            .finalPressure(FinalPressureRule.below(PressureDifference.bar(0.5), NEWER_LESSON))
            .atmosphere(OneBar.of(NEWER_LESSON))
            .remark(MethodRemark.practice(NEWER_LESSON))
            .build();

    private DutchMethods() {}
}
