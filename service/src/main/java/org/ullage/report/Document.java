package org.ullage.report;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;

/**
 * A page: a title and blocks below it. Immutable; it can be written as plain text, Markdown and HTML.
 *
 * @param title what the page is about
 * @param blocks what stands on it, from top to bottom
 */
public record Document(String title, List<Block> blocks) implements Serializable {

    /**
     * Copies the blocks and checks the title and the order of headings.
     *
     * @param title what the page is about
     * @param blocks what stands on it
     * @throws MissingInputException if the title is blank
     * @throws OutOfRangeException if a subsection comes before every section
     */
    public Document {
        blocks = List.copyOf(blocks);
        if (title.isBlank()) {
            throw new MissingInputException("title", "a document", "say what the page is about");
        }
        blocks.stream()
                .filter(Heading.class::isInstance)
                .map(Heading.class::cast)
                .findFirst()
                .filter(Heading::isSubsection)
                .ifPresent(first -> {
                    throw new OutOfRangeException(
                            "subsection", VisibleText.line(first.text()), "below a section", "begin a section first");
                });
    }

    /**
     * An empty page.
     *
     * @param title what the page is about
     * @return the document
     * @throws MissingInputException if the title is blank
     */
    public static Document titled(String title) {
        return new Document(title, List.of());
    }

    /**
     * The page with more at its end.
     *
     * @param more what to add
     * @return the document
     * @throws OutOfRangeException if a subsection comes before every section
     */
    public Document with(Block... more) {
        return with(List.of(more));
    }

    /**
     * The page with more at its end.
     *
     * @param more what to add
     * @return the document
     * @throws OutOfRangeException if a subsection comes before every section
     */
    public Document with(List<? extends Block> more) {
        List<Block> all = new ArrayList<>(blocks);
        all.addAll(more);
        return new Document(title, all);
    }

    /**
     * Writes the page to a medium, title first.
     *
     * @param medium what writes
     */
    public void writeTo(Medium medium) {
        medium.title(title);
        blocks.forEach(block -> block.writeTo(medium));
    }

    /**
     * The page as plain ASCII text of at most 100 columns; a chart is told in words.
     *
     * @return lines, each ended by a line feed
     */
    public String text() {
        TextMedium medium = new TextMedium();
        writeTo(medium);
        return medium.text();
    }

    /**
     * The page as Markdown (CommonMark with tables) without its charts: a line says that one was left out, and what it shows.
     *
     * @return lines, each ended by a line feed
     */
    public String markdown() {
        MarkdownMedium medium = MarkdownMedium.withoutCharts();
        writeTo(medium);
        return medium.text();
    }

    /**
     * The page as Markdown that refers to its charts as files.
     *
     * @param chartFiles beginning of the path of every chart, such as {@code charts/loop-}; write the files of {@link #chartFiles}
     *     beside it
     * @return lines, each ended by a line feed
     */
    public String markdown(String chartFiles) {
        MarkdownMedium medium = MarkdownMedium.withCharts(chartFiles);
        writeTo(medium);
        return medium.text();
    }

    /**
     * The page as one HTML file that needs no other: style and charts inside, no script. It is XHTML too, in ASCII, and made for a
     * desk, a telephone and paper.
     *
     * @return the file, ended by a line feed
     */
    public String html() {
        HtmlMedium medium = new HtmlMedium();
        writeTo(medium);
        return medium.page();
    }

    /**
     * The charts of the page in their order.
     *
     * @return the charts
     */
    public List<Chart> charts() {
        return blocks.stream()
                .filter(Chart.class::isInstance)
                .map(Chart.class::cast)
                .toList();
    }

    /**
     * The charts as the files that {@link #markdown(String)} refers to.
     *
     * @param chartFiles beginning of the path of every chart
     * @return SVG text by path, in the order of the page
     */
    public Map<String, String> chartFiles(String chartFiles) {
        Map<String, String> files = new LinkedHashMap<>();
        charts().forEach(chart -> files.put(MarkdownMedium.file(chartFiles, files.size() + 1), chart.svg()));
        return Collections.unmodifiableMap(files);
    }
}
