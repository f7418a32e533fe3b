package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.ullage.provenance.Provenance;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;

/** Contents by metered fill and by drain-down. */
class MeasuredContentsTest {

    private static void isAbout(Volume volume, double litres) {
        assertThat(volume.in(Units.LITRE)).isCloseTo(litres, within(1e-9));
    }

    @Test
    void meteredFill() {
        Contents contents = MeasuredContents.meteredFill(Volume.litres(412))
                .inVessel(Volume.litres(6))
                .uncertainty(Volume.litres(8))
                .notCounted(Volume.litres(10));
        isAbout(contents.low(), 398);
        isAbout(contents.typical(), 406);
        isAbout(contents.high(), 424);
        assertThat(contents.basis()).isEqualTo(ContentsBasis.MEASURED);
        assertThat(contents.items())
                .extracting(ContentsItem::name)
                .containsExactly("metered fill", "less water in the vessel", "air left in, at most");
        assertThat(contents.sources())
                .singleElement()
                .satisfies(source -> assertThat(source.provenance()).isEqualTo(Provenance.GIVEN));
        assertThat(contents.cautions()).singleElement().asString().contains("Air that stays in");
        assertThat(contents.text(UnitSystem.SI)).startsWith("Contents, measured: 398 L to 424 L, typically 406 L\n");
    }

    @Test
    void drainDown() {
        Contents contents = MeasuredContents.drainDown(Volume.gallons(100))
                .vesselShutOff()
                .uncertainty(Volume.gallons(2))
                .allCounted();
        assertThat(contents.items()).hasSize(1);
        assertThat(contents.low().in(Units.US_GALLON)).isCloseTo(98, within(1e-9));
        assertThat(contents.high().in(Units.US_GALLON)).isCloseTo(102, within(1e-9));
        assertThat(contents.cautions()).singleElement().asString().contains("stays behind");
    }

    @Test
    void anExactMeasurementIsASingleValue() {
        Contents contents = MeasuredContents.drainDown(Volume.litres(100))
                .vesselShutOff()
                .uncertainty(Volume.litres(0))
                .allCounted();
        assertThat(contents.range().isSingle()).isTrue();
    }

    @Test
    void whatCannotBe() {
        refused(() -> MeasuredContents.meteredFill(Volume.litres(0)), "metered fill volume 0 L (0 gal) is not allowed");
        refused(() -> MeasuredContents.drainDown(Volume.litres(-4)), "drained volume -4 L");
        MeasuredContents.VesselStep metered = MeasuredContents.meteredFill(Volume.litres(50));
        refused(() -> metered.inVessel(Volume.litres(-1)), "water in the vessel -1 L");
        refused(() -> metered.vesselShutOff().uncertainty(Volume.litres(-1)), "uncertainty -1 L");
        refused(
                () -> metered.vesselShutOff().uncertainty(Volume.litres(1)).notCounted(Volume.litres(-1)),
                "volume not counted -1 L");
        refused(
                () -> metered.inVessel(Volume.litres(45))
                        .uncertainty(Volume.litres(6))
                        .allCounted(),
                "lowest contents -1 L (-0.2642 gal) is not allowed: it must be above zero");
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatThrownBy(call).isInstanceOf(OutOfRangeException.class).hasMessageStartingWith(message);
    }
}
