package org.ullage.diagnosis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.OutOfRangeException;

/**
 * What was found on a visit. Nothing may have been filled, vented or drained between the two readings. Immutable.
 *
 * @param cold the colder reading
 * @param hot the hotter reading
 * @param signs what inspections found, one sign of each inspection at most
 * @param charge the charge with the water side at zero pressure, or null if it was not measured
 */
public record Evidence(
        GaugeReading cold,
        GaugeReading hot,
        List<Sign> signs,
        @Nullable MeasuredCharge charge) implements Serializable {

    /**
     * Checks the order of the readings and that no inspection has two outcomes.
     *
     * @param cold the colder reading
     * @param hot the hotter reading
     * @param signs what inspections found
     * @param charge the charge, or null
     * @throws OutOfRangeException if the hot reading is not the warmer one, or two signs come of one inspection
     */
    public Evidence {
        signs = List.copyOf(signs);
        if (hot.reading().temperature().compareTo(cold.reading().temperature()) <= 0) {
            throw new OutOfRangeException(
                    "hot temperature",
                    hot.reading().temperature().textInBothSystems(),
                    "above that of the cold reading, "
                            + cold.reading().temperature().textInBothSystems(),
                    "give the colder reading first; without a change of temperature a swing tells nothing");
        }
        if (signs.stream().map(Sign::inspection).distinct().count() < signs.size()) {
            throw new OutOfRangeException(
                    "signs", signs.toString(), "one for each inspection", "keep the sign that is true");
        }
    }

    /**
     * Two readings and nothing else.
     *
     * @param cold the colder reading
     * @param hot the hotter reading
     * @return the evidence
     * @throws OutOfRangeException if the hot reading is not the warmer one
     */
    public static Evidence of(GaugeReading cold, GaugeReading hot) {
        return new Evidence(cold, hot, List.of(), null);
    }

    /**
     * Adds a sign.
     *
     * @param sign what an inspection found
     * @return the evidence with it
     * @throws OutOfRangeException if that inspection has a sign already
     */
    public Evidence with(Sign sign) {
        List<Sign> more = new ArrayList<>(signs);
        more.add(sign);
        return new Evidence(cold, hot, more, charge);
    }

    /**
     * Adds the measured charge.
     *
     * @param measured the charge with the water side at zero pressure
     * @return the evidence with it
     */
    public Evidence with(MeasuredCharge measured) {
        return new Evidence(cold, hot, signs, measured);
    }
}
