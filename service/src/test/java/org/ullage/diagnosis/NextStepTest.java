package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.ullage.diagnosis.Hypothesis.AIR_IN_LOOP;
import static org.ullage.diagnosis.Hypothesis.FEED_PASSING;
import static org.ullage.diagnosis.Hypothesis.HEALTHY;
import static org.ullage.diagnosis.Hypothesis.LOW_CHARGE;
import static org.ullage.diagnosis.Hypothesis.OVER_CHARGED;
import static org.ullage.diagnosis.Hypothesis.UNDERSIZED;
import static org.ullage.diagnosis.Hypothesis.VALVE_MARGIN_SMALL;
import static org.ullage.diagnosis.Hypothesis.WATERLOGGED;

import org.junit.jupiter.api.Test;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;

/** The look that parts two faults best, by the table of likelihoods. */
class NextStepTest {

    private static final Evidence SMALL_SWING = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(1.34, 24));

    private static final MeasuredCharge CHARGE =
            new MeasuredCharge(GaugePressure.bar(1), Temperature.celsius(20), PressureDifference.bar(0.04));

    private static String next(Evidence evidence, Hypothesis one, Hypothesis other) {
        return new NextStep(SomeSystem.SMALL, evidence, new Weighing(SomeSystem.SMALL, evidence)).between(one, other);
    }

    /** Feed 0.86, relief valve 0.77, everything else less. */
    @Test
    void theBestLookThatWasNotTakenYet() {
        assertThat(next(SMALL_SWING, HEALTHY, FEED_PASSING)).startsWith("close the feed for a day");
        assertThat(next(SMALL_SWING.with(Sign.PRESSURE_STAYS), HEALTHY, FEED_PASSING))
                .isEqualTo(Inspection.RELIEF_VALVE.words());
        assertThat(next(SMALL_SWING.with(Sign.RELIEF_DRY), HEALTHY, FEED_PASSING))
                .isEqualTo(Inspection.FEED.words());
    }

    @Test
    void theChargeTellsHowMuchGasIsLeftUntilItIsMeasured() {
        assertThat(next(SMALL_SWING, HEALTHY, LOW_CHARGE)).startsWith("isolate the vessel");
        assertThat(next(SMALL_SWING.with(CHARGE), HEALTHY, LOW_CHARGE)).startsWith("look at the discharge");
    }

    /** Gas that is too much is in the vessel or in the loop: the drained vessel says which. */
    @Test
    void theChargeTellsAirFromAnOvercharge() {
        assertThat(next(SMALL_SWING, AIR_IN_LOOP, OVER_CHARGED)).startsWith("isolate the vessel");
        assertThat(next(SMALL_SWING, AIR_IN_LOOP, HEALTHY)).isEqualTo(Inspection.TOP_OF_LOOP.words());
    }

    /** A drained vessel shows no less than the air, half of its 2 bar: all that is lower looks alike, and the gas valve is looked at. */
    @Test
    void theChargeTellsNothingBelowTheAir() {
        Evidence lifted = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(3.0, 60));
        assertThat(next(lifted, WATERLOGGED, LOW_CHARGE)).isEqualTo(Inspection.GAS_VALVE.words());
    }

    /** The relief valve parts these two by 0.20, nothing else by 0.15. */
    @Test
    void whereNoLookHelpsAWiderSwingDoes() {
        Evidence looked = SMALL_SWING.with(Sign.RELIEF_DRIPS_HOT);
        assertThat(next(SMALL_SWING, UNDERSIZED, VALVE_MARGIN_SMALL)).isEqualTo(Inspection.RELIEF_VALVE.words());
        assertThat(next(looked, UNDERSIZED, VALVE_MARGIN_SMALL)).startsWith("read again at a hotter loop");
        Evidence asHotAsItGets = SomeSystem.rising(2).with(Sign.RELIEF_DRIPS_HOT);
        assertThat(next(asHotAsItGets, UNDERSIZED, VALVE_MARGIN_SMALL)).startsWith("read again at a hotter loop");
        Evidence hottest = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(2, 65))
                .with(Sign.RELIEF_DRIPS_HOT);
        assertThat(next(hottest, UNDERSIZED, VALVE_MARGIN_SMALL)).startsWith("size the vessel again");
    }
}
