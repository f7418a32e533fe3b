package org.ullage.examples.service;

import org.ullage.charge.Gauge;
import org.ullage.diagnosis.Evidence;
import org.ullage.diagnosis.GaugeReading;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import picocli.CommandLine.Option;

/** The two readings of a visit. */
final class ReadingArguments {

    @Option(
            names = "--cold",
            paramLabel = "PRESSURE",
            required = true,
            description = "pressure read with the loop cold")
    private GaugePressure cold = GaugePressure.bar(0);

    @Option(
            names = "--cold-at",
            paramLabel = "TEMPERATURE",
            required = true,
            description = "mean temperature of the loop then")
    private Temperature coldAt = Temperature.celsius(0);

    @Option(names = "--hot", paramLabel = "PRESSURE", required = true, description = "pressure read with the loop hot")
    private GaugePressure hot = GaugePressure.bar(0);

    @Option(
            names = "--hot-at",
            paramLabel = "TEMPERATURE",
            required = true,
            description = "mean temperature of the loop then")
    private Temperature hotAt = Temperature.celsius(0);

    @Option(
            names = "--thermometer",
            paramLabel = "DIFFERENCE",
            description = "what the mean temperature may be off by; 1 K if not given")
    private TemperatureDifference thermometer = TemperatureDifference.kelvins(1);

    Evidence evidence(Gauge gauge) {
        return Evidence.of(
                GaugeReading.of(cold, gauge.errorAt(cold), coldAt, thermometer),
                GaugeReading.of(hot, gauge.errorAt(hot), hotAt, thermometer));
    }
}
