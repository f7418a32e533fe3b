package org.ullage.reference;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.diagnosis.Evidence;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Units;

/**
 * How often a diagnosis is right: synthetic systems with known faults, read with the errors of ordinary instruments, are put to {@link
 * Diagnosis}. The pressures come from the mass balance of loop and vessel, not from what the diagnosis reasons with. Immutable.
 *
 * <pre>{@code
 * FaultTrial trial = FaultTrial.of(400, TemperatureDifference.kelvins(40), false);
 * double falseAlarms = trial.share(SeededFault.HEALTHY, d -> d.decided() && d.likeliest().hypothesis().isFailedVessel());
 * }</pre>
 *
 * @param warming what lies between the readings
 * @param chargeMeasured whether the vessel was drained and its charge measured as well
 * @param diagnoses of each fault
 */
public record FaultTrial(
        TemperatureDifference warming, boolean chargeMeasured, Map<SeededFault, List<Diagnosis>> diagnoses) {

    private static final int PUBLISHED_SYSTEMS = 400;

    private static final long SEED = 8_371_996;

    /**
     * Copies the diagnoses.
     *
     * @param warming what lies between the readings
     * @param chargeMeasured whether the charge was measured as well
     * @param diagnoses of each fault
     */
    public FaultTrial {
        diagnoses = Collections.unmodifiableMap(new EnumMap<>(diagnoses));
    }

    /**
     * Draws systems, reads them and lets them be diagnosed. The same arguments give the same trial.
     *
     * @param systems how many of each fault
     * @param warming what lies between the readings
     * @param chargeMeasured whether the charge is measured as well
     * @return the trial
     */
    public static FaultTrial of(int systems, TemperatureDifference warming, boolean chargeMeasured) {
        Map<SeededFault, List<Diagnosis>> diagnoses = new EnumMap<>(SeededFault.class);
        for (SeededFault fault : SeededFault.values()) {
            Random random = new Random(SEED);
            // Drawn one after the other, so that a trial can be repeated; weighing them is the slow part.
            // weighing them is the slow part.
            List<Visit> visits = Stream.generate(() -> new SyntheticSystem(fault, random))
                    .limit(systems)
                    .map(system -> Visit.to(system, warming, chargeMeasured))
                    .toList();
            diagnoses.put(fault, visits.parallelStream().map(Visit::diagnose).toList());
        }
        return new FaultTrial(warming, chargeMeasured, diagnoses);
    }

    private record Visit(SyntheticSystem system, Evidence evidence) {

        static Visit to(SyntheticSystem system, TemperatureDifference warming, boolean chargeMeasured) {
            Evidence readings = system.read(warming.in(Units.KELVIN_DIFFERENCE));
            return new Visit(system, chargeMeasured ? readings.with(system.measureCharge()) : readings);
        }

        Diagnosis diagnose() {
            return Diagnosis.of(system.record(), evidence);
        }
    }

    /**
     * The trials whose tables are published: 40 K between the readings, the same with the charge measured, and 10 K.
     *
     * @return three trials of 400 systems of each fault
     */
    public static List<FaultTrial> published() {
        return List.of(
                of(PUBLISHED_SYSTEMS, TemperatureDifference.kelvins(40), false),
                of(PUBLISHED_SYSTEMS, TemperatureDifference.kelvins(40), true),
                of(PUBLISHED_SYSTEMS, TemperatureDifference.kelvins(10), false));
    }

    /**
     * How often something holds of the diagnoses of a fault.
     *
     * @param fault what was put wrong
     * @param holds of a diagnosis
     * @return the share, from 0 to 1
     */
    public double share(SeededFault fault, Predicate<Diagnosis> holds) {
        List<Diagnosis> ofFault = diagnoses.getOrDefault(fault, List.of());
        return ofFault.stream().filter(holds).count() / (double) ofFault.size();
    }

    /**
     * What was done on the visits.
     *
     * @return such as {@code 40 K between the readings, charge measured}
     */
    public String title() {
        return warming.text(Units.KELVIN_DIFFERENCE) + " between the readings"
                + (chargeMeasured ? ", charge measured" : "");
    }
}
