package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ullage.quantity.Volume;

class MistakeSearchTest {

    @ParameterizedTest
    @EnumSource(KnownMistake.class)
    void everyKnownMistakeIsCaughtAndNamed(KnownMistake mistake) {
        ReferenceReport report = ReferenceRun.of(mistake);
        assertThat(report.isClean()).isFalse();
        assertThat(MistakeSearch.in(report)).singleElement().satisfies(suspicion -> {
            assertThat(suspicion.mistake()).isEqualTo(mistake);
            assertThat(report.failures()).containsAll(suspicion.agreeing());
            assertThat(suspicion.shown()).isEqualTo(suspicion.agreeing().size());
        });
        assertThat(TextReport.of(report))
                .contains("Likely mistake: your answers agree with those of an implementation that " + mistake + ": ");
    }

    @Test
    void whoIsRightIsNotSearched() {
        ReferenceReport report = ReferenceRun.of(new UllageImplementation());
        assertThat(MistakeSearch.in(report)).isEmpty();
        assertThat(TextReport.of(report)).contains("\nLikely mistake: None.\n");
    }

    @Test
    void nobodyIsAccusedFalsely() {
        assertThat(MistakeTrial.BLAMELESS)
                .allSatisfy(trial -> assertThat(trial.named())
                        .as(trial.wrong())
                        .allSatisfy(names -> assertThat(names).isEmpty()));
        assertThat(MistakeTrial.SEEDED.values())
                .allSatisfy(trial -> assertThat(trial.unlisted())
                        .as("%s, which the search does not know", trial.wrong())
                        .allSatisfy(names -> assertThat(names).isEmpty()));
    }

    @Test
    void noMistakeIsTakenForAnother() {
        MistakeTrial.SEEDED.forEach((mistake, trial) -> assertThat(trial.named())
                .as(trial.wrong())
                .allSatisfy(names -> assertThat(names).isSubsetOf(List.of(mistake))));
    }

    @Test
    void failuresWithoutAPatternAreLeftUnnamed() {
        ReferenceReport report = ReferenceRun.of(question -> question.asked() == Asked.REQUIRED_VOLUME
                ? Optional.of(Answer.of(Volume.litres(1)))
                : Optional.empty());
        assertThat(report.failures()).isNotEmpty();
        assertThat(TextReport.of(report)).contains("Likely mistake: None of the known mistakes explains the failures.");
    }

    /** All rows of a table made with one factor agree with a mistake as soon as one does. */
    @Test
    void oneFactorProvesNothing() {
        List<ReferenceCase> oneTable = ReferenceCases.all().stream()
                .filter(each -> each.id().startsWith("MI-272B-"))
                .toList();
        ReferenceReport report = ReferenceRun.of(KnownMistake.GAUGE_FOR_ABSOLUTE, oneTable);
        assertThat(report.failures()).hasSameSizeAs(oneTable);
        assertThat(MistakeSearch.in(report)).isEmpty();
    }

    @Test
    void tableOfTheReadmeIsUpToDate() throws IOException {
        String begin = "<!-- mistakes -->";
        String end = "<!-- /mistakes -->";
        String readme = Files.readString(Path.of("README.md"));
        assertThat(readme).as("README.md needs the table between these marks").contains(begin, end);
        assertThat(readme.substring(readme.indexOf(begin) + begin.length(), readme.indexOf(end))
                        .strip())
                .as("table of known mistakes in README.md")
                .isEqualTo(MistakeTrial.table().strip());
    }
}
