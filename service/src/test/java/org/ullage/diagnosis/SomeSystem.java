package org.ullage.diagnosis;

import org.ullage.loop.Loop;
import org.ullage.method.TestFluid;
import org.ullage.pressure.ReliefValve;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;

/** A small heating loop of which everything is known, filled with a fluid that expands along a straight line. */
final class SomeSystem {

    static final InstalledSystem SMALL = withVessel(12);

    private SomeSystem() {}

    /** 100 L, vessel charged to 1.0 bar, filled to 1.2 to 1.4 bar at 20 degC, valve 3 bar. */
    static InstalledSystem withVessel(double litres) {
        return new InstalledSystem(
                Loop.withContents(Volume.litres(100)).rigid().filledWith(TestFluid.WATER),
                Volume.litres(3),
                Volume.litres(litres),
                GaugePressure.bar(1.0),
                GaugePressure.bar(1.2),
                GaugePressure.bar(1.4),
                Temperature.celsius(20),
                ReliefValve.iso4126(GaugePressure.bar(3)),
                Temperature.celsius(10),
                Temperature.celsius(65),
                AbsolutePressure.STANDARD_ATMOSPHERE);
    }

    /** Read with class 1.0 on 0 to 4 bar, and a thermometer that may be 1 K off. */
    static GaugeReading reading(double bar, double celsius) {
        return GaugeReading.of(
                GaugePressure.bar(bar),
                PressureDifference.bar(0.04),
                Temperature.celsius(celsius),
                TemperatureDifference.kelvins(1));
    }

    /** From 20 to 60 degC at a cold pressure of 1.3 bar. */
    static Evidence rising(double hotBar) {
        return Evidence.of(reading(1.3, 20), reading(hotBar, 60));
    }
}
