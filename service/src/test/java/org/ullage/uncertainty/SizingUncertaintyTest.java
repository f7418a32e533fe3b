package org.ullage.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.method.SizingJob;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Length;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.quantity.PressureDifference;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.TemperatureDifference;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

class SizingUncertaintyTest {

    private static final int MANY = 200_000;

    @Test
    void withoutSpreadTheAnswerIsTheSizingToTheLastBit() {
        double sized = Methods.ASHRAE.size(UncertainJobs.JOB).requiredVolume().si();
        SizingUncertainty certain = UncertainJobs.certain()
                .contents(Uncertain.exactly(Volume.litres(1000)))
                .coldPressure(Uncertain.normal(GaugePressure.bar(1.2), PressureDifference.bar(0)))
                .hotTemperature(Uncertain.exactly(Temperature.celsius(80)));
        for (SizingUncertainty question : new SizingUncertainty[] {UncertainJobs.certain(), certain}) {
            LinearSizing linear = question.linear();
            assertThat(linear.requiredVolume().si()).isEqualTo(sized);
            assertThat(linear.propagation().value()).isEqualTo(sized);
            assertThat(linear.standardUncertainty().si()).isZero();
            SampledSizing sampled = question.sampled(20_000, 1);
            assertThat(sampled.mean().si()).isEqualTo(sized);
            assertThat(sampled.standardUncertainty().si()).isZero();
            assertThat(sampled.quantile(0.01).si()).isEqualTo(sized);
            assertThat(sampled.volumeFor(0.99).si()).isEqualTo(sized);
            assertThat(sampled.shares().values()).allMatch(share -> share == 0);
        }
    }

    /** V_n is in proportion to the contents, so u is too: 50 L in 1000 L is 5 % of the vessel. */
    @Test
    void bothWaysAgreeWhereTheSizingIsLinear() {
        SizingUncertainty question =
                UncertainJobs.certain().contents(Uncertain.normal(Volume.litres(1000), Volume.litres(50)));
        double sized = question.centre().requiredVolume().si();
        LinearSizing linear = question.linear();
        SampledSizing sampled = question.sampled(MANY, 1);
        assertThat(linear.standardUncertainty().si()).isCloseTo(0.05 * sized, within(1e-12));
        assertThat(sampled.standardUncertainty().si()).isCloseTo(0.05 * sized, within(0.05 * sized * 0.01));
        assertThat(sampled.mean().si()).isCloseTo(sized, within(0.05 * sized * 0.01));
        assertThat(sampled.volumeFor(0.95).si())
                .isCloseTo(linear.volumeFor(0.95).si(), within(0.05 * sized * 0.02));
        assertThat(linear.volumeFor(0.95).si()).isCloseTo(sized * (1 + 0.05 * 1.644854), within(1e-8));
        assertThat(linear.expanded(2).si()).isCloseTo(0.1 * sized, within(1e-12));
    }

    /** Spreads narrow enough that the gas law is nearly straight. */
    @Test
    void bothWaysAgreeForNarrowSpreadsOfEverything() {
        SizingUncertainty question = UncertainJobs.certain()
                .contents(Uncertain.normal(Volume.litres(1000), Volume.litres(10)))
                .coldTemperature(Uncertain.normal(Temperature.celsius(10), TemperatureDifference.kelvins(0.2)))
                .hotTemperature(Uncertain.normal(Temperature.celsius(80), TemperatureDifference.kelvins(0.5)))
                .coldPressure(Uncertain.normal(GaugePressure.bar(1.2), PressureDifference.bar(0.01)))
                .charge(Uncertain.normal(GaugePressure.bar(0.9), PressureDifference.bar(0.01)))
                .reliefSetting(Uncertain.normal(GaugePressure.bar(3), PressureDifference.bar(0.01)));
        LinearSizing linear = question.linear();
        SampledSizing sampled = question.sampled(MANY, 1);
        double u = linear.standardUncertainty().si();
        assertThat(sampled.standardUncertainty().si()).isCloseTo(u, within(0.01 * u));
        assertThat(sampled.mean().si()).isCloseTo(linear.requiredVolume().si(), within(0.03 * u));
        linear.shares()
                .forEach((input, share) -> assertThat(sampled.shares().getOrDefault(input, -1.0))
                        .as("%s", input)
                        .isCloseTo(share, within(0.02)));
        assertThat(linear.shares().values().stream().mapToDouble(share -> share).sum())
                .isCloseTo(1, within(1e-12));
    }

    static Stream<SizingUncertainty> questions() {
        return Stream.of(UncertainJobs.usual(), UncertainJobs.withTemperatures());
    }

    @ParameterizedTest
    @MethodSource("questions")
    void aSeedGivesTheSameBitsAndAnotherOneOtherBits(SizingUncertainty question) {
        SampledSizing one = question.sampled(20_000, 7);
        SampledSizing same = question.sampled(20_000, 7);
        SampledSizing other = question.sampled(20_000, 8);
        assertThat(same.mean()).isEqualTo(one.mean());
        assertThat(same.quantile(0.95)).isEqualTo(one.quantile(0.95));
        assertThat(same.shares()).isEqualTo(one.shares());
        assertThat(other.mean()).isNotEqualTo(one.mean());
        assertThat(one.result().seed()).isEqualTo(7);
    }

    @ParameterizedTest
    @MethodSource("questions")
    void drawsAreThoseOfTheWholeMethod(SizingUncertainty question) {
        MonteCarloResult whole = MonteCarlo.of(
                row -> Methods.ASHRAE
                        .size(question.jobs().at(row))
                        .requiredVolume()
                        .si(),
                question.inputs(),
                20_000,
                7);
        MonteCarloResult quick = question.sampled(20_000, 7).result();
        assertThat(quick.mean()).isCloseTo(whole.mean(), within(1e-12));
        assertThat(quick.quantile(0.95)).isCloseTo(whole.quantile(0.95), within(1e-9));
        assertThat(quick.refusals()).isEqualTo(whole.refusals());
    }

    @ParameterizedTest
    @MethodSource("questions")
    void moreConfidenceNeverAsksForLess(SizingUncertainty question) {
        SampledSizing sampled = question.sampled(20_000, 7);
        double before = 0;
        for (double confidence = 0.01; confidence < 1; confidence += 0.01) {
            Volume volume = sampled.volumeFor(confidence);
            assertThat(volume.si()).isGreaterThanOrEqualTo(before);
            assertThat(sampled.chanceTooSmall(volume)).isCloseTo(1 - confidence, within(1e-6));
            before = volume.si();
        }
    }

    /** With twice the loop and the same relative spread every number doubles: the method has no reserve with a floor. */
    @Test
    void answersScaleWithTheContents() {
        SampledSizing one = scaled(1).sampled(20_000, 7);
        SampledSizing twice = scaled(2).sampled(20_000, 7);
        assertThat(twice.mean().si()).isCloseTo(2 * one.mean().si(), within(1e-12));
        assertThat(twice.standardUncertainty().si())
                .isCloseTo(2 * one.standardUncertainty().si(), within(1e-12));
        assertThat(twice.quantile(0.9).si()).isCloseTo(2 * one.quantile(0.9).si(), within(1e-12));
        assertThat(scaled(2).linear().standardUncertainty().si())
                .isCloseTo(2 * scaled(1).linear().standardUncertainty().si(), within(1e-12));
    }

    private static SizingUncertainty scaled(double factor) {
        return UncertainJobs.usual()
                .contents(Uncertain.uniform(Volume.litres(900 * factor), Volume.litres(1100 * factor)));
    }

    @Test
    void refusedDrawsAreShownAndCountAsTooSmall() {
        SizingUncertainty question =
                UncertainJobs.certain().charge(Uncertain.normal(GaugePressure.bar(1.15), PressureDifference.bar(0.05)));
        SampledSizing sampled = question.sampled(50_000, 3);
        // the charge is above the cold pressure beyond one standard uncertainty: 15.87 %
        double refused =
                1 - (double) sampled.result().answered() / sampled.result().draws();
        assertThat(refused).isCloseTo(0.1587, within(0.007));
        assertThat(sampled.result().refusals()).containsOnlyKeys("gas charge");
        assertThat(sampled.text(UnitSystem.SI)).contains("draws have no answer, refused for: gas charge");
        assertThat(sampled.chanceTooSmall(Volume.litres(1e6))).isCloseTo(refused, within(1e-12));
        assertThatThrownBy(() -> sampled.volumeFor(0.95))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("share of draws with an answer");
        assertThat(sampled.volumeFor(0.8)).isGreaterThan(sampled.quantile(0.8));
    }

    @Test
    void spreadsThatCannotBeAreRefusedBeforehand() {
        assertRefused(q -> q.contents(Uncertain.normal(Volume.litres(1000), Volume.litres(300))), "contents");
        assertRefused(
                q -> q.charge(Uncertain.normal(GaugePressure.bar(0.9), PressureDifference.bar(0.6))), "gas charge");
        assertRefused(q -> q.staticHead(Uncertain.uniform(Length.metres(5), Length.metres(6))), "cold pressure");
        assertRefused(
                q -> q.hotTemperature(Uncertain.uniform(Temperature.celsius(190), Temperature.celsius(210))),
                "within the model");
        assertRefused(
                q -> q.coldTemperature(Uncertain.uniform(Temperature.celsius(5), Temperature.celsius(60)))
                        .hotTemperature(Uncertain.uniform(Temperature.celsius(55), Temperature.celsius(80))),
                "above the cold temperature throughout");
        SizingJob open = new SizingJob(
                UncertainJobs.JOB.loop(),
                VesselType.open(),
                UncertainJobs.JOB.temperatures(),
                UncertainJobs.JOB.pressures());
        assertThatThrownBy(() ->
                        SizingUncertainty.of(Methods.ASHRAE, open).charge(Uncertain.exactly(GaugePressure.bar(1))))
                .hasMessageContaining("open tank");
    }

    private static void assertRefused(Function<SizingUncertainty, SizingUncertainty> question, String words) {
        assertThatThrownBy(() -> question.apply(UncertainJobs.certain()))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining(words);
    }

    @Test
    void anOpenTankMayHaveUncertainContents() {
        SizingJob open = new SizingJob(
                UncertainJobs.JOB.loop(),
                VesselType.open(),
                UncertainJobs.JOB.temperatures(),
                UncertainJobs.JOB.pressures());
        SizingUncertainty question = SizingUncertainty.of(Methods.ASHRAE, open)
                .contents(Uncertain.uniform(Volume.litres(900), Volume.litres(1100)));
        double sized = question.centre().requiredVolume().si();
        assertThat(question.sampled(20_000, 1).quantile(0.5).si()).isCloseTo(sized, within(0.005 * sized));
    }

    @Test
    void textIsAsciiInBothSystemsAndNamesTheSeed() {
        String metric = UncertainJobs.withTemperatures().sampled(20_000, 7).text(UnitSystem.SI);
        String inchPound = UncertainJobs.withTemperatures().linear().text(UnitSystem.IP);
        assertThat(metric)
                .contains("20000 draws, seed 7", " L", "relief setting", "bar")
                .matches("\\p{ASCII}*");
        assertThat(inchPound)
                .contains(" gal", "psi", "degF", "law of propagation")
                .matches("\\p{ASCII}*");
    }

    @Test
    void answersComeBackFromAStream() throws Exception {
        SampledSizing sampled = UncertainJobs.usual().sampled(20_000, 7);
        SampledSizing sampledBack = copied(sampled);
        assertThat(sampledBack.text(UnitSystem.SI)).isEqualTo(sampled.text(UnitSystem.SI));
        assertThat(sampledBack.quantile(0.95)).isEqualTo(sampled.quantile(0.95));
        LinearSizing linear = UncertainJobs.usual().linear();
        assertThat(copied(linear).text(UnitSystem.SI)).isEqualTo(linear.text(UnitSystem.SI));
        LiftChance chance = UncertainJobs.usual().liftChance(Volume.litres(80), 20_000, 7);
        assertThat(copied(chance).text(UnitSystem.SI)).isEqualTo(chance.text(UnitSystem.SI));
    }

    @SuppressWarnings({"unchecked", "BanSerializableRead"})
    private static <T> T copied(T object) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(object);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (T) in.readObject();
        }
    }

    @Test
    void aLinearSizingNeedsEveryInput() {
        LinearSizing whole = UncertainJobs.usual().linear();
        LinearUncertainty none = new LinearUncertainty(1, 0.1, List.of(), null);
        assertThatThrownBy(() -> new LinearSizing(whole.question(), whole.centre(), none))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageStartingWith("number of contributions 0 is not allowed");
    }
}
