package org.ullage.uncertainty;

import java.io.Serializable;
import java.util.List;
import org.ullage.loop.VolumeRange;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.AdditiveQuantity;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Quantity;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

/**
 * A quantity with what is known of its value. Immutable.
 *
 * @param <Q> the type of the quantity
 */
@SuppressWarnings("UnusedTypeParameter") // it keeps a pressure from standing where a volume is wanted
public final class Uncertain<Q extends Quantity<?, ?>> implements Serializable {

    private static final long serialVersionUID = 1L;

    private final Spread spread;
    private final String pattern;

    @SuppressWarnings("serial") // the lists of List.copyOf and List.of are serializable
    private final List<Quantity<?, ?>> stated;

    private Uncertain(Spread spread, String pattern, Quantity<?, ?>... stated) {
        this.spread = spread;
        this.pattern = pattern;
        this.stated = List.of(stated);
    }

    /**
     * A value that counts as exact.
     *
     * @param value the value
     * @param <Q> the type of the quantity
     * @return the value without spread
     */
    public static <Q extends Quantity<?, ?>> Uncertain<Q> exactly(Q value) {
        return new Uncertain<>(Spread.exactly(value.si()), "%s, exact", value);
    }

    /**
     * A normal distribution.
     *
     * @param mean the expectation
     * @param standardUncertainty the standard deviation, zero or more
     * @param <Q> the type of the quantity
     * @return the uncertain value
     * @throws OutOfRangeException if the uncertainty is negative
     */
    public static <Q extends AdditiveQuantity<?, ?>> Uncertain<Q> normal(Q mean, Q standardUncertainty) {
        return normalOf(mean, standardUncertainty);
    }

    /**
     * A normal distribution of a gauge pressure.
     *
     * @param mean the expectation
     * @param standardUncertainty the standard deviation, zero or more
     * @return the uncertain value
     * @throws OutOfRangeException if the uncertainty is negative
     */
    public static Uncertain<GaugePressure> normal(GaugePressure mean, PressureDifference standardUncertainty) {
        return normalOf(mean, standardUncertainty);
    }

    /**
     * A normal distribution of an absolute pressure.
     *
     * @param mean the expectation
     * @param standardUncertainty the standard deviation, zero or more
     * @return the uncertain value
     * @throws OutOfRangeException if the uncertainty is negative
     */
    public static Uncertain<AbsolutePressure> normal(AbsolutePressure mean, PressureDifference standardUncertainty) {
        return normalOf(mean, standardUncertainty);
    }

    /**
     * A normal distribution of a temperature.
     *
     * @param mean the expectation
     * @param standardUncertainty the standard deviation, zero or more
     * @return the uncertain value
     * @throws OutOfRangeException if the uncertainty is negative
     */
    public static Uncertain<Temperature> normal(Temperature mean, TemperatureDifference standardUncertainty) {
        return normalOf(mean, standardUncertainty);
    }

    private static <Q extends Quantity<?, ?>> Uncertain<Q> normalOf(Q mean, Quantity<?, ?> standardUncertainty) {
        return new Uncertain<>(
                Spread.normal(mean.si(), standardUncertainty.si()),
                "%s, normal, standard uncertainty %s",
                mean,
                standardUncertainty);
    }

    /**
     * Nothing known but the bounds.
     *
     * @param lowest lower bound
     * @param highest upper bound
     * @param <Q> the type of the quantity
     * @return the uncertain value
     * @throws OutOfRangeException if the bounds are out of order
     */
    public static <Q extends Quantity<?, ?>> Uncertain<Q> uniform(Q lowest, Q highest) {
        return new Uncertain<>(Spread.uniform(lowest.si(), highest.si()), "%s to %s, uniform", lowest, highest);
    }

    /**
     * Bounds and the value between them that is most likely.
     *
     * @param lowest lower bound
     * @param mode most likely value
     * @param highest upper bound
     * @param <Q> the type of the quantity
     * @return the uncertain value
     * @throws OutOfRangeException if the values are out of order
     */
    public static <Q extends Quantity<?, ?>> Uncertain<Q> triangular(Q lowest, Q mode, Q highest) {
        return new Uncertain<>(
                Spread.triangular(lowest.si(), mode.si(), highest.si()),
                "%s, most likely %s, up to %s, triangular",
                lowest,
                mode,
                highest);
    }

    /**
     * A volume of which only low and high are trusted; the wider choice.
     *
     * @param range such as the contents of a take-off
     * @return uniform from low to high
     */
    public static Uncertain<Volume> uniform(VolumeRange range) {
        return uniform(range.low(), range.high());
    }

    /**
     * A volume of which the typical value is trusted as the most likely one.
     *
     * @param range such as the contents of a take-off
     * @return triangular, with its top at the typical value
     */
    public static Uncertain<Volume> triangular(VolumeRange range) {
        return triangular(range.low(), range.typical(), range.high());
    }

    /**
     * The pressure at which a relief valve begins to open: anywhere within its tolerance.
     *
     * @param valve the valve
     * @return uniform around the setting
     */
    public static Uncertain<GaugePressure> opening(ReliefValve valve) {
        return uniform(valve.mayOpenFrom(), valve.setting().plus(valve.tolerance()));
    }

    /**
     * The distribution in bare numbers.
     *
     * @return in the coherent SI unit of the quantity
     */
    public Spread spread() {
        return spread;
    }

    /**
     * What was stated, for people.
     *
     * @param system metric or inch-pound
     * @return such as {@code 90 L to 135 L, uniform}
     */
    public String text(UnitSystem system) {
        return String.format(
                pattern, stated.stream().map(value -> value.text(system)).toArray());
    }

    @Override
    public String toString() {
        return text(UnitSystem.SI);
    }
}
