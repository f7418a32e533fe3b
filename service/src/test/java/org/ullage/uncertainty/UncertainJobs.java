package org.ullage.uncertainty;

import org.ullage.loop.VolumeRange;
import org.ullage.method.Jobs;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.pressure.PressureInputs;
import org.ullage.pressure.ReliefValve;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

/** Invented jobs for the tests of this package. */
final class UncertainJobs {

    static final PressureInputs PRESSURES = PressureInputs.NONE
            .withColdPressure(GaugePressure.bar(1.2))
            .withPreCharge(GaugePressure.bar(0.9))
            .withReliefSetting(GaugePressure.bar(3));

    /** 1000 L of steel loop between 10 and 80 degC. */
    static final SizingJob JOB = Jobs.with(
            Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80)),
            PRESSURES);

    private UncertainJobs() {}

    static SizingUncertainty certain() {
        return SizingUncertainty.of(Methods.ASHRAE, JOB);
    }

    /** Temperatures certain. */
    static SizingUncertainty usual() {
        return certain()
                .contents(Uncertain.triangular(
                        new VolumeRange(Volume.litres(900), Volume.litres(1000), Volume.litres(1200))))
                .coldPressure(Uncertain.normal(GaugePressure.bar(1.2), PressureDifference.bar(0.05)))
                .charge(Uncertain.normal(GaugePressure.bar(0.9), PressureDifference.bar(0.03)))
                .reliefSetting(Uncertain.opening(ReliefValve.iso4126(GaugePressure.bar(3))));
    }

    static SizingUncertainty withTemperatures() {
        return usual().coldTemperature(Uncertain.uniform(Temperature.celsius(8), Temperature.celsius(12)))
                .hotTemperature(Uncertain.normal(Temperature.celsius(80), TemperatureDifference.kelvins(1.5)));
    }
}
