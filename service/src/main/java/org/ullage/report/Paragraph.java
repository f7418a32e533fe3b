package org.ullage.report;

/**
 * Running text. Immutable.
 *
 * @param text a few sentences; line breaks in it count as blanks
 */
public record Paragraph(String text) implements Block {

    /**
     * Running text.
     *
     * @param text a few sentences
     * @return the paragraph
     */
    public static Paragraph of(String text) {
        return new Paragraph(text);
    }

    @Override
    public void writeTo(Medium medium) {
        medium.paragraph(this);
    }
}
