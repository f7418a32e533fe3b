package org.ullage.reference;

import org.ullage.fluids.Water;
import org.ullage.loop.LoopFluid;
import org.ullage.provenance.Source;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.SpecificVolume;
import org.ullage.quantity.Temperature;

/**
 * Water with the two specific volumes that a worked example prints, so that the example is repeated with its own data.
 *
 * @param lowest the cold temperature
 * @param cold specific volume there
 * @param highest the hot temperature
 * @param hot specific volume there
 */
record GivenVolumes(Temperature lowest, SpecificVolume cold, Temperature highest, SpecificVolume hot)
        implements LoopFluid {

    @Override
    public String name() {
        return "water";
    }

    @Override
    public String model() {
        return "specific volumes as given";
    }

    @Override
    public Source source() {
        return Source.given();
    }

    @Override
    public boolean isWater() {
        return true;
    }

    @Override
    public double specificVolumeSi(double kelvins, double pascals) {
        if (kelvins == lowest.si()) {
            return cold.si();
        }
        if (kelvins == highest.si()) {
            return hot.si();
        }
        throw new OutOfRangeException(
                "temperature", kelvins + " K", "one of the two that the example gives", "ask for these alone");
    }

    @Override
    public double vapourPressureSi(double kelvins) {
        return Water.IAPWS_IF97.vapourPressureSi(kelvins);
    }

    @Override
    public Source vapourPressureSource() {
        return Water.IAPWS_IF97.vapourPressureSource();
    }
}
