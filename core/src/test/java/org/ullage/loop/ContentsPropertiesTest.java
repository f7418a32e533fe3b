package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.ullage.quantity.Length;
import org.ullage.quantity.Power;
import org.ullage.quantity.Volume;

/** What holds for every pipe, length, part and output. */
class ContentsPropertiesTest {

    @Provide
    Arbitrary<PipeSize> sizes() {
        return Arbitraries.of(PipeStandard.values()).flatMap(standard -> Arbitraries.of(standard.sizes()));
    }

    @Property
    void contentsScaleWithLength(
            @ForAll("sizes") PipeSize size,
            @ForAll @DoubleRange(min = 0.01, max = 1e4) double metres,
            @ForAll @DoubleRange(min = 0.1, max = 10) double factor) {
        double one = size.contents(Length.metres(metres)).si();
        assertThat(size.contents(Length.metres(metres * factor)).si())
                .isCloseTo(one * factor, within(one * factor * 1e-12));
    }

    @Property
    void aLengthInPartsHoldsWhatTheWholeHolds(
            @ForAll("sizes") PipeSize size,
            @ForAll @DoubleRange(min = 0.01, max = 1e3) double first,
            @ForAll @DoubleRange(min = 0.01, max = 1e3) double second) {
        double parts = TakeOff.start()
                .pipe(size.pipe(), Length.metres(first))
                .pipe(size.pipe(), Length.metres(second))
                .contents()
                .typical()
                .si();
        double whole = size.contents(Length.metres(first + second)).si();
        assertThat(parts).isCloseTo(whole, within(whole * 1e-12));
    }

    @Property
    void aWiderBoreHoldsMore(
            @ForAll @DoubleRange(min = 1, max = 2000) double outside,
            @ForAll @DoubleRange(min = 0.01, max = 0.24) double thin,
            @ForAll @DoubleRange(min = 0.01, max = 0.24) double more) {
        Pipe thick = pipe(outside, outside * (thin + more));
        Pipe wide = pipe(outside, outside * thin);
        assertThat(wide.litresPerMetre()).isGreaterThan(thick.litresPerMetre());
        assertThat(pipe(outside * 1.01, outside * thin).litresPerMetre()).isGreaterThan(wide.litresPerMetre());
    }

    private static Pipe pipe(double outside, double wall) {
        return Pipe.ofWall("pipe", Length.millimetres(outside), Length.millimetres(wall), PipeMaterial.STEEL);
    }

    @Property
    void litresPerMetreAndGallonsPerFootAreOneNumber(@ForAll("sizes") PipeSize size) {
        Pipe pipe = size.pipe();
        assertThat(pipe.gallonsPerFoot() * 3.785411784 / 0.3048)
                .isCloseTo(pipe.litresPerMetre(), within(pipe.litresPerMetre() * 1e-12));
    }

    @Property
    void anEstimateIsARangeInOrderThatGrowsWithTheOutput(
            @ForAll EmitterType type, @ForAll @DoubleRange(min = 0.5, max = 1e5) double kilowatts) {
        Contents contents =
                QuickEstimate.of(Power.kilowatts(kilowatts), type).openVented().contents();
        assertThat(contents.low()).isLessThan(contents.typical());
        assertThat(contents.typical()).isLessThan(contents.high());
        assertThat(QuickEstimate.of(Power.kilowatts(kilowatts * 1.1), type)
                        .openVented()
                        .contents()
                        .low())
                .isGreaterThan(contents.low());
    }

    @Property
    void everyItemAddsToTheWhole(
            @ForAll PowerRule rule,
            @ForAll @DoubleRange(min = 1, max = 1000) double kilowatts,
            @ForAll @IntRange(min = 1, max = 100) int pieces) {
        TakeOff before = TakeOff.start().item("buffer", Volume.litres(300), 1);
        TakeOff after = before.add(rule.item(Power.kilowatts(kilowatts))).add(PieceRule.CYLINDER_COIL.item(pieces));
        assertThat(after.contents().low()).isGreaterThan(before.contents().high());
        assertThat(after.contents().low()).isLessThanOrEqualTo(after.contents().high());
    }

    @Property
    void aMeasurementIsInsideItsRange(
            @ForAll @DoubleRange(min = 10, max = 1e5) double metered,
            @ForAll @DoubleRange(min = 0, max = 0.4) double vessel,
            @ForAll @DoubleRange(min = 0, max = 0.4) double uncertainty,
            @ForAll @DoubleRange(min = 0, max = 1) double air) {
        Contents contents = MeasuredContents.meteredFill(Volume.litres(metered))
                .inVessel(Volume.litres(metered * vessel))
                .uncertainty(Volume.litres(metered * uncertainty))
                .notCounted(Volume.litres(metered * air));
        assertThat(contents.low()).isLessThanOrEqualTo(contents.typical());
        assertThat(contents.typical()).isLessThanOrEqualTo(contents.high());
        double expected = metered * (1 - vessel) / 1000;
        assertThat(contents.typical().si()).isCloseTo(expected, within(expected * 1e-12));
    }
}
