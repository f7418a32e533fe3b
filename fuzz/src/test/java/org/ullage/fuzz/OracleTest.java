package org.ullage.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.uncertainty.Contribution;

/** What must be a fault is one. */
class OracleTest {

    private interface Asked {
        Object ask() throws Exception;
    }

    /** A target that does the same in every case. */
    private record Always(Asked asked) implements Target {

        @Override
        public String name() {
            return "always";
        }

        @Override
        public double share() {
            return 1;
        }

        @Override
        public Object ask(Draw draw) throws Exception {
            return asked.ask();
        }
    }

    private static Oracle.Verdict judge(Asked asked) {
        return Oracle.judge(new Always(asked), new Draw(1, "always", 1));
    }

    private static void assertFault(Asked asked, String words) {
        assertThatThrownBy(() -> judge(asked)).isInstanceOf(Fault.class).hasMessageContaining(words);
    }

    @Test
    void answersAndDocumentedRefusalsPass() {
        assertThat(judge(() -> List.of(1.5, "12 L"))).isEqualTo(Oracle.Verdict.ANSWERED);
        assertThat(judge(() -> {
                    throw new OutOfRangeException("pressure", "NaN Pa", "finite", "check it");
                }))
                .isEqualTo(Oracle.Verdict.REFUSED);
    }

    @Test
    void numbersThatAreNotFiniteAreFaultsHoweverDeep() {
        assertFault(() -> Double.NaN, "answer is NaN");
        assertFault(() -> Map.of("a", List.of(Double.POSITIVE_INFINITY)), "Infinity");
        assertFault(() -> new double[] {1, Double.NEGATIVE_INFINITY}, "Infinity");
        assertFault(() -> new Contribution("a", 1, Double.NaN, 1), "NaN");
        assertFault(() -> "required volume NaN L", "not finite");
    }

    @Test
    void undocumentedExceptionsAndErrorsAreFaults() {
        assertFault(
                () -> {
                    throw new IllegalArgumentException("bad");
                },
                "undocumented java.lang.IllegalArgumentException");
        assertFault(
                () -> {
                    throw new StackOverflowError();
                },
                "undocumented java.lang.StackOverflowError");
    }

    @Test
    void aRefusalThatDoesNotSayWhatItMustIsAFault() {
        assertFault(
                () -> {
                    throw new OutOfRangeException("pressure", "1 bar", "below 1 bar", " ");
                },
                "without its remedy");
        assertFault(
                () -> {
                    throw new OutOfRangeException("pressure", "from null to 1 bar", "below 1 bar", "check it");
                },
                "without its value");
        assertFault(
                () -> {
                    throw new OutOfRangeException("text", "x".repeat(5_000), "short", "cut it");
                },
                "characters");
    }

    @Test
    void aHangEndsTheRun() {
        Target hang = new Always(() -> {
            Thread.sleep(60_000);
            return 1;
        });
        assertThatThrownBy(() -> new FuzzRun(hang, 1, 3).run(1, 300))
                .isInstanceOf(Fault.class)
                .hasMessageContaining("hang: always:0");
    }

    @Test
    void aRunCountsAndNamesFaults() throws InterruptedException {
        TargetReport report = new FuzzRun(new Always(() -> Double.NaN), 7, 100).run(2, 10_000);
        assertThat(report.cases()).isEqualTo(100);
        assertThat(report.answered()).isZero();
        assertThat(report.faults()).singleElement().asString().contains("always:", "seed 7", "NaN");
    }

    @Test
    void theSameSeedTargetAndIndexDrawTheSame() {
        Draw first = new Draw(5, "sizing", 9);
        Draw again = new Draw(5, "sizing", 9);
        assertThat(List.of(first.bits(), first.bits())).isEqualTo(List.of(again.bits(), again.bits()));
        assertThat(new Draw(5, "sizing", 10).bits()).isNotEqualTo(new Draw(5, "sizing", 9).bits());
    }
}
