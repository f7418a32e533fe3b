package org.ullage.examples.service;

import org.jspecify.annotations.Nullable;
import org.ullage.diagnosis.InstalledSystem;
import org.ullage.examples.size.FoundLoop;
import org.ullage.method.Sizing;
import org.ullage.operation.Reading;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import picocli.CommandLine.Option;

/** What was installed on a loop of a file: the vessel, its charge and the fill. */
final class InstalledArguments {

    @Option(
            names = "--nominal",
            paramLabel = "VOLUME",
            required = true,
            description = "nominal volume of the vessel, or of several of one charge together")
    private Volume nominal = Volume.litres(0);

    @Option(
            names = "--charge",
            paramLabel = "PRESSURE",
            description = "charge that was set, as it reads at 20 degC; that of the sizing if not given")
    private @Nullable GaugePressure charge;

    @Option(names = "--fill", paramLabel = "PRESSURE", required = true, description = "fill pressure at the vessel")
    private GaugePressure fill = GaugePressure.bar(0);

    @Option(
            names = "--fill-highest",
            paramLabel = "PRESSURE",
            description = "highest fill pressure; that of the fill plan if not given")
    private @Nullable GaugePressure highest;

    @Option(
            names = "--fill-at",
            paramLabel = "TEMPERATURE",
            required = true,
            description = "water temperature at the fill")
    private Temperature fillAt = Temperature.celsius(0);

    @Option(
            names = "--contents-within",
            paramLabel = "SHARE",
            description = "how far the contents may be off, such as \"5 vol%%\"; that if not given")
    private VolumeFraction contentsWithin = VolumeFraction.percent(5);

    /**
     * What was installed on a loop, worked out once.
     *
     * @throws IllegalArgumentException if the method of its line refuses it
     */
    Installed on(FoundLoop line) {
        Sizing sizing = line.size(line.method());
        GaugePressure set = charge == null ? sizing.preCharge() : charge;
        return new Installed(line, sizing, nominal, set, new Reading(fill, fillAt), contentsWithin);
    }

    /** What a diagnosis holds readings against. */
    InstalledSystem system(Installed installed) {
        return installed.system(highest == null ? installed.highestFill() : highest);
    }
}
