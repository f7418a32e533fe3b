package org.ullage.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.method.SizingJob;
import org.ullage.quantity.Quantity;

/** The inputs of a sizing as a list: one for each {@link SizingInput} in its order, those that are not uncertain as the job has them. */
final class DrawnInputs {

    private DrawnInputs() {}

    /** What the job does not have is zero and not looked at. */
    static List<ModelInput> of(SizingJob job, Map<SizingInput, Uncertain<?>> spreads) {
        List<ModelInput> inputs = new ArrayList<>();
        for (SizingInput input : SizingInput.values()) {
            Uncertain<?> value = spreads.get(input);
            Spread spread = value == null ? Spread.exactly(given(job, input)) : value.spread();
            inputs.add(new ModelInput(input.toString(), spread));
        }
        return inputs;
    }

    private static double given(SizingJob job, SizingInput input) {
        return switch (input) {
            case CONTENTS -> job.loop().contents().si();
            case COLD_TEMPERATURE, HOT_TEMPERATURE -> 0; // certain temperatures stay in the job
            case STATIC_HEAD -> siOf(job.pressures().staticHead());
            case COLD_PRESSURE -> siOf(job.pressures().coldPressure());
            case CHARGE -> siOf(job.pressures().preCharge());
            case FINAL_PRESSURE -> siOf(job.pressures().finalPressure());
            case RELIEF_SETTING -> siOf(job.pressures().reliefSetting());
        };
    }

    private static double siOf(@Nullable Quantity<?, ?> quantity) {
        return quantity == null ? 0 : quantity.si();
    }
}
