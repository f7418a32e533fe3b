package org.ullage.charge;

import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/** A charge plan for people. */
final class ChargeWords {

    private ChargeWords() {}

    static String of(ChargePlan plan, UnitSystem system) {
        StringBuilder text = new StringBuilder();
        line(text, "set the charge to " + plan.toSet().text(system) + ", water side empty");
        line(text, "  that is " + plan.wanted().text(system));
        plan.found().ifPresent(found -> line(text, "  " + found.text(system)));
        line(
                text,
                "with the loop at " + plan.job().water().text(system) + " "
                        + plan.window().text(system));
        line(
                text,
                "  fill to " + plan.fillPressure().text(system) + " at the vessel, which then holds "
                        + plan.waterAfterFilling().text(system) + " of water");
        line(
                text,
                "the gauge should read " + plan.gaugeAfterFilling().text(system) + " after filling, with the gas at "
                        + plan.job().air().text(system));
        line(
                text,
                "  and " + plan.gaugeWhenHot().text(system)
                        + " with the loop at its highest temperature and the gas at "
                        + plan.job().sizing().method().gasTemperatures().hot().text(system));
        for (Caution warning : plan.warnings()) {
            line(text, "! " + warning);
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String words) {
        text.append(words).append('\n');
    }
}
