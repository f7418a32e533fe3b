package org.ullage.report;

/**
 * A way to write a document, one call for each block in the order of the page. Plain text, Markdown and HTML are ready in
 * {@link Document}; implement this for another. What it is given may hold any text: a medium escapes it.
 */
public interface Medium {

    /**
     * The title of the page; it comes first.
     *
     * @param title what the page is about
     */
    void title(String title);

    /**
     * A heading.
     *
     * @param heading its text and level
     */
    void heading(Heading heading);

    /**
     * A paragraph.
     *
     * @param paragraph its text
     */
    void paragraph(Paragraph paragraph);

    /**
     * A list.
     *
     * @param list its items
     */
    void list(BulletList list);

    /**
     * A table.
     *
     * @param table its columns and rows
     */
    void table(Table table);

    /**
     * Cautions.
     *
     * @param cautions the cautions with their sources
     */
    void cautions(CautionList cautions);

    /**
     * Lines that stay as they are.
     *
     * @param preformatted the lines
     */
    void preformatted(Preformatted preformatted);

    /**
     * A chart.
     *
     * @param chart the chart
     */
    void chart(Chart chart);
}
