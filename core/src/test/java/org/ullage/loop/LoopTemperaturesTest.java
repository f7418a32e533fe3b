package org.ullage.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;

class LoopTemperaturesTest {

    private static final Temperature TEN = Temperature.celsius(10);
    private static final Temperature SEVENTY = Temperature.celsius(70);
    private static final Temperature EIGHTY = Temperature.celsius(80);
    private static final Temperature NINETY = Temperature.celsius(90);

    @Test
    void keepsThoseThatAreInOrder() {
        LoopTemperatures all =
                LoopTemperatures.between(TEN, EIGHTY).withMean(SEVENTY).withSafety(NINETY);
        assertThat(all).isEqualTo(new LoopTemperatures(TEN, EIGHTY, SEVENTY, NINETY));
    }

    @Test
    void meanAndSafetyMayMeetTheHighest() {
        LoopTemperatures.between(TEN, EIGHTY).withMean(EIGHTY).withSafety(EIGHTY);
    }

    @Test
    void anyMayBeUnknown() {
        LoopTemperatures.between(null, null).withMean(SEVENTY).withSafety(SEVENTY);
        LoopTemperatures.between(TEN, null).withMean(SEVENTY).withSafety(EIGHTY);
        LoopTemperatures.between(null, EIGHTY).withMean(SEVENTY).withSafety(NINETY);
    }

    @Test
    void whatIsNotAboveTheLowestIsRefused() {
        refused(() -> LoopTemperatures.between(EIGHTY, EIGHTY), "highest temperature 80 degC");
        refused(() -> LoopTemperatures.between(EIGHTY, TEN), "highest temperature 10 degC");
        refused(() -> LoopTemperatures.between(SEVENTY, null).withMean(SEVENTY), "mean temperature 70 degC");
        refused(() -> LoopTemperatures.between(SEVENTY, null).withSafety(SEVENTY), "safety temperature 70 degC");
    }

    @Test
    void meanAboveAndSafetyBelowTheHighestAreRefused() {
        refused(() -> LoopTemperatures.between(TEN, EIGHTY).withMean(NINETY), "mean temperature 90 degC");
        refused(() -> LoopTemperatures.between(TEN, EIGHTY).withSafety(SEVENTY), "safety temperature 70 degC");
    }

    private static void refused(ThrowingCallable call, String what) {
        assertThatThrownBy(call)
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith(what)
                .hasMessageContaining("swapped");
    }
}
