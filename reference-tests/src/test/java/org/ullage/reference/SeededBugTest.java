package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.Volume;

/** Wrong calculations, made of this library's by the mistakes that are met in practice, are caught and named. */
class SeededBugTest {

    private final ImplementationUnderTest ullage = new UllageImplementation();

    @Test
    void gaugeTakenForAbsolute() {
        assertCaught(
                question -> ullage.answer(absolute(question)),
                "ASHRAE-HW-CLOSED",
                "ASHRAE-HW-DIAPHRAGM",
                "MI-272B-100",
                "US-POTABLE-544",
                "R1-EN-0.2",
                "CHW-1463GAL-GAUGE-AS-ABSOLUTE");
    }

    @Test
    void pipeTermNotMultipliedByTheContents() {
        assertCaught(
                withVolume((rigid, inPipe) -> rigid),
                "ASHRAE-HW-CLOSED",
                "ASHRAE-HW-DIAPHRAGM",
                "ASHRAE-HW-DIAPHRAGM-COPPER",
                "CHW-1463GAL",
                "R1-ASHRAE-DIAPHRAGM");
    }

    @Test
    void fahrenheitRiseUsedAsKelvin() {
        double fahrenheitDegreesPerKelvin = 1.8;
        assertCaught(
                withVolume((rigid, inPipe) -> rigid - fahrenheitDegreesPerKelvin * (rigid - inPipe)),
                "ASHRAE-HW-CLOSED",
                "ASHRAE-HW-DIAPHRAGM",
                "CHW-1463GAL",
                "R1-ASHRAE-DIAPHRAGM");
    }

    @Test
    void gaugePressureTakenForTheAbsoluteOneOfTheGas() {
        assertCaught(
                question -> question.asked() == Asked.CHARGE_READING
                        ? Optional.of(Answer.of(GaugePressure.ofSi(question.gaugePressure(Input.PRECHARGE)
                                        .si()
                                * question.temperature(Input.GAS_TEMPERATURE).si()
                                / question.temperature(Input.CHARGED_AT).si())))
                        : ullage.answer(question),
                "CHARGE-1-BAR-AT-60C",
                "CHARGE-12-PSI-AT-0C");
    }

    @Test
    void classOfAGaugeTakenOfTheReading() {
        assertCaught(
                question -> question.asked() == Asked.GAUGE_ERROR
                        ? ullage.answer(question.with(Input.SCALE_END, question.text(Input.READING)))
                        : ullage.answer(question),
                "GAUGE-12-OF-100-PSI-B",
                "GAUGE-1-OF-10-BAR-CL1");
    }

    @Test
    void lowerBoundOfTheSeismicForceForgotten() {
        assertCaught(
                question -> question.asked() == Asked.SEISMIC_COEFFICIENT
                        ? Optional.of(Answer.ofNumber(0.4
                                * question.number(Input.AMPLIFICATION)
                                * question.number(Input.GROUND_MOTION)
                                * (1 + 2 * question.number(Input.HEIGHT_RATIO))
                                * question.number(Input.IMPORTANCE)
                                / question.number(Input.RESPONSE)))
                        : ullage.answer(question),
                "SEISMIC-SDS0.5-ZH0.0-IP1.0",
                "SEISMIC-SDS1.0-ZH0.0-IP1.5");
    }

    @Test
    void wallThatDoesNotGrowLetsLockedWaterRiseTooFast() {
        assertCaught(
                question -> question.has(Input.LINEAR_EXPANSION)
                        ? ullage.answer(question.with(Input.LINEAR_EXPANSION, "0 1/K"))
                        : ullage.answer(question),
                "LOCKED-STEEL-1-IN-SCH-40-10C",
                "LOCKED-PE-X-16-X-2-20C");
    }

    @Test
    void repeatingAMisprintIsCaught() {
        ReferenceReport report = assertCaught(
                question -> question.toString().contains("contents=2000 gal")
                        ? Optional.of(Answer.of(Volume.gallons(300)))
                        : ullage.answer(question),
                "MI-272B-2000");
        assertThat(TextReport.of(report)).contains("repeats the stated 300 gal, which is wrong; right is 300.85 gal");
    }

    @Test
    void answeringNothingPassesNothing() {
        ReferenceReport report = ReferenceRun.of(question -> Optional.empty());
        assertThat(report.total().passed()).isZero();
        assertThat(report.total().notAnswered()).isEqualTo(ReferenceCases.all().size());
        assertThat(report.isClean()).isFalse();
    }

    @Test
    void refusingEverythingPassesRefusalsOnly() {
        ReferenceReport report = ReferenceRun.of(question -> {
            throw new IllegalArgumentException("never");
        });
        assertThat(report.results())
                .allSatisfy(result -> assertThat(result.outcome() == Outcome.PASSED)
                        .isEqualTo(result.referenceCase().verdict() == Verdict.REFUSED));
        assertThat(report.isClean()).isFalse();
    }

    @Test
    void aBreakdownIsNoRefusal() {
        ReferenceReport report = ReferenceRun.of(question -> {
            throw new NullPointerException("seeded");
        });
        assertThat(report.failures())
                .hasSameSizeAs(ReferenceCases.all())
                .allSatisfy(result ->
                        assertThat(result.remark()).contains("broke down").contains("seeded"));
    }

    @Test
    void anAnswerOfTheWrongKindFails() {
        List<ReferenceCase> psat = only("R7-97-T35-300K");
        ReferenceReport report = ReferenceRun.of(question -> Optional.of(Answer.of(Volume.litres(1))), psat);
        assertThat(report.failures())
                .extracting(CaseResult::remark)
                .containsExactly("answered with Volume, not AbsolutePressure");
    }

    @Test
    void notANumberFails() {
        ReferenceReport report =
                ReferenceRun.of(question -> Optional.of(Answer.ofNumber(Double.NaN)), only("INAIL-100"));
        assertThat(report.failures()).extracting(CaseResult::remark).containsExactly("answered with NaN");
    }

    @Test
    void anAnswerWhereARefusalIsDueFails() {
        ReferenceReport report =
                ReferenceRun.of(question -> Optional.of(Answer.of(Volume.litres(1))), only("REFUSE-ASME-FLOOR"));
        assertThat(report.failures())
                .extracting(CaseResult::remark)
                .first()
                .asString()
                .contains("must refuse");
    }

    private static ReferenceReport assertCaught(ImplementationUnderTest wrong, String... ids) {
        ReferenceReport report = ReferenceRun.of(wrong);
        assertThat(report.isClean()).isFalse();
        assertThat(report.failures()).extracting(CaseResult::id).contains(ids);
        String failures = TextReport.of(report);
        failures = failures.substring(failures.indexOf("Failures:"), failures.indexOf("Misprints"));
        assertThat(failures).contains(ids);
        assertThat(HtmlReport.of(report)).contains(ids).contains("<tr class=\"failed\">");
        return report;
    }

    /** Answers with a volume made of this library's without and with the pipe credit. */
    private ImplementationUnderTest withVolume(DoubleBinaryOperator ofRigidAndInPipe) {
        return question -> question.has(Input.PIPE) && question.asked() == Asked.REQUIRED_VOLUME
                ? ullage.answer(question)
                        .map(inPipe -> Answer.of(Volume.ofSi(ofRigidAndInPipe.applyAsDouble(
                                ullage.answer(question.with(Input.PIPE, "none"))
                                        .orElseThrow()
                                        .si(),
                                inPipe.si()))))
                : ullage.answer(question);
    }

    private static Question absolute(Question question) {
        Question wrong = question;
        for (Input input : List.of(Input.COLD_PRESSURE, Input.FINAL_PRESSURE, Input.PRECHARGE)) {
            if (question.has(input) && !question.text(input).endsWith(" abs")) {
                wrong = wrong.with(input, question.text(input) + " abs");
            }
        }
        return wrong;
    }

    private static List<ReferenceCase> only(String id) {
        return ReferenceCases.all().stream()
                .filter(each -> each.id().equals(id))
                .toList();
    }
}
