package org.ullage.examples.demo;

import org.ullage.charge.ChargeCheckSteps;
import org.ullage.charge.ChargePlan;
import org.ullage.charge.CheckStep;
import org.ullage.charge.Gauge;
import org.ullage.charge.GaugeChoice;
import org.ullage.charge.VesselConnection;
import org.ullage.quantity.UnitSystem;

/** What to set on the day, and whether the gauge at hand can tell. */
record ChargeSection(ChargePlan plan, Gauge gauge) implements Section {

    @Override
    public void print(Page page) {
        page.heading("The charge and the fill on the day");
        page.valueHead();
        page.value("Temperature of the air, and so of the gas", plan.job().air());
        page.value("CHARGE to set, empty of water", plan.toSet().pressure());
        page.value("Temperature of the water", plan.job().water());
        page.value("Lowest fill pressure", plan.window().lowest());
        page.value("Highest fill pressure", plan.window().highest());
        page.value("FILL pressure at the vessel", plan.fillPressure());
        page.value("The gauge should read after filling", plan.gaugeAfterFilling());
        page.value("and with the loop at its hottest", plan.gaugeWhenHot());
        plan.found().ifPresent(found -> {
            page.value("Charge found in the vessel as delivered", found.found().pressure());
            page.words("What to do about it", found.action().toString());
            page.value("by", found.correction());
            page.value("Change of acceptance if left so", found.acceptance());
        });
        choice(page);
        steps(page);
    }

    private void choice(Page page) {
        GaugeChoice choice = GaugeChoice.of(
                gauge,
                plan.toSet().pressure(),
                plan.hotPressure(),
                plan.job().sizing().atmosphere());
        page.value("The gauge at hand may be off there by", choice.error());
        choice.warnings().forEach(warning -> page.bullet(warning.toString()));
        choice.better().ifPresent(better -> page.bullet("Better: " + better.text(UnitSystem.SI)));
    }

    private static void steps(Page page) {
        page.heading("The steps of the check");
        int number = 1;
        for (CheckStep step : new ChargeCheckSteps(VesselConnection.LOCKABLE_VALVE_WITH_DRAIN).steps()) {
            page.line(" " + (number < 10 ? " " : "") + number + "  " + step.text());
            number++;
        }
    }
}
