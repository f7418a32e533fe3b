package org.ullage.examples.charge;

import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import picocli.CommandLine.Option;

/** The charge that was found in the vessel, and the temperature of its gas then. */
final class FoundArguments {

    @Option(
            names = "--found",
            paramLabel = "PRESSURE",
            required = true,
            description = "charge found in the vessel, its water side drained to zero pressure")
    private GaugePressure pressure = GaugePressure.bar(0);

    @Option(
            names = "--found-at",
            paramLabel = "TEMPERATURE",
            required = true,
            description = "temperature of the shell when it was read")
    private Temperature gas = Temperature.celsius(0);

    GaugePressure pressure() {
        return pressure;
    }

    Temperature gas() {
        return gas;
    }
}
