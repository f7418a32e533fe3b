package org.ullage.sizing;

import java.util.List;
import org.ullage.loop.LoopFluid;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;

/** The fluid as the input that varies. */
record FluidAxis(List<LoopFluid> values) implements SweepAxis {

    FluidAxis(List<LoopFluid> values) {
        if (values.isEmpty()) {
            throw new OutOfRangeException("fluids", "none", "one or more", "give the fluids to try");
        }
        this.values = List.copyOf(values);
    }

    @Override
    public String words() {
        return "fluid";
    }

    @Override
    public List<String> labels(UnitSystem system) {
        return values.stream().map(LoopFluid::toString).toList();
    }

    @Override
    public int size() {
        return values.size();
    }
}
