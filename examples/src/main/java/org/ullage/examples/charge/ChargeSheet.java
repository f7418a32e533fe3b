package org.ullage.examples.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ullage.charge.ChargePlan;
import org.ullage.charge.GaugeChoice;
import org.ullage.quantity.UnitSystem;
import org.ullage.workings.Caution;

/** A charge plan as CSV. */
final class ChargeSheet {

    private static final List<String> HEADER = List.of(
            "id",
            "charge_to_set",
            "lowest_fill",
            "highest_fill",
            "fill",
            "gauge_after_filling",
            "gauge_when_hot",
            "found_action",
            "found_correction",
            "found_acceptance_change",
            "gauge_error",
            "gauge_decides",
            "better_gauge",
            "warnings");

    private ChargeSheet() {}

    static List<List<String>> rows(String id, ChargePlan plan, Optional<GaugeChoice> choice, UnitSystem system) {
        List<String> row = new ArrayList<>();
        row.add(id);
        row.add(plan.toSet().pressure().text(system));
        row.add(plan.window().lowest().text(system));
        row.add(plan.window().highest().text(system));
        row.add(plan.fillPressure().text(system));
        row.add(plan.gaugeAfterFilling().text(system));
        row.add(plan.gaugeWhenHot().text(system));
        row.add(plan.found().map(found -> found.action().toString()).orElse(""));
        row.add(plan.found().map(found -> found.correction().signedText(system)).orElse(""));
        row.add(plan.found().map(found -> found.acceptance().signedText(system)).orElse(""));
        row.add(choice.map(given -> given.error().text(system)).orElse(""));
        row.add(choice.map(given -> given.decides() ? "yes" : "no").orElse(""));
        row.add(choice.flatMap(GaugeChoice::better)
                .map(better -> better.text(system))
                .orElse(""));
        List<Caution> warnings = new ArrayList<>(plan.warnings());
        choice.ifPresent(given -> warnings.addAll(given.warnings()));
        row.add(warnings.stream().map(Caution::text).collect(Collectors.joining(" | ")));
        return List.of(HEADER, row);
    }
}
