package org.ullage.examples.size;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import org.ullage.examples.records.Json;
import org.ullage.method.Sizing;
import org.ullage.record.SizingRecord;

/** The answers as one JSON array: for each line its id and either the sizing, job and answer, or the error. */
final class JsonAnswers implements Answers {

    private final PrintWriter out;
    private boolean empty = true;

    JsonAnswers(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void answer(LoopCase loop, Sizing sizing) throws IOException {
        String fluid = loop.line().text(Column.FLUID);
        add(loop.line().id(), "sizing", fluid == null ? SizingRecord.of(sizing) : SizingRecord.of(sizing, fluid));
    }

    @Override
    public void refuse(String id, String method, String error) throws IOException {
        add(id, "error", error);
    }

    @Override
    public void end() throws IOException {
        out.print(empty ? "[]\n" : "]\n");
        requireReader();
    }

    private void add(String id, String name, Object value) throws IOException {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("id", id);
        entry.put(name, value);
        out.print((empty ? "[" : ",") + Json.write(entry));
        empty = false;
        requireReader();
    }

    private void requireReader() throws IOException {
        if (out.checkError()) {
            throw new IOException("the answers could not be written to standard output");
        }
    }
}
