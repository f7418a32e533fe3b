package org.ullage.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.condition.SampleQuantity;
import org.ullage.quantity.AbsolutePressure;
import org.ullage.quantity.UnitSystem;

/** Whatever people type survives, and what is printed stays within its lines. */
class HostileTextTest {

    /** Fields of free text; all others are quantities, days or words of a list. */
    private static final Set<String> FREE = Set.of(
            "installation",
            "place",
            "fluid",
            "serial",
            "type",
            "connection",
            "accuracyClass",
            "identity",
            "method",
            "duration",
            "hardness",
            "treatment",
            "by",
            "witnessedBy",
            "remarks",
            "findings",
            "changes",
            "fluidTreatment",
            "reason",
            "isolation",
            "liftingAid",
            "id",
            "vessel",
            "unheardOf");

    static Stream<String> hostile() {
        return Stream.of(
                "x".repeat(30_000),
                "many words ".repeat(3_000),
                "tab\tline\nreturn\rbell\u0007null\u0000delete\u007fnext\u0085",
                "\u0000",
                "quotes \" ' ` \\ </script> {\"a\": 1} -- ; DROP",
                "emoji \uD83D\uDE00\uD83D\uDC69\u200D\uD83D\uDD27 of all ages \uD83C\uDDE9\uD83C\uDDEA",
                "\u202Eright to left\u202C \u200F\u05D0\u05D1\u05D2 \u0627\u0644\u0645\u0628\u0646\u0649 \u2066x\u2069",
                "separators \u2028 \u2029 \uFEFF \u00A0 end",
                "combining Z\u0351\u036B\u0343\u036A\u0302".repeat(50),
                "\u6691\u623F \u30DC\u30A4\u30E9\u30FC \uD55C\uAD6D\uC5B4 \uFF21\uFF22".repeat(20),
                "Z\u00FCrich \u0141\u00F3d\u017A \u0391\u03B8\u03AE\u03BD\u03B1",
                "%s %n ${jndi:x} #{1+1}",
                "private \uE000 unassigned \uFFFE \uDBFF\uDFFF");
    }

    static ServiceBook bookWith(String text) {
        ObjectNode book = new ObjectMapper().valueToTree(Books.fullBook());
        book.put("unheardOf", text);
        fill(book, text);
        // Vessels keep names of their own.
        ((ObjectNode) book.at("/commissioning/vessels/1")).put("id", "other " + text);
        ((ObjectNode) book.at("/visits/0/replacements/0")).put("vessel", "other " + text);
        ((ObjectNode) book.at("/visits/0/replacements/0/fitted")).put("id", "third " + text);
        return Books.read(book.toString(), ServiceBook.class);
    }

    private static void fill(JsonNode node, String text) {
        if (node instanceof ArrayNode array) {
            array.forEach(part -> fill(part, text));
        } else if (node instanceof ObjectNode object) {
            object.properties().forEach(field -> {
                if (field.getValue().isTextual() && FREE.contains(field.getKey())) {
                    field.setValue(TextNode.valueOf(text));
                } else {
                    fill(field.getValue(), text);
                }
            });
        }
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void survivesJson(String text) throws Exception {
        ServiceBook book = bookWith(text);
        assertThat(book.commissioning().installation()).isEqualTo(text);
        assertThat(book.visits().get(0).findings()).isEqualTo(text);
        assertThat(book.unknownFields()).containsEntry("unheardOf", text);
        assertThat(Books.read(Books.json(book), ServiceBook.class)).isEqualTo(book);
        byte[] bytes = new ObjectMapper().writeValueAsBytes(book);
        assertThat(new ObjectMapper().readValue(bytes, ServiceBook.class)).isEqualTo(book);
        assertThat(Books.serialised(book)).isEqualTo(book);
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void stillFitsTheTag(String text) {
        ServiceBook book = bookWith(text);
        for (VesselNote vessel : book.vesselsNow()) {
            for (UnitSystem system : UnitSystem.values()) {
                String tag = TagNote.of(book, vessel.id()).text(system);
                assertThat(tag.lines().count()).isLessThanOrEqualTo(14);
                assertThat(tag.lines())
                        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(40));
                assertClean(tag);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void printsCleanly(String text) {
        ServiceBook book = bookWith(text);
        assertClean(book.text(UnitSystem.SI));
        assertClean(PreSeasonChecklist.of(book, AbsolutePressure.STANDARD_ATMOSPHERE, null)
                .text());
        String vessel = book.vesselsNow().get(0).id();
        ChargeTrend trend = ChargeTrend.of(book, vessel, AbsolutePressure.STANDARD_ATMOSPHERE);
        assertClean(trend.text(UnitSystem.IP));
        assertClean(trend.workings().text(UnitSystem.SI));
        assertClean(FluidTrend.of(book, SampleQuantity.PH).text());
    }

    private static void assertClean(String printed) {
        assertThat(printed.codePoints()
                        .filter(c -> c != '\n')
                        .filter(HostileTextTest::isUnseen)
                        .toArray())
                .isEmpty();
    }

    private static boolean isUnseen(int codePoint) {
        return Character.isISOControl(codePoint)
                || Character.getType(codePoint) == Character.FORMAT
                || Character.getType(codePoint) == Character.SURROGATE
                || Character.getType(codePoint) == Character.LINE_SEPARATOR
                || Character.getType(codePoint) == Character.PARAGRAPH_SEPARATOR;
    }

    static Stream<String> halves() {
        return Stream.of("high \uD83D alone", "low \uDE00 alone", "\uDE00\uD83D", "end \uD83D");
    }

    /** No file in UTF-8 can hold half of a surrogate pair, so it is replaced when it comes in, not lost when it goes out. */
    @ParameterizedTest
    @MethodSource("halves")
    void halfSurrogatesAreReplacedOnTheWayIn(String text) throws Exception {
        CommissioningNote note = CommissioningNote.of(
                        text, Books.START, "A", VesselNote.of(text).build())
                .build();
        assertThat(note.installation())
                .hasSameSizeAs(text)
                .contains("\uFFFD")
                .matches(kept -> kept.chars().noneMatch(unit -> Character.isSurrogate((char) unit)));
        assertThat(Books.read(Books.json(note), CommissioningNote.class)).isEqualTo(note);
        byte[] bytes = new ObjectMapper().writeValueAsBytes(note);
        assertThat(new ObjectMapper().readValue(bytes, CommissioningNote.class)).isEqualTo(note);
    }
}
