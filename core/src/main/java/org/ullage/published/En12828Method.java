package org.ullage.published;

import org.ullage.method.DensityExpansion;
import org.ullage.method.Method;
import org.ullage.method.PipeCredit;
import org.ullage.method.WaterReserve;
import org.ullage.pressure.AtmosphereRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;

/**
 * EN 12828 (2012+A1:2014), Annex D: the European expansion line at the highest operating temperature, a water reserve, static
 * head + 0.2 bar, 0.5 bar (or 10 %) below the relief setting, gauge pressures + 1 bar. For mixtures the fluid's own density.
 *
 * <p>The edition also brings in a utilisation efficiency of the vessel, without a number in what was read: the acceptance limit of the
 * vessel takes its place.
 */
final class En12828Method {

    private static final String STANDARD = "EN 12828, Annex D";

    private static final Source ANNEX = Source.fromMemory(STANDARD, "2012+A1:2014");

    private static final Source EXPANSION_TABLE = Source.fromMemory(
            STANDARD + ", expansion table", "2003; equals INAIL Raccolta R 2009, 0.31 + 3.9e-4 T^2 percent");

    private static final Source MIXTURES = Source.fromMemory(STANDARD, "expansion to be taken for the mixture");

    private static final Source NEW_MARGIN =
            Source.secondHand(STANDARD, "2012+A1:2014: 0.2 bar in place of 0.3 bar", "a note of a Belgian trade body");

    private static final Source ONE_BAR = Source.fromMemory(STANDARD, "gauge pressures + 1 bar in its formula");

    static final Method METHOD = Method.named("en-12828", "EN 12828 (2012+A1:2014), Annex D", ANNEX)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(EuropeanExpansion.of(EXPANSION_TABLE, new DensityExpansion(MIXTURES)))
            .pipeCredit(PipeCredit.NONE)
            .reserve(WaterReserve.ofContents(VolumeFraction.percent(0.5), Volume.litres(3), ANNEX)
                    .orOfSmallVessel(Volume.litres(15), VolumeFraction.percent(20), ANNEX))
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.2), NEW_MARGIN)
                    .with(ColdPressureRule.VapourPressure.LIMIT))
            .finalPressure(new FinalPressureRule(0.9, PressureDifference.bar(0.5), ANNEX))
            .atmosphere(new AtmosphereRule(AbsolutePressure.bar(1), ONE_BAR))
            .build();

    private En12828Method() {}
}
