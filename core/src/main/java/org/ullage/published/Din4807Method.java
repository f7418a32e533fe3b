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
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;

/**
 * DIN 4807-2 and VDI 4708: the equation of EN 12828 with the real expansion of the fluid, the vapour pressure above 100 degC added to
 * static head + 0.2 bar, water seal 0.5 % of the contents but 3 L, 20 % of a vessel up to 15 L, and 0.5 bar (10 % above 5 bar) below
 * the relief setting. Nothing is refused for its temperature but boiling. Warns of a membrane above 70 degC.
 */
final class Din4807Method {

    private static final String STANDARD = "DIN 4807-2 and VDI 4708";

    private static final Source RULE = Source.fromMemory(STANDARD, "formula, water seal and margins");

    private static final Source MEMBRANE = Source.secondHand(
            "DIN 4807-3 and EN 13831", "70 degC at the membrane, not 0 degC or below", "a German trade encyclopaedia");

    static final Method METHOD = Method.named("din-4807", STANDARD, RULE)
            .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
            .expansion(new DensityExpansion(RULE))
            .pipeCredit(PipeCredit.NONE)
            .reserve(WaterReserve.ofContents(VolumeFraction.percent(0.5), Volume.litres(3), RULE)
                    .orOfSmallVessel(Volume.litres(15), VolumeFraction.percent(20), RULE))
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.2), RULE)
                    .with(ColdPressureRule.VapourPressure.ADDED))
            .finalPressure(new FinalPressureRule(0.9, PressureDifference.bar(0.5), RULE))
            .atmosphere(OneBar.of(RULE))
            .remark(MethodRemark.remembered(RULE))
            .remark(MethodRemark.above(
                    Temperature.celsius(70),
                    "The membrane may not be above 70 degC for long: connect the vessel to the return, or put a pre-cooling vessel"
                            + " before it.",
                    MEMBRANE))
            .build();

    private Din4807Method() {}
}
