package org.ullage.published;

import org.ullage.method.DensityExpansion;
import org.ullage.method.HotBasis;
import org.ullage.method.Method;
import org.ullage.method.PipeCredit;
import org.ullage.method.WaterReserve;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;

/**
 * EN 12828 (2003), Annex D, the superseded edition: static head + 0.3 bar, at least 0.7 bar, and the temperature at which the safety
 * device acts. The rest is as in {@link En12828Method}; so are the refusals outside 30 to 130 degC for water.
 */
final class En12828Of2003Method {

    private static final String STANDARD = "EN 12828, Annex D";

    private static final Source ANNEX = Source.fromMemory(STANDARD, "2003");

    private static final Source EXPANSION_TABLE = Source.fromMemory(
            STANDARD + ", expansion table", "2003; equals INAIL Raccolta R 2009, 0.31 + 3.9e-4 T^2 percent");

    private static final Source MIXTURES = Source.fromMemory(STANDARD, "expansion to be taken for the mixture");

    private static final Source OLD_MARGIN = Source.secondHand(
            STANDARD,
            "2003: 0.3 bar, recommended at least 0.7 bar, sized for the safety device",
            "a note of a Belgian trade body");

    static final Method METHOD = Method.named("en-12828-2003", "EN 12828 (2003), Annex D", ANNEX)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .hotBasis(HotBasis.SAFETY_DEVICE)
            .expansion(EuropeanExpansion.of(EXPANSION_TABLE, new DensityExpansion(MIXTURES)))
            .pipeCredit(PipeCredit.NONE)
            .reserve(WaterReserve.ofContents(VolumeFraction.percent(0.5), Volume.litres(3), ANNEX)
                    .orOfSmallVessel(Volume.litres(15), VolumeFraction.percent(20), ANNEX))
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.3), OLD_MARGIN)
                    .with(ColdPressureRule.VapourPressure.LIMIT)
                    .notBelow(AbsolutePressure.bar(1.7), OLD_MARGIN))
            .finalPressure(new FinalPressureRule(0.9, PressureDifference.bar(0.5), ANNEX))
            .atmosphere(OneBar.of(ANNEX))
            .remark(
                    "This edition is superseded: since 2012 EN 12828 takes 0.2 bar in place of 0.3, no floor of 0.7 bar, and the"
                            + " operating temperature.",
                    OLD_MARGIN)
            .build();

    private En12828Of2003Method() {}
}
