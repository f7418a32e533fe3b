package org.ullage.uncertainty;

import org.ullage.quantity.OutOfRangeException;

/** The range of a probability that is asked for. */
final class Probability {

    private Probability() {}

    /** Refuses 0, 1 and what is beyond: no finite number of draws and no normal distribution answers for them. */
    static double require(String name, double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new OutOfRangeException(
                    name, String.valueOf(probability), "above 0 and below 1", "write 0.95 for 95 %");
        }
        return probability;
    }
}
