package org.ullage.examples.service;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ullage.diagnosis.InstalledSystem;
import org.ullage.examples.size.FoundLoop;
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
import org.ullage.report.OperatingChart;

/** A loop of a file with the vessel that was installed on it. */
final class Installed {

    private static final String VESSEL = "the vessel";

    /** Charge and fill are as good as a gauge of the trade. */
    private static final PressureDifference AS_SET = PressureDifference.bar(0.1);

    private final FoundLoop line;
    private final Sizing sizing;
    private final Volume nominal;
    private final GaugePressure charge;
    private final Reading fill;
    private final VolumeFraction contentsWithin;
    private final OperatingCurve curve;
    private final OperatingBand band;

    Installed(
            FoundLoop line,
            Sizing sizing,
            Volume nominal,
            GaugePressure charge,
            Reading fill,
            VolumeFraction contentsWithin) {
        this.line = line;
        this.sizing = sizing;
        this.nominal = nominal;
        this.charge = charge;
        this.fill = fill;
        this.contentsWithin = contentsWithin;
        VesselBank bank = new VesselBank(List.of(InstalledVessel.of(VESSEL, nominal, charge)), sizing.atmosphere());
        this.curve = LoopInUse.of(sizing.job().loop(), bank, fill).curve();
        this.band = OperatingBand.around(curve, new OperatingTolerances(contentsWithin, AS_SET, AS_SET));
    }

    ReliefValve valve() {
        GaugePressure setting = line.job().pressures().reliefSetting();
        if (setting == null) {
            throw new IllegalArgumentException(
                    "loop \"" + line.id() + "\" has no relief_setting; without it nothing tells when the valve lifts");
        }
        return ReliefValve.iso4126(setting);
    }

    Temperature coldest() {
        return required(line, line.job().temperatures().cold(), "cold");
    }

    Temperature hottest() {
        return required(line, line.job().temperatures().hot(), "hot");
    }

    private static Temperature required(FoundLoop line, @Nullable Temperature temperature, String column) {
        if (temperature == null) {
            throw new IllegalArgumentException("loop \"" + line.id() + "\" has nothing in its column " + column);
        }
        return temperature;
    }

    FoundLoop line() {
        return line;
    }

    /** The highest fill pressure by the fill plan, or what it was filled to if that is more. */
    GaugePressure highestFill() {
        GaugePressure planned = FillPlan.of(sizing, nominal, fill.temperature()).highest();
        return planned.compareTo(fill.pressure()) > 0 ? planned : fill.pressure();
    }

    InstalledSystem system(GaugePressure highest) {
        return new InstalledSystem(
                sizing.job().loop(),
                sizing.job().loop().contents().times(contentsWithin.si()),
                nominal,
                charge,
                fill.pressure(),
                highest,
                fill.temperature(),
                valve(),
                coldest(),
                hottest(),
                sizing.atmosphere());
    }

    OperatingCurve curve() {
        return curve;
    }

    OperatingBand band() {
        return band;
    }

    /** The curve from coldest to hottest with its band and the relief valve. */
    OperatingChart chart() {
        return OperatingChart.of(curve, coldest(), hottest(), line.system())
                .with(band)
                .with(valve());
    }
}
