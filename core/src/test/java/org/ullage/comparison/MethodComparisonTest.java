package org.ullage.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.loop.Loop;
import org.ullage.loop.StagnationContents;
import org.ullage.method.Jobs;
import org.ullage.method.Method;
import org.ullage.method.Sizing;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.pressure.FinalPressureRule;
import org.ullage.pressure.PressureInputs;
import org.ullage.provenance.Source;
import org.ullage.published.Methods;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Volume;
import org.ullage.vessel.GasTemperatures;
import org.ullage.vessel.VesselType;

class MethodComparisonTest {

    private static final List<Method> SOME =
            List.of(Methods.ASHRAE, Methods.ASME_IV, Methods.EN_12828, Methods.RACCOLTA_R, Methods.MASS_BALANCE);

    private static final SizingJob JOB =
            Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80));

    @Test
    void answersAreSortedAndTheSpreadIsLargestLessSmallest() {
        MethodComparison comparison = MethodComparison.of(JOB, SOME);
        List<Volume> volumes = comparison.answers().stream()
                .map(answer -> answer.sizing().requiredVolume())
                .toList();
        assertThat(volumes).hasSize(SOME.size()).isSorted();
        assertThat(comparison.spread())
                .isEqualTo(volumes.get(volumes.size() - 1).minus(volumes.get(0)));
        assertThat(comparison.refusals()).isEmpty();
    }

    @Test
    void refusalsKeepTheirReason() {
        SizingJob floor =
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(40));
        MethodComparison comparison = MethodComparison.of(floor, SOME);
        assertThat(comparison.refusals()).singleElement().satisfies(refusal -> {
            assertThat(refusal.method()).isSameAs(Methods.ASME_IV);
            assertThat(refusal.reason()).contains("40 degC");
        });
        assertThat(comparison.text(UnitSystem.SI)).contains("asme-iv refused: highest temperature 40 degC");
    }

    @Test
    void massBalanceAtItsOwnMarginsIsGenerousByThoseMargins() {
        MassBalanceGrade grade = MassBalanceGrade.of(Methods.MASS_BALANCE.size(JOB));
        assertThat(grade.isShort()).isFalse();
        assertThat(grade.text(UnitSystem.SI)).startsWith("+");
    }

    @Test
    void gasIsAsWarmInTheSmallestVesselAsInTheMethod() {
        GasTemperatures warm = new GasTemperatures(
                Temperature.celsius(20), Temperature.celsius(20), Temperature.celsius(40), Source.given());
        Method sized = Methods.MASS_BALANCE.with(warm);
        Sizing smallest = sized.with(FinalPressureRule.setting(Source.given())).size(JOB);
        MassBalanceGrade grade = MassBalanceGrade.of(sized.size(JOB));
        assertThat(grade.beyond()).isEqualTo(sized.size(JOB).requiredVolume().minus(smallest.requiredVolume()));
        assertThat(MassBalanceGrade.of(smallest).beyond()).isEqualTo(Volume.litres(0));
        assertThat(MassBalanceGrade.of(smallest).isShort()).isFalse();
    }

    @Test
    void vesselWithLessExpansionThanTheWaterHasIsShort() {
        // the European line is far below the test water, and without any margin the vessel is short
        MassBalanceGrade grade = MassBalanceGrade.of(Methods.RACCOLTA_R.size(JOB));
        assertThat(grade.isShort()).isTrue();
        MethodComparison comparison = MethodComparison.of(JOB, SOME);
        assertThat(comparison.recommendation(UnitSystem.SI))
                .contains("the valve would lift with")
                .contains("raccolta-r (-")
                .contains("ashrae (+");
    }

    @Test
    void openTanksAndUnknownTemperaturesAreNotJudged() {
        Sizing open = Methods.ASHRAE.size(
                Jobs.steel(TestFluid.WATER, VesselType.open(), Temperature.celsius(10), Temperature.celsius(80)));
        assertThat(MassBalanceGrade.of(open).text(UnitSystem.SI)).isEqualTo("not judged");
        Sizing hotOnly = Methods.RACCOLTA_R.size(
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), null, Temperature.celsius(80)));
        assertThat(MassBalanceGrade.of(hotOnly).beyond()).isNull();
        assertThat(MassBalanceGrade.of(hotOnly).reason()).contains("lowest (fill) temperature");
    }

    @Test
    void tableHasARowForEachAnswer() {
        String text = MethodComparison.of(JOB, SOME).text(UnitSystem.IP);
        assertThat(text.lines().filter(line -> line.contains(" gal ")).count()).isGreaterThanOrEqualTo(SOME.size());
        assertThat(text).contains("spread ");
    }

    @Test
    void methodsForOtherKindsStandInOneLine() {
        SizingJob plain =
                Jobs.steel(TestFluid.WATER, VesselType.plainSteel(), Temperature.celsius(10), Temperature.celsius(80));
        String text = MethodComparison.of(plain, SOME).text(UnitSystem.SI);
        assertThat(text).contains("for other kinds of vessel: en-12828\n").doesNotContain("en-12828 refused");
    }

    @Test
    void inLoopThatMayBoilRulesWithoutVapourAreShort() {
        Loop solar = Loop.withContents(Volume.litres(65))
                .rigid()
                .filledWith(TestFluid.MIXTURE)
                .stagnating(new StagnationContents(Volume.litres(30), Volume.litres(10)));
        SizingJob job =
                Jobs.steel(TestFluid.MIXTURE, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(120));
        PressureInputs pressures =
                PressureInputs.NONE.withColdPressure(GaugePressure.bar(2.7)).withReliefSetting(GaugePressure.bar(6));
        SizingJob boiling = Jobs.with(job.with(solar), pressures);
        MethodComparison comparison = MethodComparison.of(boiling, List.of(Methods.ASHRAE, Methods.IDAE_022));
        assertThat(comparison.answers().get(0).sizing().method()).isSameAs(Methods.ASHRAE);
        assertThat(comparison.answers().get(0).grade().isShort()).isTrue();
        assertThat(comparison.answers().get(1).grade().isShort()).isFalse();
    }

    @Test
    void recommendationNamesTheSmallestVesselThatIsNotShort() {
        MethodComparison comparison = MethodComparison.of(JOB, SOME);
        List<MethodComparison.Answer> sound = comparison.answers().stream()
                .filter(answer -> !answer.grade().isShort())
                .toList();
        assertThat(sound).hasSizeBetween(1, SOME.size() - 1);
        String text = comparison.recommendation(UnitSystem.SI);
        assertThat(text)
                .contains(
                        "no less than " + sound.get(0).sizing().requiredVolume().text(UnitSystem.SI) + ",");
        String warned = text.substring(0, text.indexOf('.' + " Beyond"));
        for (MethodComparison.Answer answer : comparison.answers()) {
            String graded =
                    answer.sizing().method().name() + " (" + answer.grade().text(UnitSystem.SI) + ")";
            assertThat(warned.contains(graded)).isEqualTo(answer.grade().isShort());
        }
    }

    @Test
    void recommendationKeepsLeastAndMostApart() {
        String text = MethodComparison.of(JOB, List.of(Methods.ASHRAE, Methods.MASS_BALANCE))
                .recommendation(UnitSystem.SI);
        assertThat(text).startsWith("By the mass balance no method is short");
        assertThat(text).containsPattern("ashrae \\(.*\\) keeps least and mass-balance \\(.*\\) most");
    }

    @Test
    void recommendationWhenAllAreShortOrNoneCanBeJudged() {
        assertThat(MethodComparison.of(JOB, List.of(Methods.RACCOLTA_R)).recommendation(UnitSystem.SI))
                .contains("Take none of them")
                .doesNotContain("Beyond");
        SizingJob hotOnly = Jobs.steel(TestFluid.WATER, VesselType.bladder(), null, Temperature.celsius(80));
        assertThat(MethodComparison.of(hotOnly, List.of(Methods.RACCOLTA_R)).recommendation(UnitSystem.SI))
                .startsWith("The mass balance cannot judge these answers");
    }
}
