package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ullage.comparison.MethodComparison;
import org.ullage.method.Jobs;
import org.ullage.method.SizingJob;
import org.ullage.method.TestFluid;
import org.ullage.published.Methods;
import org.ullage.quantity.Temperature;
import org.ullage.quantity.UnitSystem;
import org.ullage.quantity.Units;
import org.ullage.quantity.Volume;
import org.ullage.vessel.VesselType;

class ComparisonReportTest {

    private static final SizingJob JOB =
            Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(80));

    private static final MethodComparison ALL = MethodComparison.of(JOB);

    @Test
    void everyMethodHasItsBarInTheReadersUnit() {
        BarChart chart = MethodComparisonChart.of(ALL, UnitSystem.IP);
        LabelChecks.check(chart);
        assertThat(chart.axis().unit()).isEqualTo("gal");
        assertThat(chart.bars()).hasSameSizeAs(ALL.answers());
        for (int i = 0; i < chart.bars().size(); i++) {
            Bar bar = chart.bars().get(i);
            MethodComparison.Answer answer = ALL.answers().get(i);
            Volume required = answer.sizing().requiredVolume();
            Volume beyond = answer.grade().beyond();
            assertThat(bar.name()).isEqualTo(answer.sizing().method().name());
            assertThat(bar.value()).isCloseTo(required.in(Units.US_GALLON), offset(1e-9));
            assertThat(bar.value() - bar.mark()).isCloseTo(beyond.in(Units.US_GALLON), offset(1e-9));
            assertThat(bar.isAlarming()).isEqualTo(bar.value() < bar.mark());
        }
        assertThat(chart.bars().stream().filter(Bar::isAlarming)).isNotEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void pageHasAnswersRefusalsAndCautions(UnitSystem system) {
        Document page = ComparisonReport.of(ALL, system);
        Drawn.parse(page.html());
        assertThat(page.charts()).containsExactly(MethodComparisonChart.of(ALL, system));
        String words = page.text().replaceAll("\\s+", " ");
        assertThat(words)
                .contains(ALL.spread().text(system))
                .contains(ALL.recommendation(system).strip())
                .contains("Methods that refuse the job");
        ALL.answers()
                .forEach(answer -> assertThat(words)
                        .contains(answer.sizing().requiredVolume().text(system)));
        ALL.answers()
                .get(0)
                .sizing()
                .cautions()
                .forEach(caution -> assertThat(words).contains(caution.text()));
    }

    @Test
    void aSharedWarningStandsOnce() {
        Document page = ComparisonReport.of(ALL, UnitSystem.SI);
        CautionList warnings = page.blocks().stream()
                .filter(CautionList.class::isInstance)
                .map(CautionList.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(warnings.cautions()).doesNotHaveDuplicates();
        ALL.answers()
                .forEach(answer -> answer.sizing()
                        .warnings()
                        .forEach(warning -> assertThat(warnings.cautions())
                                .filteredOn(shown -> shown.text().startsWith(warning.text() + " ("))
                                .anyMatch(shown -> shown.text()
                                        .contains(answer.sizing().method().name()))));
    }

    @Test
    void withoutAnAnswerThereIsStillAPage() {
        // far below the range of its formula
        SizingJob cool =
                Jobs.steel(TestFluid.WATER, VesselType.bladder(), Temperature.celsius(10), Temperature.celsius(40));
        Document page = ComparisonReport.of(MethodComparison.of(cool, List.of(Methods.ASME_IV)), UnitSystem.SI);
        Drawn.parse(page.html());
        assertThat(page.text()).contains("asme-iv").contains("no data").contains("40 degC");
    }
}
