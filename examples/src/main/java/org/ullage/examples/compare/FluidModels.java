package org.ullage.examples.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ullage.fluids.Fluids;
import org.ullage.fluids.GlycolModel;
import org.ullage.fluids.GlycolSolution;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.OutOfRangeException;

/**
 * A fluid by every model.
 *
 * @param fluids the fluid by each model that reaches its concentration, the chosen one first
 * @param refusals why the others do not, by the model's name
 */
record FluidModels(List<LoopFluid> fluids, Map<String, String> refusals) {

    static FluidModels of(LoopFluid chosen) {
        FluidModels models = new FluidModels(new ArrayList<>(List.of(chosen)), new LinkedHashMap<>());
        if (chosen instanceof GlycolSolution solution) {
            for (GlycolModel model : GlycolModel.values()) {
                models.add(solution, model);
            }
        } else {
            Fluids.waterModels().stream().filter(water -> !water.equals(chosen)).forEach(models.fluids::add);
        }
        return models;
    }

    private void add(GlycolSolution chosen, GlycolModel model) {
        if (model == chosen.densityModel() || model == GlycolModel.ASHRAE_AS_PRINTED) {
            return;
        }
        try {
            fluids.add(Fluids.parse(chosen.name() + "/" + model.id()));
        } catch (OutOfRangeException refusal) {
            refusals.put(model.title(), String.valueOf(refusal.getMessage()));
        }
    }
}
