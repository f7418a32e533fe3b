package org.ullage.report;

/** Text inside XML and HTML, as ASCII so that no wrong encoding can spoil it. */
final class Xml {

    private Xml() {}

    /** One line of text or the value of an attribute. */
    static String line(String text) {
        return escaped(VisibleText.line(text));
    }

    /** Text that is visible already. */
    static String escaped(String visible) {
        StringBuilder escaped = new StringBuilder(visible.length());
        visible.codePoints().forEach(codePoint -> {
            switch (codePoint) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> append(escaped, codePoint);
            }
        });
        return escaped.toString();
    }

    private static void append(StringBuilder escaped, int codePoint) {
        if (codePoint <= '~') {
            escaped.appendCodePoint(codePoint);
        } else {
            escaped.append("&#").append(codePoint).append(';');
        }
    }
}
