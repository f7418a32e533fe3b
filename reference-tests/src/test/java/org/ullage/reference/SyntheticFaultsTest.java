package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.ullage.diagnosis.Diagnosis;
import org.ullage.diagnosis.Evidence;
import org.ullage.diagnosis.RankedHypothesis;
import org.ullage.quantity.GaugePressure;
import org.ullage.quantity.TemperatureDifference;

/**
 * Synthetic systems with known faults are diagnosed: what must hold of false alarms and of losses that are found, and that the published
 * table is the one that comes out.
 */
class SyntheticFaultsTest {

    private static final FaultTrial WIDE = PublishedTrials.ALL.get(0);
    private static final FaultTrial WIDE_WITH_CHARGE = PublishedTrials.ALL.get(1);
    private static final FaultTrial NARROW = PublishedTrials.ALL.get(2);

    private static final Predicate<Diagnosis> FAILED =
            diagnosis -> diagnosis.likeliest().hypothesis().isFailedVessel();

    @Test
    void aHealthyVesselIsHardlyEverCalledFailed() {
        assertThat(PublishedTrials.ALL)
                .allSatisfy(trial -> assertThat(trial.share(SeededFault.HEALTHY, FAILED.and(Diagnosis::decided)))
                        .isLessThan(0.02));
    }

    @Test
    void aHalfLossIsFound() {
        assertThat(WIDE.share(SeededFault.HALF_LOST, FAILED)).isGreaterThan(0.95);
        assertThat(WIDE.share(SeededFault.WATERLOGGED, FAILED)).isGreaterThan(0.95);
        assertThat(WIDE.share(SeededFault.HALF_LOST, SeededFault.HALF_LOST::isNamedBy))
                .as("decided that the charge is wrong")
                .isGreaterThan(0.95);
    }

    /** Too little water and too much gas look like a loss of gas in two readings: the measured charge tells them apart. */
    @Test
    void theMeasuredChargeSettlesIt() {
        for (SeededFault fault : List.of(
                SeededFault.HEALTHY,
                SeededFault.HALF_LOST,
                SeededFault.WATERLOGGED,
                SeededFault.OVER_CHARGED,
                SeededFault.SHORT_OF_WATER)) {
            assertThat(WIDE_WITH_CHARGE.share(fault, fault::isNamedBy))
                    .as("%s", fault)
                    .isGreaterThan(0.95);
        }
        assertThat(WIDE.share(SeededFault.OVER_CHARGED, Diagnosis::isNamed)).isLessThan(0.05);
    }

    @Test
    void tenKelvinsDecideNothingAboutTheGas() {
        for (SeededFault fault : SeededFault.values()) {
            if (fault != SeededFault.UNDERSIZED) {
                assertThat(NARROW.share(fault, Diagnosis::decided))
                        .as("%s", fault)
                        .isLessThan(0.02);
            }
        }
        // A vessel that is far too small swings widely enough, and that it is too small is arithmetic.
        assertThat(NARROW.share(SeededFault.UNDERSIZED, FAILED.and(Diagnosis::decided)))
                .isLessThan(0.02);
    }

    @Test
    void theSameArgumentsGiveTheSameTrial() {
        assertThat(rankings()).isEqualTo(rankings());
    }

    private static List<List<RankedHypothesis>> rankings() {
        return FaultTrial.of(3, TemperatureDifference.kelvins(40), true).diagnoses().values().stream()
                .flatMap(List::stream)
                .map(Diagnosis::ranking)
                .toList();
    }

    @Test
    void theSameSystemSwingsFurtherWithLessGasAndWithMoreWarming() {
        for (int seed = 0; seed < 50; seed++) {
            Evidence sound = new SyntheticSystem(SeededFault.HEALTHY, new Random(seed)).read(40);
            Evidence lost = new SyntheticSystem(SeededFault.HALF_LOST, new Random(seed)).read(40);
            Evidence little = new SyntheticSystem(SeededFault.HEALTHY, new Random(seed)).read(10);
            assertThat(lost.cold()).isEqualTo(sound.cold());
            assertThat(hot(lost)).isGreaterThan(hot(sound));
            assertThat(hot(little)).isLessThan(hot(sound));
        }
    }

    private static GaugePressure hot(Evidence evidence) {
        return evidence.hot().reading().pressure();
    }

    @Test
    void theReportHoldsAMatrixOfEachTrial() {
        ReferenceReport report = ReferenceRun.of(question -> Optional.empty());
        String markdown = MarkdownReport.of(report, PublishedTrials.ALL);
        String page = HtmlReport.of(report, PublishedTrials.ALL);
        assertThat(PublishedTrials.ALL).allSatisfy(trial -> {
            assertThat(markdown).contains("## Synthetic faults, " + trial.title());
            assertThat(page).contains("Synthetic faults, " + trial.title());
        });
        assertThat(markdown).contains("| half of the gas lost | ");
    }

    @Test
    void tableOfTheReadmeIsUpToDate() throws IOException {
        String begin = "<!-- faults -->";
        String end = "<!-- /faults -->";
        String readme = Files.readString(Path.of("README.md"));
        assertThat(readme).as("README.md needs the table between these marks").contains(begin, end);
        assertThat(readme.substring(readme.indexOf(begin) + begin.length(), readme.indexOf(end))
                        .strip())
                .as("table of synthetic faults in README.md")
                .isEqualTo(MarkdownReport.trialTable(PublishedTrials.ALL).strip());
    }
}
