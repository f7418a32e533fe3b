package org.ullage.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The cases carry a version, and their JSON in the jar says what the CSV files say. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ReferenceSuiteTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final JsonNode suite = json("suite.json");

    @Test
    void aChangeOfTheCasesNeedsAnotherVersion() throws IOException, NoSuchAlgorithmException {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        for (String file : ReferenceCases.files()) {
            String lines = Files.readAllLines(Path.of("src/main/resources/org/ullage/reference", file)).stream()
                    .filter(line -> !line.startsWith("#"))
                    .collect(Collectors.joining("\n", file + "\n", "\n"));
            digest.update(lines.getBytes(StandardCharsets.UTF_8));
        }
        String found = HexFormat.of().formatHex(digest.digest());
        assertThat(ReferenceSuite.digest())
                .as(
                        "the cases have changed: raise the version in suite.properties (README, \"Editions\") and put digest=%s",
                        found)
                .isEqualTo(found);
    }

    @Test
    void theVersionIsInTheReadmeAndInTheJson() throws IOException {
        assertThat(ReferenceSuite.version()).matches("\\d+\\.\\d+\\.\\d+");
        assertThat(suite.get("version").asText()).isEqualTo(ReferenceSuite.version());
        assertThat(Files.readString(Path.of("README.md")))
                .contains("| " + ReferenceSuite.version() + " | "
                        + ReferenceCases.all().size() + " |");
    }

    @Test
    void theJsonMeetsItsSchema() {
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(json("suite.schema.json"))
                        .validate(suite))
                .isEmpty();
    }

    @Test
    void theJsonSaysWhatTheFilesSay() throws IOException {
        Iterator<JsonNode> cases = suite.get("cases").elements();
        for (String file : ReferenceCases.files()) {
            for (CSVRecord line : lines(file)) {
                JsonNode node = cases.next();
                assertThat(node.get("file").asText()).isEqualTo(file);
                assertThat(texts(node)).as(line.get("id")).isEqualTo(texts(line));
            }
        }
        assertThat(cases.hasNext()).isFalse();
    }

    private static List<String> texts(CSVRecord line) {
        List<String> texts = new ArrayList<>(List.of(
                line.get("id"),
                line.get("question"),
                line.get("verdict"),
                line.get("stated"),
                line.get("tolerance"),
                line.get("tolerance_reason"),
                line.get("corrected"),
                line.get("corrected_tolerance"),
                line.get("explanation"),
                line.get("provenance"),
                line.get("document"),
                line.get("place"),
                line.get("reading")));
        for (String input : line.get("inputs").split(";", -1)) {
            texts.add(input.strip());
        }
        return texts.stream().sorted().toList();
    }

    private static List<String> texts(JsonNode node) {
        List<String> texts = new ArrayList<>();
        for (String name : List.of("id", "question", "verdict", "tolerance_reason", "explanation")) {
            texts.add(node.get(name).asText());
        }
        for (String name : List.of("stated", "corrected")) {
            texts.add(node.path(name).path("text").asText());
            texts.add(node.path(name).path("tolerance").asText());
        }
        node.get("source").forEach(part -> texts.add(part.asText()));
        node.get("inputs")
                .properties()
                .forEach(input ->
                        texts.add(input.getKey() + "=" + input.getValue().asText()));
        return texts.stream().sorted().toList();
    }

    @Test
    void figuresAndUnitsAreInSi() {
        JsonNode closed = suite.get("cases").get(0);
        assertThat(closed.get("id").asText()).isEqualTo("ASHRAE-HW-CLOSED");
        double gallon = 231 * Math.pow(0.0254, 3);
        assertThat(closed.at("/stated/si").asDouble()).isCloseTo(578 * gallon, within(1e-9));
        assertThat(closed.at("/stated/tolerance_si").asDouble()).isCloseTo(0.5 * gallon, within(1e-9));
        assertThat(siOf(3000, "gal")).isCloseTo(3000 * gallon, within(1e-9));
        assertThat(siOf(212, "degF")).isCloseTo(373.15, within(1e-9));
        assertThat(siOf(1, "bar abs")).isEqualTo(1e5);
        assertThat(siOf(1, "in4")).isCloseTo(Math.pow(0.0254, 4), within(1e-15));
    }

    private double siOf(double number, String unit) {
        JsonNode line = suite.get("units").get(unit);
        return number * line.get("factor").asDouble() + line.get("offset").asDouble();
    }

    private static List<CSVRecord> lines(String file) throws IOException {
        try (Reader text = new InputStreamReader(stream(file), StandardCharsets.UTF_8)) {
            return CSVFormat.RFC4180
                    .builder()
                    .setCommentMarker('#')
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(text)
                    .getRecords();
        }
    }

    private static JsonNode json(String file) {
        try (InputStream stream = stream(file)) {
            return MAPPER.readTree(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream stream(String file) {
        return Objects.requireNonNull(ReferenceSuiteTest.class.getResourceAsStream(file), file);
    }
}
