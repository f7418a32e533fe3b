package org.ullage.sizing;

import java.util.List;
import org.ullage.method.SizingInput;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.UnitSystem;

/** An input that is a number; {@link SweepAxis} makes it with values of the right type. */
record NumberAxis(SizingInput input, List<? extends Quantity<?, ?>> values) implements SweepAxis {

    NumberAxis(SizingInput input, List<? extends Quantity<?, ?>> values) {
        if (values.isEmpty()) {
            throw new OutOfRangeException("values of the " + input, "none", "one or more", "give the values to try");
        }
        this.input = input;
        this.values = List.copyOf(values);
    }

    /** In SI units. */
    double[] numbers() {
        return values.stream().mapToDouble(Quantity::si).toArray();
    }

    @Override
    public String words() {
        return input.toString();
    }

    @Override
    public List<String> labels(UnitSystem system) {
        return values.stream().map(value -> value.text(system)).toList();
    }

    @Override
    public int size() {
        return values.size();
    }
}
