package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.ullage.condition.FluidFindings;
import org.ullage.condition.FluidSample;
import org.ullage.condition.LoopTrait;
import org.ullage.condition.SampleValue;

class FluidReportTest {

    @Test
    void contradictionsAreShownWithEverySource() {
        FluidFindings findings =
                FluidFindings.of(FluidSample.of(LoopTrait.GLYCOL).with(SampleValue.ph(6.7)));
        Document page = FluidReport.of(findings);
        Drawn.parse(page.html());
        String words = page.text().replaceAll("\\s+", " ");
        assertThat(words)
                .contains("The fluid as a whole: replace. Judged as inhibited glycol.")
                .contains("Where the sources disagree");
        assertThat(findings.findings().get(0).judgements())
                .hasSizeGreaterThan(1)
                .allSatisfy(judgement -> assertThat(words).contains(judgement.text()));
        assertThat(findings.cautions()).allSatisfy(caution -> assertThat(words).contains(caution.toString()));
    }

    @Test
    void withoutContradictionThereIsNoSuchSection() {
        Document page = FluidReport.of(FluidFindings.of(FluidSample.of()));
        assertThat(page.text())
                .contains("Judged as plain water in a loop of steel and copper.")
                .doesNotContain("Where the sources disagree");
        assertThat(Drawn.elements(Drawn.parse(page.html()), "th")).hasSize(4);
    }
}
