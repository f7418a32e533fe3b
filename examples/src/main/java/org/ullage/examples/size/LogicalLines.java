package org.ullage.examples.size;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Splits a stream into records, one at a time. It stands before the CSV parser because a parser that meets a quote out of place
 * loses its way in the rest of the file, where here a bad line must stay one bad line.
 */
final class LogicalLines {

    /** A cell may span this many lines of text. A quote that is never closed then spoils its own line only. */
    static final int MOST_LINES = 100;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final BufferedReader in;
    private final Deque<TextLine> ahead = new ArrayDeque<>();
    private int read;

    /** A line of text with the line break that ends it. */
    private record TextLine(int number, String text) {}

    LogicalLines(InputStream in) {
        this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    /** The next record, or null at the end. */
    @Nullable
    LogicalLine next() throws IOException {
        List<TextLine> lines = new ArrayList<>();
        QuoteScan scan = new QuoteScan();
        do {
            TextLine line = nextText();
            if (line == null) {
                break;
            }
            lines.add(line);
            scan.read(line.text);
        } while (scan.open() && lines.size() < MOST_LINES);
        if (lines.isEmpty()) {
            return null;
        }
        return scan.sound() ? joined(lines) : firstOnly(lines);
    }

    private static LogicalLine joined(List<TextLine> lines) {
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(line.text));
        return new LogicalLine(lines.get(0).number, text.toString(), true);
    }

    /** A quote out of place has drawn in lines that are none of its business: they go back. */
    private LogicalLine firstOnly(List<TextLine> lines) {
        for (int i = lines.size() - 1; i > 0; i--) {
            ahead.addFirst(lines.get(i));
        }
        return new LogicalLine(lines.get(0).number, lines.get(0).text, false);
    }

    private @Nullable TextLine nextText() throws IOException {
        if (!ahead.isEmpty()) {
            return ahead.removeFirst();
        }
        String text = readText();
        if (text.isEmpty()) {
            return null;
        }
        read++;
        return new TextLine(read, read == 1 && text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
    }

    private String readText() throws IOException {
        StringBuilder text = new StringBuilder();
        int next = in.read();
        while (next >= 0) {
            text.append((char) next);
            if (next == '\n' || (next == '\r' && !lineFeedFollows())) {
                break;
            }
            next = in.read();
        }
        return text.toString();
    }

    private boolean lineFeedFollows() throws IOException {
        in.mark(1);
        boolean follows = in.read() == '\n';
        in.reset();
        return follows;
    }
}
