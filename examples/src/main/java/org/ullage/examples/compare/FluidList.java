package org.ullage.examples.compare;

import java.util.ArrayList;
import java.util.List;
import org.ullage.fluids.Fluids;
import org.ullage.fluids.GlycolModel;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.UnitSystem;

/** The fluids that can be named, and the models behind them. */
final class FluidList {

    private FluidList() {}

    static String text(UnitSystem system) {
        StringBuilder text = new StringBuilder("names\n");
        Fluids.known().forEach(name -> text.append("  ").append(name).append('\n'));
        text.append("models\n");
        for (List<String> row : models(system)) {
            text.append("  ").append(String.join(", ", row.subList(0, 2)));
            text.append(": ").append(row.get(2)).append("\n      ");
            text.append(row.get(3)).append('\n');
        }
        return text.toString();
    }

    static List<List<String>> rows(UnitSystem system) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("fluid", "model", "remark", "source"));
        rows.addAll(models(system));
        return rows;
    }

    private static List<List<String>> models(UnitSystem system) {
        List<List<String>> models = new ArrayList<>();
        for (LoopFluid water : Fluids.waterModels()) {
            String span = water.lowest().text(system) + " to " + water.highest().text(system);
            models.add(List.of(water.name(), water.model(), span, water.source().toString()));
        }
        for (GlycolModel model : GlycolModel.values()) {
            models.add(List.of(
                    "glycol/" + model.id(),
                    model.title(),
                    model.remark(),
                    model.source().toString()));
        }
        return models;
    }
}
