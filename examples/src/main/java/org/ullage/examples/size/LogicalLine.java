package org.ullage.examples.size;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * One record of the file, which may span several lines of text inside quotes.
 *
 * @param number of its first line of text, from 1
 * @param text as it stands in the file
 * @param sound whether its quotes are in order
 */
record LogicalLine(int number, String text, boolean sound) {

    /** What the decoder puts in place of bytes that are not UTF-8. */
    private static final char UNREADABLE = '\uFFFD';

    private static final Pattern COMMA = Pattern.compile(",");

    boolean isBlank() {
        return text.isBlank();
    }

    /**
     * The cells.
     *
     * @throws BadLineException if the line is not CSV in UTF-8
     */
    List<String> cells() {
        if (text.indexOf(UNREADABLE) >= 0) {
            throw refusal("some bytes are not UTF-8", "save the file as UTF-8");
        }
        List<CSVRecord> records = sound ? records() : List.of();
        if (records.size() != 1) {
            throw misquoted();
        }
        return records.get(0).toList();
    }

    /** The cells as far as they can be guessed in a line that is out of order: for its id. */
    List<String> roughCells() {
        return COMMA.splitAsStream(text.stripTrailing()).toList();
    }

    private List<CSVRecord> records() {
        try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
            return parser.getRecords();
        } catch (IOException | UncheckedIOException e) {
            throw misquoted();
        }
    }

    private BadLineException misquoted() {
        return refusal(
                "a double quote is out of place: a quoted cell is not closed within " + LogicalLines.MOST_LINES
                        + " lines, or text follows its closing quote",
                "put the whole cell in double quotes and write a double quote inside it twice");
    }

    /** A refusal of the line as a whole, which names its number because its id may not be readable. */
    BadLineException refusal(String problem, String remedy) {
        return new BadLineException("line " + number + ": " + problem + "; " + remedy);
    }
}
