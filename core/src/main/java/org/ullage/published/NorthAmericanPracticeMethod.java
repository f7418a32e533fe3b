package org.ullage.published;

import org.ullage.method.DensityExpansion;
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
 * North American practice after trade-journal articles: real densities of the fluid at both temperatures, 5 psi at the top of the
 * loop, 5 psi below the relief setting, no pipe credit and no reserve. The articles weigh the static column with the density of the
 * cold fluid; here it is conventional water, on the high, safe side. They count the cold density at 60 degF; here it is the loop's lowest
 * temperature.
 */
final class NorthAmericanPracticeMethod {

    private static final Source ARTICLE = Source.published(
            "Sizing diaphragm-type tanks for large radiant and snow-melt systems, PM Engineer",
            "October 2003, first part");

    private static final Source TO_SETTING = Source.fromMemory(
            "articles on radiant heating in PM and PM Engineer", "relief setting + 9.7 psi, that is - 5 + 14.7");

    static final Method METHOD = Method.named(
                    "practice-us", "North American practice (trade-journal articles, 2003)", ARTICLE)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(new DensityExpansion(ARTICLE))
            .pipeCredit(PipeCredit.NONE)
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.psi(5), ARTICLE))
            .finalPressure(FinalPressureRule.below(PressureDifference.psi(5), TO_SETTING))
            .atmosphere(new AtmosphereRule(AbsolutePressure.psi(14.7), TO_SETTING))
            .build();

    private NorthAmericanPracticeMethod() {}
}
