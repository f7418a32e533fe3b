package org.ullage.operation;

import java.io.Serializable;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ullage.loop.Amount;
import org.ullage.loop.Contents;
import org.ullage.loop.ContentsBasis;
import org.ullage.loop.ContentsItem;
import org.ullage.loop.LoopFluid;
import org.ullage.loop.PipeMaterial;
import org.ullage.loop.VolumeRange;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.Digits;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;
import org.ullage.workings.Caution;
import org.ullage.workings.Workings;

/**
 * Contents of a loop from two readings of pressure and temperature: what its vessel took in between them, divided by the net
 * expansion of one volume of contents. The vessel must be sound, its gas at about the same temperature at both readings, and
 * nothing may have been filled, vented or lost in between. Immutable.
 *
 * <p>It stands here and not with the other ways to contents, because it needs both the vessel and the loop.
 *
 * <pre>{@code
 * Reading cold = new Reading(GaugePressure.bar(1.0), Temperature.celsius(15));
 * Reading hot = new Reading(GaugePressure.bar(1.8), Temperature.celsius(70));
 * SoundVessel vessel = new SoundVessel(Volume.litres(50), GaugePressure.bar(0.8), AbsolutePressure.STANDARD_ATMOSPHERE);
 * Contents contents = TwoReadings.of(cold, hot, vessel, fluid, PipeMaterial.STEEL).contents(errors);
 * }</pre>
 */
public final class TwoReadings implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final int DIGITS = 4;

    private final ReadingNumbers numbers;
    private final LoopFluid fluid;
    private final PipeMaterial pipe;

    private TwoReadings(ReadingNumbers numbers, LoopFluid fluid, PipeMaterial pipe) {
        this.numbers = numbers;
        this.fluid = fluid;
        this.pipe = pipe;
    }

    /**
     * Two readings on a loop.
     *
     * @param cold the colder reading, at or above the charge
     * @param hot the hotter reading, above the colder one in pressure and temperature
     * @param vessel the vessel on the loop
     * @param fluid the fluid and its model
     * @param pipe what the loop is made of; {@link PipeMaterial#RIGID} takes no credit and gives the smallest contents
     * @return the readings, ready for the answer
     * @throws OutOfRangeException if the readings are out of order, the cold one is below the charge, or the loop does not expand
     *     between them
     */
    public static TwoReadings of(Reading cold, Reading hot, SoundVessel vessel, LoopFluid fluid, PipeMaterial pipe) {
        requireWarmer(cold.temperature(), hot.temperature());
        AbsolutePressure charge = vessel.absoluteCharge();
        AbsolutePressure coldPressure = cold.pressure().absolute(vessel.ambient());
        AbsolutePressure hotPressure = hot.pressure().absolute(vessel.ambient());
        GasLaw.requireOrder(charge, coldPressure, hotPressure);
        Map<ReadingInput, Double> values = new EnumMap<>(ReadingInput.class);
        values.put(ReadingInput.COLD_PRESSURE, coldPressure.si());
        values.put(ReadingInput.COLD_TEMPERATURE, cold.temperature().si());
        values.put(ReadingInput.HOT_PRESSURE, hotPressure.si());
        values.put(ReadingInput.HOT_TEMPERATURE, hot.temperature().si());
        values.put(ReadingInput.CHARGE, charge.si());
        values.put(ReadingInput.NOMINAL_VOLUME, vessel.nominal().si());
        ReadingNumbers numbers =
                new ReadingNumbers(values, fluid, pipe.linearExpansion().si());
        requireExpansion(numbers.netExpansion());
        return new TwoReadings(numbers, fluid, pipe);
    }

    private static void requireWarmer(Temperature cold, Temperature hot) {
        if (hot.compareTo(cold) <= 0) {
            throw new OutOfRangeException(
                    "hot temperature",
                    hot.textInBothSystems(),
                    "above the cold temperature " + cold.textInBothSystems(),
                    "give the colder reading first");
        }
    }

    private static void requireExpansion(double share) {
        if (!(share > 0)) {
            throw new OutOfRangeException(
                    "net expansion between the readings",
                    Digits.significant(100 * share, DIGITS) + " %",
                    "above zero",
                    "take the readings at warmer temperatures, where the fluid expands more than the pipe");
        }
    }

    /**
     * Water that the vessel took in between the readings.
     *
     * @return V_n p_0 (1/p_1 - 1/p_2)
     */
    public Volume waterTakenIn() {
        return Volume.ofSi(numbers.waterTakenIn());
    }

    /**
     * Net expansion of one volume of contents between the readings.
     *
     * @return v_2/v_1 - 1 - 3 alpha (t_2 - t_1), above zero
     */
    public double netExpansion() {
        return numbers.netExpansion();
    }

    /**
     * What each error is worth in contents: half of what they move when the value moves from low to high.
     *
     * @param errors the errors of the values
     * @return contribution by input
     * @throws OutOfRangeException if an error is so large that the readings are no longer in order
     */
    public Map<ReadingInput, Volume> contributions(ReadingErrors errors) {
        Map<ReadingInput, Volume> contributions = new EnumMap<>(ReadingInput.class);
        for (ReadingInput input : ReadingInput.values()) {
            contributions.put(input, Volume.ofSi(contribution(input, errors.of(input))));
        }
        return Collections.unmodifiableMap(contributions);
    }

    private double contribution(ReadingInput input, double error) {
        if (error == 0) {
            return 0;
        }
        double up = numbers.shifted(input, error).contents();
        double down = numbers.shifted(input, -error).contents();
        if (!(up > 0) || !(down > 0) || !Double.isFinite(up + down)) {
            throw new OutOfRangeException(
                    "error of the " + input,
                    input.text(error),
                    "small enough that the readings stay apart",
                    "take readings that lie further apart, or a finer instrument");
        }
        return Math.abs(up - down) / 2;
    }

    /**
     * The contents at the cold reading, with the uncertainty that the errors bring: the root of the sum of the squared
     * contributions, as the errors are independent.
     *
     * @param errors the errors of the values
     * @return low, typical and high
     * @throws OutOfRangeException if an error is so large that the readings are no longer in order, or the uncertainty is as
     *     large as the contents
     */
    public Contents contents(ReadingErrors errors) {
        Map<ReadingInput, Volume> contributions = contributions(errors);
        double squares = contributions.values().stream()
                .mapToDouble(part -> part.si() * part.si())
                .sum();
        VolumeRange range = VolumeRange.around(Volume.ofSi(numbers.contents()), Volume.ofSi(Math.sqrt(squares)));
        ContentsItem item = ContentsItem.of(
                "loop, from " + waterTakenIn().text(UnitSystem.SI, DIGITS) + " that its vessel took in",
                Amount.of(1),
                range,
                GasLaw.SOURCE,
                fluid.source(),
                pipe.source());
        return new Contents(ContentsBasis.TWO_READINGS, List.of(item), cautions(contributions));
    }

    private List<Caution> cautions(Map<ReadingInput, Volume> contributions) {
        double growth = numbers.hotSpecificVolume() / numbers.coldSpecificVolume() - 1;
        Map.Entry<ReadingInput, Volume> largest =
                Collections.max(contributions.entrySet(), Map.Entry.comparingByValue());
        return List.of(
                new Caution(
                        "The fluid in the vessel is counted as warm as the loop, as sizing methods do; if it stays cold, the"
                                + " contents are up to " + Digits.significant(100 * growth, 2) + " % larger.",
                        Source.computed("conservation of mass", "v_2/v_1 - 1")),
                new Caution(
                        "A waterlogged vessel, a lost charge, trapped gas, or water filled or lost between the readings falsifies"
                                + " the result. The largest single uncertainty, "
                                + largest.getValue().text(UnitSystem.SI, 2) + ", comes from the " + largest.getKey()
                                + ".",
                        Source.commonPractice("readings on a loop in use")));
    }

    /**
     * How the contents were reached, step by step.
     *
     * @return the steps with formulas, values and sources
     */
    public Workings workings() {
        return ReadingWorkings.of(numbers, fluid, pipe);
    }
}
