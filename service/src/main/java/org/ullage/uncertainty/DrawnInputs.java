package org.ullage.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ullage.method.SizingInput;

/** The inputs of a sizing as a list: one for each {@link SizingInput} in its order, those that are not uncertain as the job has them. */
final class DrawnInputs {

    private DrawnInputs() {}

    /** What the job does not have is zero and not looked at. */
    static List<ModelInput> of(double[] ownRow, Map<SizingInput, Uncertain<?>> spreads) {
        List<ModelInput> inputs = new ArrayList<>();
        for (SizingInput input : SizingInput.values()) {
            Uncertain<?> value = spreads.get(input);
            Spread spread = value == null ? Spread.exactly(ownRow[input.place()]) : value.spread();
            inputs.add(new ModelInput(input.toString(), spread));
        }
        return inputs;
    }
}
