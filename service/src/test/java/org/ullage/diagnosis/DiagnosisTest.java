package org.ullage.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;

class DiagnosisTest {

    /** Hot pressures by hand: a sound vessel 1.841 bar, half of the gas 2.713 bar; see SwingModelTest. */
    private static final double SOUND = 1.841;

    private static final double HALF = 2.713;

    private static Diagnosis diagnose(Evidence evidence) {
        return Diagnosis.of(SomeSystem.SMALL, evidence);
    }

    private static RankedHypothesis ranked(Diagnosis diagnosis, Hypothesis hypothesis) {
        return diagnosis.ranking().stream()
                .filter(ranked -> ranked.hypothesis() == hypothesis)
                .findFirst()
                .orElseThrow();
    }

    private static double probability(Diagnosis diagnosis, Hypothesis hypothesis) {
        return ranked(diagnosis, hypothesis).probability();
    }

    @Test
    void aNormalSwingIsNoSignOfFailure() {
        Diagnosis diagnosis = diagnose(SomeSystem.rising(SOUND));
        assertThat(diagnosis.likeliest().hypothesis()).isEqualTo(Hypothesis.HEALTHY);
        assertThat(diagnosis.cautions().get(0).text()).contains("temperature alone is no sign of failure");
        assertThat(diagnosis.likeliest().contradicts()).isEmpty();
    }

    @Test
    void halfOfTheGasGoneIsFound() {
        Diagnosis diagnosis = diagnose(SomeSystem.rising(HALF));
        assertThat(diagnosis.decided()).isTrue();
        assertThat(diagnosis.likeliest().hypothesis()).isEqualTo(Hypothesis.LOW_CHARGE);
        assertThat(diagnosis.belief(Family.CHARGE)).isGreaterThan(0.9);
        assertThat(diagnosis.likeliest().supports()).first().asString().startsWith("a swing of 1.413 bar");
        assertThat(diagnosis.verdict()).startsWith("Most likely the charge is wrong, low charge (");
        assertThat(diagnosis.isNamed()).as("waterlogged is possible too").isFalse();
    }

    @Test
    void probabilitiesAddUpAndAreSorted() {
        Diagnosis diagnosis = diagnose(SomeSystem.rising(2.2));
        assertThat(diagnosis.ranking()).hasSize(Hypothesis.values().length);
        assertThat(diagnosis.ranking().stream()
                        .mapToDouble(RankedHypothesis::probability)
                        .sum())
                .isCloseTo(1, within(1e-9));
        assertThat(diagnosis.ranking()).isSortedAccordingTo((a, b) -> Double.compare(b.probability(), a.probability()));
    }

    @Test
    void aValveThatLiftedWithinAFewKelvinsMeansWaterlogged() {
        Evidence evidence = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(3.0, 28))
                .with(Sign.RELIEF_DRIPS_HOT)
                .with(Sign.DULL_ALL_OVER);
        Diagnosis diagnosis = diagnose(evidence);
        assertThat(diagnosis.likeliest().hypothesis()).isEqualTo(Hypothesis.WATERLOGGED);
        assertThat(diagnosis.likeliest().supports()).contains("shell dull all over", "relief valve drips when hot");
    }

    @Test
    void waterAtTheGasValveSpeaksForAWaterloggedVessel() {
        Diagnosis without = diagnose(SomeSystem.rising(2.9));
        Diagnosis with = diagnose(SomeSystem.rising(2.9).with(Sign.WATER_AT_VALVE));
        assertThat(probability(with, Hypothesis.WATERLOGGED) / probability(with, Hypothesis.LOW_CHARGE))
                .isCloseTo(
                        50 * probability(without, Hypothesis.WATERLOGGED) / probability(without, Hypothesis.LOW_CHARGE),
                        within(1e-9));
    }

    /** Too small a swing: more gas than was charged, in the vessel or outside. Only the charge can tell which. */
    @Test
    void airInTheLoopAndAnOvercharge() {
        Evidence evidence = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(1.50, 60));
        Diagnosis diagnosis = diagnose(evidence);
        assertThat(probability(diagnosis, Hypothesis.AIR_IN_LOOP)
                        + probability(diagnosis, Hypothesis.OVER_CHARGED)
                        + probability(diagnosis, Hypothesis.SHORT_OF_WATER))
                .isGreaterThan(0.7);
        MeasuredCharge asSet =
                new MeasuredCharge(GaugePressure.bar(1.0), Temperature.celsius(20), PressureDifference.bar(0.04));
        Diagnosis measured = diagnose(evidence.with(asSet).with(Sign.AIR_AT_TOP));
        assertThat(measured.likeliest().hypothesis()).isEqualTo(Hypothesis.AIR_IN_LOOP);
        assertThat(measured.decided()).isTrue();
    }

    @Test
    void aFeedThatPassesShowsInTheColdPressure() {
        Evidence evidence = Evidence.of(SomeSystem.reading(2.2, 20), SomeSystem.reading(3.0, 45))
                .with(Sign.RELIEF_DRIPS_ALWAYS);
        Diagnosis diagnosis = diagnose(evidence);
        assertThat(diagnosis.ranking().subList(0, 2))
                .extracting(RankedHypothesis::hypothesis)
                .contains(Hypothesis.FEED_PASSING);
        Diagnosis logged = diagnose(evidence.with(Sign.PRESSURE_CREEPS_UP));
        assertThat(logged.likeliest().hypothesis()).isEqualTo(Hypothesis.FEED_PASSING);
        assertThat(logged.likeliest().supports()).contains("a cold pressure above the fill window");
    }

    @Test
    void aVesselTooSmallIsArithmetic() {
        InstalledSystem tight = SomeSystem.withVessel(5);
        // 10.0663 L bar; 4.35156 L at 2.31325 bar; 100 L x (1.015/1.01 - 1) = 0.49505 L go in on the way to 30 degC
        Evidence evidence = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(1.597, 30));
        Diagnosis diagnosis = Diagnosis.of(tight, evidence.with(Sign.RELIEF_DRIPS_HOT));
        assertThat(diagnosis.likeliest().hypothesis()).isEqualTo(Hypothesis.UNDERSIZED);
    }

    @Test
    void aLoopHotterThanItsDesignIsNamed() {
        Evidence evidence = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(2.5, 80));
        assertThat(probability(diagnose(evidence), Hypothesis.HOTTER_THAN_DESIGNED))
                .isGreaterThan(10 * probability(diagnose(SomeSystem.rising(SOUND)), Hypothesis.HOTTER_THAN_DESIGNED));
    }

    /** The strongest reason stands first, in either direction. */
    @Test
    void reasonsAreSortedByTheirWeight() {
        Evidence evidence = SomeSystem.rising(HALF)
                .with(Sign.RELIEF_DRIPS_HOT)
                .with(Sign.ONE_END_RINGS)
                .with(Sign.NOTHING_AT_VALVE);
        Diagnosis diagnosis = diagnose(evidence);
        RankedHypothesis waterlogged = ranked(diagnosis, Hypothesis.WATERLOGGED);
        assertThat(waterlogged.supports())
                .containsSubsequence("nothing at the gas valve", "relief valve drips when hot")
                .hasSize(3);
        assertThat(waterlogged.contradicts()).containsExactly("one end of the shell rings");
        assertThat(ranked(diagnosis, Hypothesis.OVER_FILLED).contradicts())
                .first()
                .isEqualTo("a cold pressure in the fill window");
    }

    @Test
    void theTextLeavesOutWhatIsHardlyPossible() {
        Diagnosis diagnosis = diagnose(SomeSystem.rising(HALF));
        String text = diagnosis.text(UnitSystem.SI);
        for (RankedHypothesis ranked : diagnosis.ranking()) {
            boolean shown = text.contains("  " + ranked.hypothesis().word() + ", " + ranked.percent() + "\n");
            assertThat(shown).as("%s", ranked).isEqualTo(ranked.probability() >= 0.01);
        }
        assertThat(text).contains("- A change of pressure with temperature alone is no sign of failure.");
    }

    @Test
    void beliefIsCountedByFamily() {
        Diagnosis diagnosis = diagnose(SomeSystem.rising(2.2));
        double all = 0;
        for (Family family : Family.values()) {
            all += diagnosis.belief(family);
        }
        assertThat(all).isCloseTo(1, within(1e-9));
        assertThat(diagnosis.belief(Family.SOUND)).isEqualTo(probability(diagnosis, Hypothesis.HEALTHY));
    }

    @Test
    void aSmallSwingCannotDecideAndSaysSo() {
        Evidence evidence = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(1.34, 24));
        Diagnosis diagnosis = diagnose(evidence);
        assertThat(diagnosis.decided()).isFalse();
        assertThat(diagnosis.verdict()).startsWith("The evidence cannot decide: ");
        assertThat(diagnosis.isNamed()).isFalse();
        assertThat(diagnosis.nextStep()).isNotBlank();
    }

    @Test
    void theMeasuredChargeDecidesAndIsCorrectedForItsTemperature() {
        Evidence evidence = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(1.34, 24));
        // 1.0 bar at 20 degC reads 2.01325 x 273.15/293.15 - 1.01325 = 0.8626 bar at 0 degC.
        MeasuredCharge frosty =
                new MeasuredCharge(GaugePressure.bar(0.8626), Temperature.celsius(0), PressureDifference.bar(0.04));
        Diagnosis sound = diagnose(evidence.with(frosty));
        assertThat(sound.likeliest().hypothesis()).isEqualTo(Hypothesis.HEALTHY);
        MeasuredCharge lost =
                new MeasuredCharge(GaugePressure.bar(0.3), Temperature.celsius(20), PressureDifference.bar(0.04));
        assertThat(diagnose(evidence.with(lost)).likeliest().hypothesis()).isEqualTo(Hypothesis.LOW_CHARGE);
    }

    /** The air pushes the membrane of a drained vessel in: 0 bar is what 5 % of the gas shows, and what 40 % shows. */
    @Test
    void aDrainedVesselShowsNoLessThanTheAir() {
        MeasuredCharge zero =
                new MeasuredCharge(GaugePressure.bar(0), Temperature.celsius(20), PressureDifference.bar(0.04));
        Evidence lifted = Evidence.of(SomeSystem.reading(1.3, 20), SomeSystem.reading(3.0, 28));
        Diagnosis without = diagnose(lifted);
        Diagnosis with = diagnose(lifted.with(zero));
        assertThat(with.decided()).isTrue();
        assertThat(with.likeliest().hypothesis()).isEqualTo(Hypothesis.WATERLOGGED);
        assertThat(probability(with, Hypothesis.WATERLOGGED))
                .isGreaterThan(probability(without, Hypothesis.WATERLOGGED));
    }

    @Test
    void noCertaintyIsClaimed() {
        MeasuredCharge asSet =
                new MeasuredCharge(GaugePressure.bar(1), Temperature.celsius(20), PressureDifference.bar(0.04));
        Evidence evidence = SomeSystem.rising(SOUND)
                .with(asSet)
                .with(Sign.RELIEF_DRY)
                .with(Sign.ONE_END_RINGS)
                .with(Sign.PRESSURE_STAYS)
                .with(Sign.TOP_QUIET);
        Diagnosis diagnosis = diagnose(evidence);
        assertThat(diagnosis.likeliest().percent()).isIn("over 99 %", "99 %");
        assertThat(diagnosis.isNamed()).isTrue();
        assertThat(diagnosis.verdict())
                .startsWith("Most likely healthy (")
                .endsWith("nothing to do but the yearly check of the charge.");
        assertThat(diagnosis.text(UnitSystem.IP))
                .contains("Likelihoods are judgements")
                .contains("psi")
                .doesNotContain("(100 %)")
                .doesNotContain("healthy, 100 %");
    }

    /** Half of the gas shows no charge, as 5 % does, and a valve that lifted leaves what half of the gas leaves: failed either way. */
    @Test
    void aVesselThatShowsNoChargeHasFailed() {
        Evidence evidence = SomeSystem.rising(HALF)
                .with(Sign.DULL_ALL_OVER)
                .with(Sign.RELIEF_DRIPS_HOT)
                .with(new MeasuredCharge(GaugePressure.bar(0), Temperature.celsius(20), PressureDifference.bar(0.04)));
        Diagnosis diagnosis = diagnose(evidence);
        assertThat(diagnosis.belief(Family.CHARGE)).isBetween(0.99, 1.0);
        assertThat(diagnosis.decided()).isTrue();
    }

    @Test
    void badInputIsRefused() {
        GaugeReading cold = SomeSystem.reading(1.3, 20);
        assertThatThrownBy(() -> Evidence.of(cold, cold))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("above that of the cold reading");
        assertThatThrownBy(() -> SomeSystem.rising(2).with(Sign.RELIEF_DRY).with(Sign.RELIEF_DRIPS_HOT))
                .hasMessageContaining("one for each inspection");
        assertThatThrownBy(() -> GaugeReading.of(
                        GaugePressure.bar(1),
                        PressureDifference.bar(0),
                        Temperature.celsius(20),
                        TemperatureDifference.kelvins(1)))
                .hasMessageContaining("error of the gauge");
        assertThatThrownBy(() -> GaugeReading.of(
                        GaugePressure.bar(1),
                        PressureDifference.bar(0.04),
                        Temperature.celsius(20),
                        TemperatureDifference.kelvins(0)))
                .hasMessageContaining("error of the thermometer");
        assertThatThrownBy(() ->
                        new MeasuredCharge(GaugePressure.bar(1), Temperature.celsius(20), PressureDifference.bar(0)))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SomeSystem.withVessel(0)).hasMessageContaining("nominal volume");
        assertThatThrownBy(() -> diagnose(Evidence.of(cold, SomeSystem.reading(1.5, 20.0000001))
                        .with(new MeasuredCharge(
                                GaugePressure.bar(1), Temperature.celsius(20), PressureDifference.bar(-1)))))
                .isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void oddReadingsGiveNoNumbersOutOfNowhere() {
        for (double hot : new double[] {-0.9, 0, 1.29, 1.3, 5, 50}) {
            Diagnosis diagnosis = diagnose(SomeSystem.rising(hot));
            assertThat(diagnosis.ranking())
                    .allSatisfy(ranked -> assertThat(ranked.probability()).isBetween(0.0, 1.0));
            assertThat(diagnosis.text(UnitSystem.SI)).doesNotContain("NaN").doesNotContain("Infinity");
        }
    }

    @Test
    void survivesAStream() throws Exception {
        Diagnosis diagnosis = diagnose(SomeSystem.rising(HALF));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(diagnosis);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            assertThat(((Diagnosis) in.readObject()).ranking()).isEqualTo(diagnosis.ranking());
        }
        assertThat(diagnosis.system().nominal()).isEqualTo(Volume.litres(12));
    }

    @Test
    void numbersSoExtremeThatNoBeliefComesOutAreRefused() {
        InstalledSystem small = SomeSystem.SMALL;
        InstalledSystem endless = new InstalledSystem(
                small.loop(),
                small.contentsError(),
                small.nominal(),
                small.charge(),
                small.lowestFill(),
                small.highestFill(),
                small.fill(),
                small.relief(),
                small.designCold(),
                small.designHot(),
                AbsolutePressure.bar(1e295));
        assertThatThrownBy(() -> Diagnosis.of(endless, SomeSystem.rising(SOUND)))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("weight of the evidence");
    }
}
