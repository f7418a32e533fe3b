package org.ullage.published;

import java.util.List;
import org.ullage.method.AtLeastExpansion;
import org.ullage.method.Method;
import org.ullage.method.MethodBuilder;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.method.PolynomialExpansion;
import org.ullage.method.TemperatureRange;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.vessel.VesselKind;
import org.ullage.workings.Caution;

/**
 * UNE 100155:2004 (Spain): V_t = V C_e C_p with C_e = (3.24 t^2 + 102.13 t - 2708.3) 1e-6 of the highest temperature, which is water
 * from 4 degC net of steel pipe, and C_p = P_M / (P_M - P_m) in absolute pressures. P_m is the cold pressure at the vessel, not below
 * 1.5 bar absolute; the rule names no margin over the static head, 0.3 bar is taken. P_M is the relief setting.
 *
 * <p>Refused outside 30 to 120 degC. Warns for mixtures; {@link UneGlycolExpansion} has the remembered glycol factor.
 */
final class Une100155Method {

    private static final String STANDARD = "UNE 100155:2004";

    private static final Source FORMULA = Source.secondHand(STANDARD, "C_e and C_p", "Spanish course notes");

    private static final Source RANGE = Source.fromMemory(STANDARD, "30 to 120 degC");

    private static final Source COMPARISON =
            Source.computed("density of water after Kell 1975", "expansion from 4 degC less 3 x 12e-6 per K of steel");

    private static final Source SETTING =
            Source.secondHand(STANDARD, "P_M: relief setting + 1", "a Spanish vocational course");

    private static final Source LOWER =
            Source.fromMemory(STANDARD, "P_M: the lower of 0.9 x setting + 1 and setting - 0.35 + 1");

    private static final Source CHILLED_LEAST = Source.fromMemory(STANDARD, "chilled water: C_e not below 0.004");

    private static final Source COLD = Source.secondHand(
            STANDARD,
            "P_m: at least 0.5 + 1; it names no margin at the top, 0.3 bar is common practice",
            "a Spanish vocational course");

    private static final Constant C0 = new Constant("c0", -2708.3e-6, "1", FORMULA);
    private static final Constant C1 = new Constant("c1", 102.13e-6, "1/degC", FORMULA);
    private static final Constant C2 = new Constant("c2", 3.24e-6, "1/degC2", FORMULA);
    private static final Constant LEAST = new Constant("C_e_min", 0.004, "1", CHILLED_LEAST);

    private static final Temperature LOWEST = celsius(new Constant("t_min", 30, "degC", RANGE).value());
    private static final Temperature HIGHEST = celsius(new Constant("t_max", 120, "degC", RANGE).value());
    private static final Temperature COUNTS_FROM = celsius(new Constant("t_fill", 4, "degC", COMPARISON).value());
    private static final Temperature MAY_BE_CHILLED_TO = celsius(new Constant("t", 50, "degC", COMPARISON).value());

    private static final TemperatureRange TEMPERATURES = new TemperatureRange(
            COUNTS_FROM,
            LOWEST,
            HIGHEST,
            List.of(new TemperatureRange.Remark(
                    LOWEST,
                    MAY_BE_CHILLED_TO,
                    new Caution(
                            "This rule is for heating. For chilled water the standard's least coefficient is 0.004: take"
                                    + " une-100155-chilled.",
                            CHILLED_LEAST))),
            RANGE);

    /** The coefficient C_e. */
    static final PolynomialExpansion EXPANSION =
            new PolynomialExpansion(Units.CELSIUS, C0, C1, C2, TEMPERATURES, null, FORMULA);

    static final Method METHOD = named("une-100155", "UNE 100155:2004").build();

    /** With the lower of two margins below the relief setting, as remembered. */
    static final Method MARGIN = named("une-100155-margin", "UNE 100155:2004, final pressure below the relief setting")
            .finalPressure(new FinalPressureRule(0.9, PressureDifference.bar(0.35), LOWER))
            .remark(MethodRemark.remembered(LOWER))
            .build();

    /** For chilled water: the coefficient not below 0.004, at any temperature up to 120 degC. */
    static final Method CHILLED = named("une-100155-chilled", "UNE 100155:2004, chilled water")
            .expansion(new AtLeastExpansion(EXPANSION, LEAST))
            .remark(MethodRemark.remembered(CHILLED_LEAST))
            .build();

    private Une100155Method() {}

    private static MethodBuilder named(String name, String title) {
        return Method.named(name, title, FORMULA)
                .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
                .expansion(EXPANSION)
                .pipeCredit(PipeCredit.INCLUDED)
                .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0.3), COLD)
                        .notBelow(AbsolutePressure.bar(1.5), COLD))
                .finalPressure(FinalPressureRule.setting(SETTING))
                .atmosphere(OneBar.of(SETTING));
    }

    private static Temperature celsius(double number) {
        return Temperature.celsius(number);
    }
}
