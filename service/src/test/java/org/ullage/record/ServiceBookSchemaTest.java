package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.introspect.BeanPropertyDefinition;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ullage.condition.Look;
import org.ullage.condition.LoopTrait;
import org.ullage.condition.SampleQuantity;
import org.ullage.condition.Smell;
import org.ullage.loop.ContentsBasis;
import org.ullage.vessel.VesselKind;

/** The published schema says what the records are. */
class ServiceBookSchemaTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    private static final JsonNode SCHEMA = schema();

    private static final List<Class<?>> RECORDS = List.of(
            CommissioningNote.class,
            LoopNote.class,
            VesselNote.class,
            SupportNote.class,
            ChargeNote.class,
            GaugeNote.class,
            FillNote.class,
            SizingNote.class,
            LeakTest.class,
            FillWaterNote.class,
            SampleReading.class,
            VisitRecord.class,
            ArrivalNote.class,
            ChargeCheck.class,
            SampleNote.class,
            ReliefNote.class,
            Replacement.class);

    private static final List<Class<?>> WORDS = List.of(
            Gas.class,
            VesselKind.class,
            ContentsBasis.class,
            LoopTrait.class,
            Look.class,
            Smell.class,
            SampleQuantity.class);

    private static JsonNode schema() {
        try (InputStream file = ServiceBook.class.getResourceAsStream("service-book.schema.json")) {
            return JSON.readTree(file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static JsonNode definition(Class<?> type) {
        String name = type.getSimpleName();
        return SCHEMA.path("$defs").path(name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1));
    }

    @TestFactory
    Stream<DynamicTest> hasThePropertiesOfTheRecordsInTheirOrder() {
        return Stream.concat(
                Stream.of(DynamicTest.dynamicTest("ServiceBook", () -> sameProperties(SCHEMA, ServiceBook.class))),
                RECORDS.stream()
                        .map(type -> DynamicTest.dynamicTest(
                                type.getSimpleName(), () -> sameProperties(definition(type), type))));
    }

    private static void sameProperties(JsonNode described, Class<?> type) {
        List<String> names =
                JSON.getSerializationConfig().introspect(JSON.constructType(type)).findProperties().stream()
                        .map(BeanPropertyDefinition::getName)
                        .filter(name -> !name.equals("unknownFields"))
                        .toList();
        List<String> inSchema = new ArrayList<>();
        described.path("properties").fieldNames().forEachRemaining(inSchema::add);
        assertThat(inSchema).containsExactlyElementsOf(names);
        assertThat(described.path("properties"))
                .allSatisfy(property ->
                        assertThat(property.path("description").asText()).isNotBlank());
    }

    @TestFactory
    Stream<DynamicTest> hasTheWords() {
        return WORDS.stream()
                .map(type -> DynamicTest.dynamicTest(
                        type.getSimpleName(),
                        () -> assertThat(definition(type).path("enum"))
                                .isEqualTo(JSON.valueToTree(type.getEnumConstants()))));
    }

    private static List<String> complaints(String json) {
        JsonSchema schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(SCHEMA);
        try {
            return schema.validate(JSON.readTree(json)).stream()
                    .map(message -> message.getMessage())
                    .toList();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    @Test
    void acceptsWhatIsWritten() {
        assertThat(complaints(Books.json(Books.fullBook()))).isEmpty();
        assertThat(complaints(Books.json(Books.leastBook()))).isEmpty();
        assertThat(complaints(Books.json(Books.fullBook())
                        .replace("\"50.0 L\"", "\"13.2 gal\"")
                        .replace("\"id\"", "\"new\":1,\"id\"")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "ullage-record,ullage-other",
        "'\"version\":1','\"version\":2'",
        "\"50.0 L\",50",
        "\"50.0 L\",\"fifty litres\"",
        "diaphragm,bag",
        "2020-10-01,01.10.2020",
        "'\"waterSideAtZero\":true,',''",
        "'\"installation\":\"Mill House\",',''",
    })
    void refusesWhatIsWrong(String right, String wrong) {
        String json = Books.json(Books.fullBook());
        assertThat(json).contains(right);
        assertThat(complaints(json.replace(right, wrong))).isNotEmpty();
    }
}
