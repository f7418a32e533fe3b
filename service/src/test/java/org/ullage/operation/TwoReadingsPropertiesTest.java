package org.ullage.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.loop.Contents;
import org.ullage.loop.PipeMaterial;
import org.ullage.method.TestFluid;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasLaw;

/** A loop of known contents is heated; the readings must give the contents back. */
class TwoReadingsPropertiesTest {

    private static final AbsolutePressure AIR = AbsolutePressure.STANDARD_ATMOSPHERE;
    private static final Volume NOMINAL = Volume.litres(200);
    private static final GaugePressure CHARGE = GaugePressure.bar(1);
    private static final GaugePressure FILL = GaugePressure.bar(1.3);
    private static final Temperature COLD = Temperature.celsius(10);

    private static TwoReadings heated(double litres, double rise, Volume nominal) {
        Temperature hot = COLD.plus(TemperatureDifference.kelvins(rise));
        double share = 0.0005 * rise / (1 + 0.0005 * 10)
                - 3 * PipeMaterial.COPPER.linearExpansion().si() * rise;
        AbsolutePressure pressure =
                GasLaw.finalPressure(nominal, Volume.litres(litres * share), CHARGE.absolute(AIR), FILL.absolute(AIR));
        return TwoReadings.of(
                new Reading(FILL, COLD),
                new Reading(pressure.gauge(AIR), hot),
                new SoundVessel(nominal, CHARGE, AIR),
                TestFluid.WATER,
                PipeMaterial.COPPER);
    }

    private static ReadingErrors gauges(double bar) {
        return new ReadingErrors(
                PressureDifference.bar(bar),
                TemperatureDifference.kelvins(0.2),
                PressureDifference.bar(0.01),
                Volume.litres(1));
    }

    @Property
    void theContentsComeBack(
            @ForAll @DoubleRange(min = 100, max = 2000) double litres,
            @ForAll @DoubleRange(min = 20, max = 80) double rise) {
        Contents contents = heated(litres, rise, NOMINAL).contents(gauges(0));
        assertThat(contents.typical().si() * 1000).isCloseTo(litres, within(litres * 1e-6));
    }

    @Property
    void aCoarserGaugeWidensTheRange(
            @ForAll @DoubleRange(min = 500, max = 2000) double litres,
            @ForAll @DoubleRange(min = 1, max = 10) double millibars) {
        double bar = millibars / 1000;
        TwoReadings readings = heated(litres, 60, NOMINAL);
        assertThat(readings.contents(gauges(bar)).low())
                .isGreaterThan(readings.contents(gauges(bar * 2)).low());
        assertThat(readings.contents(gauges(bar)).high())
                .isLessThan(readings.contents(gauges(bar * 2)).high());
    }

    @Property
    void moreWaterOnTheSameReadingsMeansMoreContents(@ForAll @DoubleRange(min = 50, max = 1000) double nominal) {
        // the same two readings on a vessel twice as large
        Volume small = Volume.litres(nominal);
        double one = heated(nominal, 50, small).contents(gauges(0)).typical().si();
        double two = heated(nominal * 2, 50, small.times(2))
                .contents(gauges(0))
                .typical()
                .si();
        assertThat(two).isCloseTo(2 * one, within(one * 1e-6));
    }
}
