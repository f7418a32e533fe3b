package org.ullage.charge;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Constant;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.vessel.GasLaw;

/**
 * A rule that says where the scale of a gauge must end, as multiples of a rating. Immutable.
 *
 * @param subject which gauge it is for
 * @param rating what the multiples are of, such as {@code maximum allowable working pressure}
 * @param least lowest multiple
 * @param greatest highest multiple, or null if there is none
 */
public record GaugeScaleRule(
        String subject,
        String rating,
        Constant least,
        @Nullable Constant greatest) implements Serializable {

    /**
     * Whether a range is allowed.
     *
     * @param range of the dial
     * @param rated the rating, above zero on the gauge
     * @return whether the scale ends where the rule asks
     * @throws OutOfRangeException if the rating is not above zero
     */
    public boolean allows(GaugeRange range, GaugePressure rated) {
        if (rated.si() <= 0) {
            throw new OutOfRangeException(
                    rating, rated.textInBothSystems(), "above zero", "take it from the data plate or the valve");
        }
        double multiple = range.high().si() / rated.si();
        return !GasLaw.isAbove(least.value(), multiple)
                && (greatest == null || !GasLaw.isAbove(multiple, greatest.value()));
    }

    /** What the rule asks for, without its source. */
    String words() {
        String most = greatest == null ? "at least " + least.value() : least.value() + " to " + greatest.value();
        return subject + ": scale ends at " + most + " x " + rating;
    }

    /**
     * The rule for people.
     *
     * @return one line with its source
     */
    @Override
    public String toString() {
        return words() + " " + least.source();
    }
}
