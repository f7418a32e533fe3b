package org.ullage.uncertainty;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;

/**
 * One input of a {@link ModelFunction}. Immutable.
 *
 * @param name in words, such as {@code cold pressure}
 * @param spread what is known of its value
 * @param degreesOfFreedom how well its standard uncertainty is known, above zero; null if it counts as exact
 */
public record ModelInput(
        String name, Spread spread, @Nullable Double degreesOfFreedom) implements Serializable {

    /**
     * Checks the degrees of freedom.
     *
     * @param name in words
     * @param spread what is known of its value
     * @param degreesOfFreedom above zero, or null
     * @throws OutOfRangeException if they are not above zero and finite
     */
    public ModelInput {
        if (degreesOfFreedom != null && !(degreesOfFreedom > 0 && Double.isFinite(degreesOfFreedom))) {
            throw new OutOfRangeException(
                    "degrees of freedom of the " + name,
                    String.valueOf(degreesOfFreedom),
                    "above zero and finite",
                    "leave them out for a standard uncertainty that counts as exact");
        }
    }

    /**
     * An input whose standard uncertainty counts as exact.
     *
     * @param name in words
     * @param spread what is known of its value
     */
    public ModelInput(String name, Spread spread) {
        this(name, spread, null);
    }
}
