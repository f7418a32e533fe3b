package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AdditiveQuantityTest {

    static Stream<List<? extends AdditiveQuantity<?, ?>>> twoHalfFiveQuartersThree() {
        return Stream.of(
                List.of(Volume.ofSi(2), Volume.ofSi(0.5), Volume.ofSi(2.5), Volume.ofSi(1.5), Volume.ofSi(6)),
                List.of(Length.metres(2), Length.metres(0.5), Length.metres(2.5), Length.metres(1.5), Length.metres(6)),
                List.of(
                        Mass.kilograms(2),
                        Mass.kilograms(0.5),
                        Mass.kilograms(2.5),
                        Mass.kilograms(1.5),
                        Mass.kilograms(6)),
                List.of(
                        Power.kilowatts(2),
                        Power.kilowatts(0.5),
                        Power.kilowatts(2.5),
                        Power.kilowatts(1.5),
                        Power.kilowatts(6)),
                List.of(Force.newtons(2), Force.newtons(0.5), Force.newtons(2.5), Force.newtons(1.5), Force.newtons(6)),
                List.of(
                        PressureDifference.bar(2),
                        PressureDifference.bar(0.5),
                        PressureDifference.bar(2.5),
                        PressureDifference.bar(1.5),
                        PressureDifference.bar(6)),
                List.of(
                        TemperatureDifference.kelvins(2),
                        TemperatureDifference.kelvins(0.5),
                        TemperatureDifference.kelvins(2.5),
                        TemperatureDifference.kelvins(1.5),
                        TemperatureDifference.kelvins(6)));
    }

    /** Two, a half, their sum and difference, and three times two, all exact in binary. */
    @ParameterizedTest
    @MethodSource("twoHalfFiveQuartersThree")
    <Q extends AdditiveQuantity<Q, D>, D> void addsUp(List<Q> amounts) {
        Q two = amounts.get(0);
        Q half = amounts.get(1);
        assertThat(two.plus(half)).isEqualTo(amounts.get(2)).isEqualTo(half.plus(two));
        assertThat(two.minus(half)).isEqualTo(amounts.get(3));
        assertThat(two.times(3)).isEqualTo(amounts.get(4));
        assertThat(two.dividedBy(half)).isEqualTo(4);
    }

    @Test
    void aResultOutsideTheRangeIsRefused() {
        assertThatThrownBy(() -> Mass.kilograms(1).minus(Mass.kilograms(3)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("mass -2.0 kg is not allowed: it must be zero or more");
        assertThatThrownBy(() -> Mass.kilograms(1).times(-1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Volume.litres(1).times(Double.NaN))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("volume NaN m3");
        assertThatThrownBy(() -> Volume.ofSi(Double.MAX_VALUE).plus(Volume.ofSi(Double.MAX_VALUE)))
                .isInstanceOf(OutOfRangeException.class);
        assertThat(Volume.litres(1).minus(Volume.litres(3))).isEqualTo(Volume.litres(-2));
    }

    @Test
    void divisionByZeroIsRefused() {
        assertThatThrownBy(() -> Volume.litres(1).dividedBy(Volume.litres(0)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessage(
                        "volume to divide by 0.0 L is not allowed: it must be far enough from zero for a finite ratio;"
                                + " check the quantity that is divided by");
        assertThatThrownBy(() -> Volume.litres(0).dividedBy(Volume.litres(0))).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Volume.ofSi(1).dividedBy(Volume.ofSi(Double.MIN_VALUE)))
                .isInstanceOf(OutOfRangeException.class);
    }
}
