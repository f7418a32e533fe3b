package org.ullage.reference;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.diagnosis.Hypothesis;

/**
 * How often a diagnosis from two readings is right: synthetic systems with known faults, read with the errors of ordinary instruments,
 * put to {@link Diagnosis}. Immutable.
 *
 * @param warming kelvins between the readings
 * @param verdicts the diagnoses of each fault
 */
public record FaultTrial(double warming, Map<SeededFault, List<Diagnosis>> verdicts) {

    /** The number of systems of each fault in the published table. */
    public static final int SYSTEMS = 400;

    private static final long SEED = 20_240_229;

    /**
     * Copies the diagnoses.
     *
     * @param warming kelvins between the readings
     * @param verdicts the diagnoses of each fault
     */
    public FaultTrial {
        verdicts = Collections.unmodifiableMap(new EnumMap<>(verdicts));
    }

    /**
     * Draws systems, reads them and lets them be diagnosed. The same numbers give the same trial.
     *
     * @param systems how many of each fault
     * @param warming kelvins between the readings
     * @return the trial
     */
    public static FaultTrial of(int systems, double warming) {
        Map<SeededFault, List<Diagnosis>> verdicts = new EnumMap<>(SeededFault.class);
        for (SeededFault fault : SeededFault.values()) {
            Random random = new Random(SEED + fault.ordinal());
            verdicts.put(
                    fault,
                    IntStream.range(0, systems)
                            .mapToObj(i -> diagnose(new SyntheticSystem(fault, random), warming))
                            .toList());
        }
        return new FaultTrial(warming, verdicts);
    }

    private static Diagnosis diagnose(SyntheticSystem system, double warming) {
        return Diagnosis.of(system.record(), system.read(warming));
    }
}
