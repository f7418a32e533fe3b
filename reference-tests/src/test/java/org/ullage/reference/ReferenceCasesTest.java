package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ReferenceCasesTest {

    private static final Path FOLDER = Path.of("src/main/resources/org/ullage/reference");

    private static final String HEADER = "id,question,inputs,stated,tolerance,tolerance_reason,verdict,corrected,"
            + "corrected_tolerance,explanation,provenance,document,place,reading\n";

    private static final String GOOD =
            "A,required volume,water=2 gal,5.44 gal,0.005 gal,half a digit,agrees,,,,published,Law,table 1,\n";

    @Test
    void idsAreUnique() {
        assertThat(ReferenceCases.all()).extracting(ReferenceCase::id).doesNotHaveDuplicates();
    }

    @Test
    void everyFileIsListed() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".csv")))
                    .containsExactlyInAnyOrderElementsOf(ReferenceCases.files());
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyFileSaysWhatItIs(String file) throws IOException {
        assertThat(Files.readString(FOLDER.resolve(file)).lines().filter(line -> line.startsWith("#")))
                .anyMatch(line -> line.startsWith("# What: "))
                .anyMatch(line -> line.startsWith("# Source: "))
                .anyMatch(line -> line.startsWith("# Obtained: "))
                .anyMatch(line -> line.startsWith("# Columns: "));
    }

    static List<String> files() {
        return ReferenceCases.files();
    }

    @Test
    void readsCasesOfOnesOwn() {
        List<ReferenceCase> cases = ReferenceCases.read("own.csv", new StringReader("# What: mine\n" + HEADER + GOOD));
        assertThat(cases).singleElement().satisfies(own -> {
            assertThat(own.question()).hasToString("required volume: water=2 gal");
            assertThat(own.file()).isEqualTo("own.csv");
            assertThat(own.source()).hasToString("[PUBLISHED] Law, table 1");
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "agrees|perhaps|verdict \"perhaps\" must be agrees, differs or refused",
                "required volume|weight|question \"weight\" must be one of required volume",
                "water=2 gal|watr=2 gal|input \"watr\" must be one of method",
                "water=2 gal|water|input \"water\" must be written name=value",
                "water=2 gal|water=2 gal; water=3 gal|comes twice",
                "5.44 gal|5.44 psi|the unit \"psi\" is not known here",
                "0.005 gal|0 gal|must be above zero",
                "half a digit||the tolerance needs its reason",
                "agrees|differs|a corrected figure belongs to a case that differs",
                "agrees|refused|a stated figure is needed unless it is to be refused",
                "published|rumour|No enum constant",
                "Law|\"\"|a source must name its document",
                ",published|,extra,published|not as many as the header",
            })
    void aBadLineIsNamed(String good, String bad, String why) {
        String line = GOOD.replaceFirst(Pattern.quote(good), bad == null ? "" : bad);
        assertThatThrownBy(() -> ReferenceCases.read("own.csv", new StringReader(HEADER + GOOD + line)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("own.csv, line 3: ")
                .hasMessageContaining(why);
    }

    @Test
    void aCorrectionInsideTheToleranceIsNoMisprint() {
        String line = GOOD.replace("agrees,,,", "differs,5.444 gal,0.001 gal,because");
        assertThatThrownBy(() -> ReferenceCases.read("own.csv", new StringReader(HEADER + line)))
                .hasMessageContaining("must lie outside the tolerance");
    }
}
