package org.ullage.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.method.Jobs;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.method.WaterReserve;
import org.ullage.pressure.PressureInputs;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

class ExplanationTest {

    /** Relative rounding of a sum of a few volumes. */
    private static final double ROUNDING = 1e-12;

    private static final SizingJob JOB =
            Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80));

    static List<Method[]> pairs() {
        List<Method> methods =
                Jobs.methods().stream().filter(ExplanationTest::answers).toList();
        return methods.stream()
                .flatMap(first -> methods.stream().map(second -> new Method[] {first, second}))
                .toList();
    }

    private static boolean answers(Method method) {
        try {
            method.size(JOB);
            return true;
        } catch (OutOfRangeException refusal) {
            return false;
        }
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void changesAddUpToTheDifferenceAndEndAtTheSecondMethod(Method first, Method second) {
        Explanation explanation = Explanation.between(JOB, first, second);
        double sum = explanation.changes().stream()
                .mapToDouble(change -> change.difference().si())
                .sum();
        double size = second.size(JOB).requiredVolume().si();
        assertThat(sum).isCloseTo(explanation.difference().si(), within(size * ROUNDING));
        if (!explanation.changes().isEmpty()) {
            assertThat(explanation
                            .changes()
                            .get(explanation.changes().size() - 1)
                            .after())
                    .isEqualTo(second.size(JOB).requiredVolume());
        }
    }

    @Test
    void oneConventionExchangedIsOneChange() {
        Method without = Methods.EN_12828.named("without").with(WaterReserve.NONE);
        Explanation explanation = Explanation.between(JOB, Methods.EN_12828, without);
        assertThat(explanation.changes()).hasSize(1);
        assertThat(explanation.changes().get(0).conventions()).containsExactly(Convention.RESERVE);
        Sizing with = Methods.EN_12828.size(JOB);
        // the reserve of 5 L is worth 5 L times the vessel volume per litre of water
        double worth = 0.005 * with.requiredVolume().dividedBy(with.acceptanceVolume());
        assertThat(explanation.difference().si()).isCloseTo(-worth, within(worth * 1e-9));
        assertThat(explanation.text(UnitSystem.SI))
                .contains("reserve: 0.5 vol% of the contents, at least 3 L; 20 vol% of a vessel up to 15 L -> none")
                .contains("in all)");
    }

    @Test
    void openTanksDifferByTheirAllowanceToo() {
        SizingJob open =
                Jobs.steel(TestFluid.WATER, VesselType.open(), Temperature.celsius(10), Temperature.celsius(80));
        Explanation explanation = Explanation.between(open, Methods.ASHRAE, Methods.PRACTICE_FR_OPEN);
        assertThat(explanation.changes())
                .anySatisfy(change -> assertThat(change.conventions()).contains(Convention.OPEN_ALLOWANCE));
        assertThat(explanation.changes().get(explanation.changes().size() - 1).after())
                .isEqualTo(Methods.PRACTICE_FR_OPEN.size(open).requiredVolume());
    }

    @Test
    void sameMethodNeedsNoExplanation() {
        assertThat(Explanation.between(JOB, Methods.ASHRAE, Methods.ASHRAE).changes())
                .isEmpty();
    }

    @Test
    void conventionsThatDoNotGoTogetherAreExchangedTogether() {
        // cold pressures near 2.9 bar go with the setting of 3 bar, not with 0.9 of it
        PressureInputs high = Jobs.HOUSE_BLOCK.withStaticHead(Length.metres(26));
        SizingJob job = Jobs.with(JOB, high);
        Method first = Methods.ASHRAE.with(Methods.RACCOLTA_R.coldPressure());
        Method second = Methods.RACCOLTA_R.with(Methods.ASHRAE.coldPressure()).with(Methods.RACCOLTA_R.finalPressure());
        Explanation explanation = Explanation.between(job, first, second);
        assertThat(explanation.changes())
                .anySatisfy(change -> assertThat(change.conventions())
                        .containsExactly(Convention.COLD_PRESSURE, Convention.FINAL_PRESSURE));
        assertThatThrownBy(() -> ConventionShares.between(job, first, second)).isInstanceOf(OutOfRangeException.class);
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void sharesAddUpToTheDifference(Method first, Method second) {
        double sum = ConventionShares.between(JOB, first, second).shares().values().stream()
                .mapToDouble(Volume::si)
                .sum();
        double size = second.size(JOB).requiredVolume().si();
        assertThat(sum)
                .isCloseTo(Explanation.between(JOB, first, second).difference().si(), within(size * ROUNDING));
    }

    @Test
    void sharesDoNotDependOnTheDirection() {
        ConventionShares there = ConventionShares.between(JOB, Methods.ASHRAE, Methods.EN_12828);
        ConventionShares back = ConventionShares.between(JOB, Methods.EN_12828, Methods.ASHRAE);
        there.shares()
                .forEach((convention, share) ->
                        assertThat(back.shares().get(convention).si()).isCloseTo(-share.si(), within(1e-15)));
    }

    @Test
    void refusalOfOneOfTheTwoIsPassedOn() {
        SizingJob shortJob = Jobs.with(
                JOB,
                PressureInputs.NONE.withColdPressure(GaugePressure.bar(2)).withFinalPressure(GaugePressure.bar(1)));
        assertThatThrownBy(() -> Explanation.between(shortJob, Methods.ASHRAE, Methods.EN_12828))
                .isInstanceOf(OutOfRangeException.class);
    }
}
