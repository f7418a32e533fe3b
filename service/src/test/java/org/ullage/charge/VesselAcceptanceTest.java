package org.ullage.charge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ullage.provenance.Source;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.quantity.VolumeFraction;
import org.ullage.vessel.GasTemperatures;

/** A 100 L vessel between 2 and 3.2 bar absolute. */
class VesselAcceptanceTest {

    private static final Volume NOMINAL = Volume.litres(100);
    private static final AbsolutePressure COLD = AbsolutePressure.bar(2);
    private static final AbsolutePressure LAST = AbsolutePressure.bar(3.2);
    private static final VesselAcceptance VESSEL = VesselAcceptance.of(NOMINAL, COLD, LAST);

    private static double litres(VesselAcceptance vessel, double bar) {
        return vessel.at(AbsolutePressure.bar(bar)).in(Units.LITRE);
    }

    @Example
    void byHand() {
        assertThat(litres(VESSEL, 2)).isCloseTo(100 * (1 - 2 / 3.2), within(1e-9));
        assertThat(litres(VESSEL, 1.6)).isCloseTo(160 * (1 / 2.0 - 1 / 3.2), within(1e-9));
        assertThat(litres(VESSEL, 2.4)).isCloseTo(25, within(1e-9));
        assertThat(litres(VESSEL, 3.2)).isZero();
        assertThat(litres(VESSEL, 4)).isZero();
        assertThat(VESSEL.change(COLD, AbsolutePressure.bar(1.6)).in(Units.LITRE))
                .isCloseTo(-7.5, within(1e-9));
    }

    @Property
    void mostAtTheColdPressure(@ForAll @DoubleRange(min = 0.1, max = 5) double bar) {
        assertThat(litres(VESSEL, bar)).isBetween(0.0, litres(VESSEL, 2) + 1e-9);
    }

    @Example
    void acceptanceLimitCapsTheWaterAtEitherEnd() {
        VesselAcceptance limited =
                new VesselAcceptance(NOMINAL, COLD, LAST, GasTemperatures.ISOTHERMAL, VolumeFraction.percent(30));
        assertThat(litres(limited, 2)).isCloseTo(30, within(1e-9)); // 37.5 L without the limit
        assertThat(litres(limited, 1.6)).isCloseTo(10, within(1e-9)); // 20 L in it when cold
        assertThat(litres(limited, 1)).isZero(); // full when cold
    }

    @Example
    void gasThatWarmsUpTakesRoom() {
        GasTemperatures warm = new GasTemperatures(
                Temperature.kelvins(300), Temperature.kelvins(300), Temperature.kelvins(330), Source.given());
        VesselAcceptance vessel = new VesselAcceptance(NOMINAL, COLD, LAST, warm, null);
        assertThat(litres(vessel, 2)).isCloseTo(100 * (1 - 2.2 / 3.2), within(1e-9));
    }

    /** Charged at 300 K, cold at 270 K: 2 bar become 1.8 bar and let 10 L in before the loop warms up. */
    @Example
    void gasThatCoolsDownLetsWaterIn() {
        GasTemperatures cool = new GasTemperatures(
                Temperature.kelvins(300), Temperature.kelvins(270), Temperature.kelvins(300), Source.given());
        VesselAcceptance vessel = new VesselAcceptance(NOMINAL, COLD, LAST, cool, null);
        assertThat(litres(vessel, 2)).isCloseTo(37.5 - 10, within(1e-9));
    }

    @Example
    void impossibleVesselsAreRefused() {
        assertThatThrownBy(() -> VesselAcceptance.of(Volume.litres(0), COLD, LAST))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("nominal volume");
        assertThatThrownBy(() -> VesselAcceptance.of(NOMINAL, LAST, COLD))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("final pressure");
    }
}
