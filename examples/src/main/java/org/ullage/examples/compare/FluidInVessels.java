package org.ullage.examples.compare;

import java.util.ArrayList;
import java.util.List;
import org.ullage.comparison.VesselByFluid;
import org.ullage.examples.size.FoundLoop;
import org.ullage.loop.LoopFluid;

/** What the choice of a fluid's model costs one loop in vessel. */
final class FluidInVessels {

    private final FoundLoop loop;
    private final FluidModels models;
    private final VesselByFluid vessels;

    FluidInVessels(FoundLoop loop, LoopFluid chosen) {
        this.loop = loop;
        this.models = FluidModels.of(chosen);
        this.vessels = VesselByFluid.of(loop.job(), loop.method(), models.fluids());
    }

    String text() {
        StringBuilder text = new StringBuilder();
        text.append("Vessel of loop ").append(loop.id()).append(" by ");
        text.append(loop.method().title()).append('\n').append(vessels.text(loop.system()));
        models.refusals()
                .forEach((model, reason) ->
                        text.append(model).append(" refused: ").append(reason).append('\n'));
        return text.toString();
    }

    List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>(vessels.table(loop.system()));
        String fluid = models.fluids().get(0).name();
        models.refusals().forEach((model, reason) -> rows.add(List.of(fluid, model, "", "", "", reason)));
        return rows;
    }
}
