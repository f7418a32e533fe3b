package org.ullage.published;

import java.util.List;
import org.ullage.method.DensityExpansion;
import org.ullage.method.HotBasis;
import org.ullage.method.Method;
import org.ullage.method.MethodBuilder;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.method.RiseExpansion;
import org.ullage.method.TabulatedExpansion;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselKind;

/**
 * National rules for open tanks; the volume is the useful one, between the water level when cold and the overflow. A tank needs no
 * pressures. {@link Methods#ASHRAE} sizes open tanks too, and {@link OpenTankByRadiation} is a historic rule.
 */
final class OpenTankMethods {

    private static final Source NO_PRESSURES =
            Source.commonPractice("an open tank stands under the pressure of the air");

    private static final Source NO_MARGIN = Source.commonPractice("useful volume equal to the expansion");

    private static final Source FRENCH =
            Source.published("French course on open vessels", "first part, solved questions");

    private static final Source HUNGARIAN =
            Source.published("Hungarian text on open tanks", "V_v = V x 0.00043 x dt, from 10 degC to the mean");

    private static final Source CHINESE = Source.secondHand(
            "Chinese air-conditioning design manual", "p. 794: 0.0006 per K", "a note that quotes it");

    private static final Source CHINESE_HEATING = Source.secondHand(
            "Chinese heating handbook", "0.031, 0.038 and 0.043 of the contents", "a note that quotes it");

    private static final Source CHINESE_CHECK =
            Source.computed("density of water after Kell 1975", "7 to 32 degC: 0.49 %, the rule gives 1.5 %");

    static final Method FRANCE = open("practice-fr-open", "French course, open tank", FRENCH)
            .hotBasis(HotBasis.MEAN)
            .expansion(new DensityExpansion(FRENCH))
            .build();

    static final Method HUNGARY = open("practice-hu-open", "Hungarian rule, open tank", HUNGARIAN)
            .hotBasis(HotBasis.MEAN)
            .expansion(new RiseExpansion(
                    new Constant("beta", 0.00043, "1/K", HUNGARIAN),
                    Temperature.celsius(new Constant("t_fill", 10, "degC", HUNGARIAN).value()),
                    HUNGARIAN))
            .build();

    static final Method CHINA = open("practice-cn-open", "Chinese rule for air-conditioning, open tank", CHINESE)
            .expansion(new RiseExpansion(new Constant("beta", 0.0006, "1/K", CHINESE), null, CHINESE))
            .remark("For chilled water this coefficient is up to three times too high.", CHINESE_CHECK)
            .remark("The rule wants the tank's bottom 1.5 m or more above the highest pipe.", CHINESE)
            .build();

    static final Method CHINA_HEATING = open(
                    "practice-cn-open-heating", "Chinese heating factors (return 70 degC), open tank", CHINESE_HEATING)
            .expansion(new TabulatedExpansion(
                    List.of(
                            row(95, 0.031, CHINESE_HEATING),
                            row(110, 0.038, CHINESE_HEATING),
                            row(130, 0.043, CHINESE_HEATING)),
                    CHINESE_HEATING))
            .remark(MethodRemark.above(
                    Temperature.celsius(95),
                    "Above 95 degC water would boil under the tank's pressure alone: the tank must stand high enough above the"
                            + " hottest point, which this rule does not check.",
                    CHINESE_HEATING))
            .build();

    private OpenTankMethods() {}

    private static TabulatedExpansion.Row row(double flow, double share, Source source) {
        return new TabulatedExpansion.Row(Temperature.celsius(flow), new Constant("e", share, "1", source));
    }

    private static MethodBuilder open(String name, String title, Source source) {
        return Method.named(name, title, source)
                .vessels(VesselKind.OPEN)
                .pipeCredit(PipeCredit.NONE)
                .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0), NO_PRESSURES))
                .finalPressure(FinalPressureRule.setting(NO_PRESSURES))
                .openAllowance(new Constant("k_open", 1, "1", NO_MARGIN))
                .remark(MethodRemark.practice(source));
    }
}
