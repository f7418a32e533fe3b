package org.ullage.report;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text inside Markdown (CommonMark with tables), so that nothing in it is read as markup: not emphasis, not code, not a cell, not HTML,
 * not a link.
 */
final class MarkdownText {

    private static final String MARKUP = "\\`*_[]|~$@{}#";

    /** What makes a list, a heading, a quotation or a rule at the beginning of a line. */
    private static final Pattern FIRST = Pattern.compile("^(?:[+=-]|\\p{Digit}+(?=[.)]))");

    /** What some readers turn into a link without being asked. */
    private static final Pattern ADDRESS = Pattern.compile("(?i):(?=//)|(?<=www)\\.|(?<=mailto):");

    /** As long as the shortest fence, or longer. */
    private static final Pattern FENCES = Pattern.compile("`{3,}+");

    private static final Pattern PLAIN_IN_ADDRESS = Pattern.compile("[A-Za-z0-9._/-]");

    private MarkdownText() {}

    /** Text within a line, such as a cell. */
    static String cell(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        VisibleText.line(text).codePoints().forEach(codePoint -> {
            switch (codePoint) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                default -> append(escaped, codePoint);
            }
        });
        return ADDRESS.matcher(escaped).replaceAll("\\\\$0");
    }

    /** A line of its own. */
    static String line(String text) {
        String safe = cell(text);
        Matcher first = FIRST.matcher(safe);
        if (!first.find()) {
            return safe;
        }
        // A number cannot be escaped, the mark behind it can.
        return Character.isDigit(safe.charAt(0)) ? first.group() + "\\" + safe.substring(first.end()) : "\\" + safe;
    }

    private static void append(StringBuilder escaped, int codePoint) {
        if (MARKUP.indexOf(codePoint) >= 0) {
            escaped.append('\\');
        }
        escaped.appendCodePoint(codePoint);
    }

    /** The address of a file: what could end it or be read as markup is percent-encoded, as UTF-8. */
    static String address(String path) {
        StringBuilder address = new StringBuilder(path.length());
        for (byte octet : path.getBytes(StandardCharsets.UTF_8)) {
            if (octet > 0 && PLAIN_IN_ADDRESS.matcher(Character.toString(octet)).matches()) {
                address.append((char) octet);
            } else {
                address.append('%').append(HexFormat.of().withUpperCase().toHexDigits(octet));
            }
        }
        return address.toString();
    }

    /** Preformatted lines between fences longer than any run of the same mark inside. */
    static String fenced(String text) {
        String visible = VisibleText.lines(text);
        int longest = FENCES.matcher(visible)
                .results()
                .mapToInt(run -> run.end() - run.start())
                .max()
                .orElse(2);
        String fence = "`".repeat(longest + 1);
        return fence + "\n" + visible + "\n" + fence + "\n";
    }
}
