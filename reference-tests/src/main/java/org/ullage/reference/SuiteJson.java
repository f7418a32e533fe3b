package org.ullage.reference;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ullage.provenance.Source;

/**
 * Writes the cases as JSON for readers in other languages: each as in its CSV file, beside it the figures in coherent SI; at the end what
 * is needed to convert the inputs. The build runs it, so that {@code org/ullage/reference/suite.json} is in the jar. Needs Jackson, which
 * this module does not bring along.
 */
public final class SuiteJson {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private SuiteJson() {}

    /**
     * Writes the cases that ship with this module.
     *
     * @param arguments the file to write
     * @throws IOException if it cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path file = Path.of(arguments[0]);
        Files.writeString(file, of(ReferenceCases.all()));
    }

    /**
     * Cases as JSON.
     *
     * @param cases such as {@link ReferenceCases#all()}
     * @return JSON by {@code suite.schema.json}
     */
    public static String of(List<ReferenceCase> cases) {
        ObjectNode suite = MAPPER.createObjectNode();
        suite.put("version", ReferenceSuite.version());
        cases.forEach(each -> suite.withArray("cases").add(node(each)));
        ObjectNode units = suite.putObject("units");
        UnitTable.of(cases)
                .forEach((unit, line) ->
                        units.putObject(unit).put("factor", line.factor()).put("offset", line.offset()));
        return suite.toPrettyString() + "\n";
    }

    private static ObjectNode node(ReferenceCase each) {
        ObjectNode node = MAPPER.createObjectNode();
        node.put("id", each.id());
        node.put("file", each.file());
        node.put("question", each.question().asked().words());
        ObjectNode inputs = node.putObject("inputs");
        for (Map.Entry<Input, String> input : each.question().inputs().entrySet()) {
            inputs.put(input.getKey().word(), input.getValue());
        }
        node.put("verdict", each.verdict().word());
        put(node, "stated", each.stated());
        node.put("tolerance_reason", each.toleranceReason());
        put(node, "corrected", each.corrected());
        node.put("explanation", each.explanation());
        Source source = each.source();
        node.putObject("source")
                .put("provenance", source.provenance().name().toLowerCase(Locale.ROOT))
                .put("document", source.document())
                .put("place", source.place())
                .put("reading", source.reading());
        return node;
    }

    private static void put(ObjectNode node, String name, @Nullable Target target) {
        if (target == null) {
            node.putNull(name);
            return;
        }
        node.putObject(name)
                .put("text", target.text())
                .put("tolerance", target.tolerance())
                .put("si", target.si())
                .put("tolerance_si", target.toleranceSi());
    }
}
