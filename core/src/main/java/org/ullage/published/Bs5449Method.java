package org.ullage.published;

import java.util.List;
import org.ullage.method.Method;
import org.ullage.method.MethodBuilder;
import org.ullage.method.MethodRemark;
import org.ullage.method.PipeCredit;
import org.ullage.method.TemperatureRange;
import org.ullage.pressure.ColdPressureRule;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.provenance.Constant;
import org.ullage.provenance.Source;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.vessel.VesselKind;

/**
 * BS 5449, domestic heating: the multipliers by valve setting and charge as UK boiler instructions quote them. Every printed one is met
 * within 1.3 % by 4.9 % expansion, 0.35 bar below the setting and air of 1 bar; the standard's own derivation was not seen. 4.9 % is
 * water at about 107 degC: the table sizes for boiling at the relief pressure, whatever the loop's temperature.
 *
 * <p>Cold pressure is the static head: a charge below it is not allowed, a margin is not named. Refused below 40 degC, where no
 * domestic heating runs; warns above 107 degC. The same instructions also print 0.063 of the contents at 0.7 bar, which this rule does
 * not give (0.092).
 */
final class Bs5449Method {

    private static final Source TABLE = Source.secondHand(
            "BS 5449 and BS 7074-1", "multipliers by valve setting and charge", "several UK boiler instructions");

    private static final Source DEDUCED = Source.computed(
            "BS 5449 multipliers as quoted", "expansion, margin and air that meet every one within 1.3 %");

    private static final Source LOW_FLOW = Source.secondHand(
            "BS 5449 and BS 7074-1",
            "0.8 of the multiplier below 88 degC flow, that is of 0.049",
            "one UK boiler instruction");

    private static final Source NOT_CHILLED = Source.commonPractice("heating loops run at 40 degC or more");

    private static final Constant EXPANSION = new Constant("e", 0.049, "1", DEDUCED);
    private static final Constant LOW_FLOW_EXPANSION = new Constant("e", 0.0392, "1", LOW_FLOW);

    private static final Temperature FILL = celsius(new Constant("t_fill", 10, "degC", DEDUCED).value());
    private static final Temperature LOWEST = celsius(new Constant("t_min", 40, "degC", NOT_CHILLED).value());
    private static final Temperature LOW = celsius(new Constant("t_low", 88, "degC", LOW_FLOW).value());
    private static final Temperature COVERED = celsius(new Constant("t_e", 107, "degC", DEDUCED).value());

    static final Method METHOD = named("bs-5449", "BS 5449 multipliers (UK, domestic)")
            .expansion(FixedExpansion.of(EXPANSION, new TemperatureRange(FILL, LOWEST, null, List.of(), DEDUCED)))
            .remark(MethodRemark.below(
                    LOW,
                    "Below 88 degC flow one instruction allows 0.8 of this vessel: see bs-5449-below-88.",
                    LOW_FLOW))
            .remark(MethodRemark.above(
                    COVERED,
                    "Above 107 degC water expands by more than the 4.9 % of this rule: the vessel may be too small.",
                    DEDUCED))
            .build();

    /** The multipliers times 0.8 for flow temperatures below 88 degC, above which it is refused. */
    static final Method BELOW_88 = named("bs-5449-below-88", "BS 5449 multipliers x 0.8, flow below 88 degC")
            .expansion(
                    FixedExpansion.of(LOW_FLOW_EXPANSION, new TemperatureRange(FILL, LOWEST, LOW, List.of(), LOW_FLOW)))
            .build();

    private Bs5449Method() {}

    private static MethodBuilder named(String name, String title) {
        return Method.named(name, title, TABLE)
                .vessels(VesselKind.DIAPHRAGM, VesselKind.BLADDER)
                .pipeCredit(PipeCredit.NONE)
                .coldPressure(ColdPressureRule.staticHeadPlus(PressureDifference.bar(0), TABLE))
                .finalPressure(FinalPressureRule.below(PressureDifference.bar(0.35), DEDUCED))
                .atmosphere(OneBar.of(DEDUCED));
    }

    private static Temperature celsius(double number) {
        return Temperature.celsius(number);
    }
}
