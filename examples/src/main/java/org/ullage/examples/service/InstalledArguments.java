package org.ullage.examples.service;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.diagnosis.InstalledSystem;
import org.ullage.examples.size.FoundLoop;
import org.ullage.loop.LoopTemperatures;
import org.ullage.method.Sizing;
import org.ullage.operation.FillPlan;
import org.ullage.operation.InstalledVessel;
import org.ullage.operation.LoopInUse;
import org.ullage.operation.OperatingBand;
import org.ullage.operation.OperatingCurve;
import org.ullage.operation.OperatingTolerances;
import org.ullage.operation.Reading;
import org.ullage.operation.VesselBank;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import picocli.CommandLine.Option;

/** What was installed on a loop of a file: the vessel, its charge and the fill. */
final class InstalledArguments {

    private static final String VESSEL = "the vessel";

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

    /** Charge and fill are as good as a gauge of the trade. */
    private static final PressureDifference AS_SET = PressureDifference.bar(0.1);

    OperatingCurve curve(FoundLoop line) {
        Sizing sizing = line.size(line.method());
        VesselBank bank =
                new VesselBank(List.of(InstalledVessel.of(VESSEL, nominal, chargeOf(sizing))), sizing.atmosphere());
        return LoopInUse.of(sizing.job().loop(), bank, new Reading(fill, fillAt))
                .curve();
    }

    OperatingBand band(FoundLoop line) {
        return OperatingBand.around(curve(line), new OperatingTolerances(contentsWithin, AS_SET, AS_SET));
    }

    ReliefValve valve(FoundLoop line) {
        GaugePressure setting = line.job().pressures().reliefSetting();
        if (setting == null) {
            throw new IllegalArgumentException(
                    "loop \"" + line.id() + "\" has no relief_setting; without it nothing tells when the valve lifts");
        }
        return ReliefValve.iso4126(setting);
    }

    InstalledSystem system(FoundLoop line) {
        Sizing sizing = line.size(line.method());
        return new InstalledSystem(
                sizing.job().loop(),
                sizing.job().loop().contents().times(contentsWithin.si()),
                nominal,
                chargeOf(sizing),
                fill,
                highestFill(sizing),
                fillAt,
                valve(line),
                coldest(line),
                hottest(line),
                sizing.atmosphere());
    }

    Temperature coldest(FoundLoop line) {
        return required(line, line.job().temperatures().cold(), "cold");
    }

    Temperature hottest(FoundLoop line) {
        LoopTemperatures temperatures = line.job().temperatures();
        return required(line, temperatures.hot(), "hot");
    }

    private static Temperature required(FoundLoop line, @Nullable Temperature temperature, String column) {
        if (temperature == null) {
            throw new IllegalArgumentException("loop \"" + line.id() + "\" has nothing in its column " + column);
        }
        return temperature;
    }

    private GaugePressure chargeOf(Sizing sizing) {
        return charge == null ? sizing.preCharge() : charge;
    }

    private GaugePressure highestFill(Sizing sizing) {
        if (highest != null) {
            return highest;
        }
        GaugePressure planned = FillPlan.of(sizing, nominal, fillAt).highest();
        return planned.compareTo(fill) > 0 ? planned : fill;
    }
}
