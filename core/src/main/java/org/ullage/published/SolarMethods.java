package org.ullage.published;

import org.ullage.method.Method;
import org.ullage.method.MethodBuilder;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.method.ShareExpansion;
import org.ullage.method.VapourAllowance;
import org.ullage.method.WaterReserve;
import org.ullage.pressure.ChargeRule;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.VesselKind;

/**
 * Rules for solar loops that may stand still in the sun: the vessel takes the liquid that vapour pushes out of the collectors. They
 * are for membrane vessels and need {@link org.ullage.loop.StagnationContents}. The pressures they leave open are those of the IDAE
 * example: 1.5 bar at the top, 90 % of the relief setting.
 *
 * <p>Badly emptying fields push vapour into pipes below the collectors too ({@link SteamRange}): count that pipe in the stagnation
 * contents.
 */
final class SolarMethods {

    private static final Source IDAE_GUIDE =
            Source.secondHand("ASIT-IDAE guide 022, solar thermal", "p. 88", "a page-by-page copy");

    private static final Source UFC_CHECKLIST =
            Source.published("UFC 3-440-01, Active solar preheat systems", "2002, appendix E, design checklist");

    private static final Source EN_READING = Source.secondHand(
            "EN 12977-1", "expansion device takes all liquid of the collectors", "a professional sheet of 2018");

    private static final Source FRENCH_SHEET =
            Source.commonPractice("French course sheet, vaporisation = collectors + 10 %");

    private static final Source IDAE_PRESSURES =
            Source.computed("ASIT-IDAE guide 022, p. 88", "5.4 bar = 0.9 x 6 bar; 1.5 bar at the vessel on top");

    private static final Source UFC_CHARGE = Source.published(
            "UFC 3-440-01, Active solar preheat systems", "2002, appendix E: charge 5 to 10 psi below fill");

    private static final Source UFC_NO_TERM = Source.published(
            "UFC 3-440-01, Active solar preheat systems", "2002, appendix E: no separate thermal term");

    private static final Source MEMBRANE = Source.secondHand(
            "EN 13831 and DIN 4807-3",
            "70 degC at the membrane, special vessels 110 degC",
            "an encyclopaedia of the trade");

    private static final Source DEGRADATION =
            Source.commonPractice("glycol degrades faster above about 150 degC (300 degF)");

    private static final Temperature DEGRADES =
            Temperature.celsius(new Constant("t_d", 150, "degC", DEGRADATION).value());

    private static final FinalPressureRule FINAL = FinalPressureRule.shareOfSetting(0.9, IDAE_PRESSURES);
    private static final WaterReserve THREE_LITRES =
            WaterReserve.ofContents(VolumeFraction.percent(0), Volume.litres(3), IDAE_GUIDE);
    private static final ShareExpansion GLYCOL = new ShareExpansion(new Constant("e", 0.085, "1", IDAE_GUIDE));

    static final Method IDAE = solar("idae-022", "ASIT-IDAE guide 022 (solar thermal)", IDAE_GUIDE)
            .expansion(GLYCOL)
            .reserve(THREE_LITRES)
            .vapour(new VapourAllowance(new Constant("f_c", 1, "1", IDAE_GUIDE), true))
            .leastVolumePerWater(new Constant("C_p", 2, "1", IDAE_GUIDE))
            .build();

    static final Method UFC = solar("ufc-3-440-01", "UFC 3-440-01 (2002), appendix E", UFC_CHECKLIST)
            .expansion(new ShareExpansion(new Constant("e", 0, "1", UFC_NO_TERM)))
            .vapour(new VapourAllowance(new Constant("f_c", 1, "1", UFC_CHECKLIST), true))
            .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.psi(10), UFC_CHECKLIST))
            .charge(ChargeRule.belowColdPressure(PressureDifference.psi(5), UFC_CHARGE))
            .build();

    static final Method EN_12977 = solar("en-12977-1", "EN 12977-1, as a professional sheet reads it", EN_READING)
            .expansion(GLYCOL)
            .reserve(THREE_LITRES)
            .vapour(new VapourAllowance(new Constant("f_c", 1, "1", EN_READING), false))
            .build();

    static final Method FRANCE = solar("practice-fr-solar", "French sheet for solar loops", FRENCH_SHEET)
            .expansion(GLYCOL)
            .reserve(THREE_LITRES)
            .vapour(new VapourAllowance(new Constant("f_c", 1.1, "1", FRENCH_SHEET), false))
            .build();

    private SolarMethods() {}

    private static MethodBuilder solar(String name, String title, Source source) {
        return Method.named(name, title, source)
                .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
                .pipeCredit(PipeCredit.NONE)
                .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(1.5), IDAE_PRESSURES))
                .finalPressure(FINAL)
                .atmosphere(OneBar.of(IDAE_GUIDE))
                .remark(
                        "Keep the membrane below its limit, 70 degC for most: put the vessel on the cold side, uninsulated, with a"
                                + " pre-cooling vessel where vapour may come near.",
                        MEMBRANE)
                .remark(
                        "Stagnation wears the fluid: check pH and freezing point every year, and the loop's content after each"
                                + " stagnation.",
                        DEGRADATION)
                .remark(MethodRemark.above(
                        DEGRADES,
                        "Above about 150 degC (300 degF) glycol and its inhibitors break down quickly: keep the field emptying"
                                + " well, and take a fluid made for it.",
                        DEGRADATION));
    }
}
