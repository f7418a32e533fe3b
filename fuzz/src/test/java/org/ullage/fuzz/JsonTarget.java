package org.ullage.fuzz;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.ullage.examples.records.RecordCommand;
import org.ullage.fluids.Fluids;
import org.ullage.method.Method;
import org.ullage.quantity.UnitSystem;
import org.ullage.record.ServiceBook;
import org.ullage.record.SizingRecord;

/** Service books and sizing records in JSON, spoilt in their tree or their text, read as the program reads them. */
final class JsonTarget implements Target {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final JsonNode book = MAPPER.valueToTree(Books.full());

    @Override
    public String name() {
        return "json";
    }

    @Override
    public double share() {
        return 0.0005;
    }

    @Override
    public Object ask(Draw draw) throws Exception {
        if (draw.chance(0.02)) {
            return Programs.run(RecordCommand::new, text(book, draw), option(draw));
        }
        try {
            return draw.chance(0.6) ? book(draw) : sizing(draw);
        } catch (JsonProcessingException refused) {
            requireDocumented(refused);
            throw new Refused(refused.getClass().getSimpleName());
        }
    }

    private static String[] option(Draw draw) {
        return draw.of(List.of(
                new String[] {"-"},
                new String[] {"-", "--tag"},
                new String[] {"-", "--trend", "--units", "IP"},
                new String[] {"-", "--check-list"}));
    }

    /** What Jackson wraps must be one of the library's refusals, or its own refusal of a form. */
    private static void requireDocumented(JsonProcessingException refused) {
        Throwable cause = refused.getCause();
        if (cause instanceof RuntimeException && !Oracle.isRefusal(cause)) {
            throw new Fault(
                    "undocumented " + cause + " inside " + refused.getClass().getSimpleName(), cause);
        }
        if (cause != null && Oracle.isRefusal(cause)) {
            Oracle.requireDocumented(cause);
        }
    }

    private static String text(JsonNode tree, Draw draw) {
        String text = (draw.chance(0.7) ? Jsons.changed(tree, draw) : tree).toString();
        return draw.chance(0.1) ? Texts.spoilt(text, draw) : text;
    }

    private Object book(Draw draw) throws JsonProcessingException {
        ServiceBook read = MAPPER.readValue(text(book, draw), ServiceBook.class);
        if (read == null) {
            throw new Refused("null for a record");
        }
        ServiceBook again = MAPPER.readValue(MAPPER.writeValueAsString(read), ServiceBook.class);
        if (!again.equals(read)) {
            throw new Fault("a book that is written and read again is another one: " + read);
        }
        // Its texts echo what was written into it, so only that they can be made is asked here.
        read.text(UnitSystem.SI);
        read.text(UnitSystem.IP);
        return read.vesselsNow().size();
    }

    private static Object sizing(Draw draw) throws JsonProcessingException {
        Method method = Pool.method(draw);
        JsonNode tree = MAPPER.valueToTree(SizingRecord.of(method.size(Pool.job(method, draw))));
        SizingRecord read = MAPPER.readValue(text(tree, draw), SizingRecord.class);
        if (read == null) {
            throw new Refused("null for a record");
        }
        SizingRecord again = MAPPER.readValue(MAPPER.writeValueAsString(read), SizingRecord.class);
        if (!again.equals(read)) {
            throw new Fault("a sizing that is written and read again is another one: " + read);
        }
        return read.job().sizingMethod().size(read.job().job(Fluids::parse)).requiredVolume();
    }
}
