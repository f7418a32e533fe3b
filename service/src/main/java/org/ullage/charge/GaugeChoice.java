package org.ullage.charge;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.workings.Caution;
import org.ullage.workings.Workings;

/**
 * Whether a gauge can tell what it is read for, and which range would do better: its error at the reading, in pressure, as a share of the
 * absolute pressure (which is what the gas law sees) and in litres of a vessel. Immutable.
 *
 * <pre>{@code
 * GaugeChoice choice = GaugeChoice.of(gauge, GaugePressure.psi(12), GaugePressure.psi(30), air).forVessel(vessel);
 * choice.decides();
 * choice.better();
 * }</pre>
 *
 * @param gauge the gauge at hand
 * @param reading what it is read for, such as the charge
 * @param highest the highest pressure it will see
 * @param atmosphere pressure of the air
 * @param tolerance what difference must be told
 * @param vessel the vessel whose charge is read, or null if no litres are asked for
 * @param ranges the ranges a better gauge may have
 */
public record GaugeChoice(
        Gauge gauge,
        GaugePressure reading,
        GaugePressure highest,
        AbsolutePressure atmosphere,
        GaugeTolerance tolerance,
        @Nullable VesselAcceptance vessel,
        List<GaugeRange> ranges)
        implements Serializable {

    /**
     * Checks that the gauge shows the reading.
     *
     * @param gauge the gauge at hand
     * @param reading what it is read for
     * @param highest the highest pressure it will see
     * @param atmosphere pressure of the air
     * @param tolerance what difference must be told
     * @param vessel the vessel, or null
     * @param ranges the ranges a better gauge may have
     * @throws OutOfRangeException if the reading is not on the dial or above the highest pressure
     */
    public GaugeChoice {
        ranges = List.copyOf(ranges);
        gauge.range().position(reading);
        if (highest.compareTo(reading) < 0) {
            throw new OutOfRangeException(
                    "highest pressure the gauge will see",
                    highest.textInBothSystems(),
                    "at or above the reading " + reading.textInBothSystems(),
                    "give the pressure of the hot loop, or the reading itself for a charge gauge that sees no other");
        }
    }

    /**
     * A gauge and what it is read for, to within the usual tolerance; better ranges are those its class usually comes in.
     *
     * @param gauge the gauge at hand
     * @param reading what it is read for
     * @param highest the highest pressure it will see
     * @param atmosphere pressure of the air
     * @return the choice
     * @throws OutOfRangeException if the reading is not on the dial or above the highest pressure
     */
    public static GaugeChoice of(
            Gauge gauge, GaugePressure reading, GaugePressure highest, AbsolutePressure atmosphere) {
        List<GaugeRange> usual = GaugeRanges.usualFor(gauge.accuracy());
        return new GaugeChoice(gauge, reading, highest, atmosphere, GaugeTolerance.USUAL, null, usual);
    }

    /**
     * The same with the caller's own tolerance.
     *
     * @param limit what difference must be told
     * @return a copy
     */
    public GaugeChoice within(PressureDifference limit) {
        return new GaugeChoice(gauge, reading, highest, atmosphere, GaugeTolerance.of(limit), vessel, ranges);
    }

    /**
     * The same with the vessel whose charge is read.
     *
     * @param charged the vessel between cold and final pressure
     * @return a copy
     */
    public GaugeChoice forVessel(VesselAcceptance charged) {
        return new GaugeChoice(gauge, reading, highest, atmosphere, tolerance, charged, ranges);
    }

    /**
     * The same with the ranges that are at hand.
     *
     * @param others the ranges a better gauge may have
     * @return a copy
     */
    public GaugeChoice among(List<GaugeRange> others) {
        return new GaugeChoice(gauge, reading, highest, atmosphere, tolerance, vessel, others);
    }

    /**
     * How far the gauge may be off at the reading, either way.
     *
     * @return the error
     */
    public PressureDifference error() {
        return gauge.errorAt(reading);
    }

    /**
     * The error as a share of the absolute pressure, by which every volume of gas is wrong.
     *
     * @return such as 0.11 for 11 %
     */
    public double errorOfAbsolute() {
        return error().si() / reading.absolute(atmosphere).si();
    }

    /**
     * Whether the gauge can tell what must be told.
     *
     * @return whether its error is within the tolerance
     */
    public boolean decides() {
        return tolerance.holds(error());
    }

    /**
     * What the vessel gains or loses in acceptance if the true charge is lower than the reading by the error.
     *
     * @return negative for a loss, empty without a vessel
     * @throws OutOfRangeException if the error reaches down to vacuum
     */
    public Optional<Volume> acceptanceIfLow() {
        return acceptanceWith(reading.minus(error()));
    }

    /**
     * What the vessel gains or loses in acceptance if the true charge is higher than the reading by the error.
     *
     * @return negative for a loss, empty without a vessel
     */
    public Optional<Volume> acceptanceIfHigh() {
        return acceptanceWith(reading.plus(error()));
    }

    private Optional<Volume> acceptanceWith(GaugePressure charge) {
        return Optional.ofNullable(vessel)
                .map(taken -> taken.change(reading.absolute(atmosphere), charge.absolute(atmosphere)));
    }

    /**
     * A gauge of the same class with a better range: one that covers the highest pressure, with the reading in the middle half if any
     * range has it there, and the least error.
     *
     * @return the gauge; empty if the one at hand covers the highest pressure and none is finer at the reading, or if none covers it
     */
    public Optional<Gauge> better() {
        boolean enough = gauge.range().covers(highest);
        return GaugeRanges.best(ranges, gauge.accuracy(), reading, highest)
                .filter(other -> !enough || other.errorAt(reading).compareTo(error()) < 0);
    }

    /**
     * What stands against the gauge.
     *
     * @return the warnings, empty if it decides, covers the highest pressure and has the reading in its middle half
     */
    public List<Caution> warnings() {
        return GaugeWarnings.of(this);
    }

    /**
     * How the error was reached.
     *
     * @return the steps
     */
    public Workings workings() {
        return GaugeWorkings.of(this);
    }

    /**
     * The judgement in words.
     *
     * @param system metric or inch-pound
     * @return several lines, each ended by a line feed
     */
    public String text(UnitSystem system) {
        return GaugeWords.of(this, system);
    }
}
