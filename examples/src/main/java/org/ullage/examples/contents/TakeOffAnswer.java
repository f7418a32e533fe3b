package org.ullage.examples.contents;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ullage.loop.Contents;
import org.ullage.loop.ContentsItem;
import org.ullage.loop.TakeOff;

/** What came of each line. */
final class TakeOffAnswer {

    private final List<Row> rows = new ArrayList<>();

    /**
     * A line with what it holds or why it could not be read.
     *
     * @param line the line
     * @param item what it holds, or null
     * @param error why it could not be read, or empty
     */
    record Row(TakeOffLine line, @Nullable ContentsItem item, String error) {}

    TakeOffAnswer(List<TakeOffLine> lines) {
        lines.forEach(line -> rows.add(row(line)));
    }

    private static Row row(TakeOffLine line) {
        try {
            return new Row(line, line.read(), "");
        } catch (IllegalArgumentException e) {
            return new Row(line, null, String.valueOf(e.getMessage()));
        }
    }

    List<Row> rows() {
        return rows;
    }

    /** How many lines could not be read. */
    long refused() {
        return rows.stream().filter(row -> row.item == null).count();
    }

    /** The contents of all lines; nothing if one of them could not be read, or there is none. */
    Optional<Contents> total() {
        if (rows.isEmpty() || refused() > 0) {
            return Optional.empty();
        }
        TakeOff takeOff = TakeOff.start();
        for (Row row : rows) {
            takeOff = row.item == null ? takeOff : takeOff.add(row.item);
        }
        return Optional.of(takeOff.contents());
    }

    /** Why there is no total. */
    String noTotal() {
        return rows.isEmpty()
                ? "there is no line; add the boiler, the emitters and the pipes"
                : refused() + " of " + rows.size()
                        + " lines could not be read, so a total would be too small; correct them";
    }
}
