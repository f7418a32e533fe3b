package example.quillbrook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.reference.KnownMistake;
import org.ullage.reference.MistakeSearch;
import org.ullage.reference.Question;
import org.ullage.reference.ReferenceReport;
import org.ullage.reference.ReferenceRun;
import org.ullage.reference.ReferenceSuite;
import org.ullage.reference.Suspicion;

class ReferenceSuiteTest {

    @Test
    void ourRuleMeetsTheCasesThatItAnswers() {
        ReferenceReport report = ReferenceRun.of(new OurAnswers(Question::absolutePressure));
        System.out.println("Reference suite " + ReferenceSuite.version());
        report.byQuestion().forEach((asked, tally) -> {
            if (tally.passed() + tally.failed() > 0) {
                System.out.println(asked.words() + ": " + tally);
            }
        });
        System.out.println("all questions: " + report.total());
        report.failures().forEach(failure -> System.out.println(failure.id() + " " + failure.remark()));
        assertTrue(report.isClean());
    }

    /** The slip that everybody makes once: the suite finds it, and says what it is. */
    @Test
    void gaugePressuresInTheGasLawAreFoundAndNamed() {
        ReferenceReport report = ReferenceRun.of(new OurAnswers(Question::gaugePressure));
        List<Suspicion> suspicions = MistakeSearch.in(report);
        suspicions.forEach(System.out::println);
        assertEquals(
                List.of(KnownMistake.GAUGE_FOR_ABSOLUTE),
                suspicions.stream().map(Suspicion::mistake).toList());
    }
}
