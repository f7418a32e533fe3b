package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.ullage.provenance.Source;
import org.ullage.workings.Caution;
import org.w3c.dom.Element;

/** Text from outside stays text, whatever is in it and wherever it stands. */
class HostileTextTest {

    static List<String> texts() {
        return List.of(
                "<script>alert(1)</script>",
                "</title></style></svg></main><img src=x onerror=alert(1)>",
                "\"' onload='alert(1)' \"",
                "]]>",
                "<![CDATA[",
                "<!-- -- ",
                "&#0; &amp; &nbsp;",
                "a\u0000b\u0008c\u001fd\u007fe\u0085f",
                "\ud800 alone \udc00",
                "\ufffe \uffff \ufdd0",
                "wor\u202ed gnol\u202c a\u2066b\u2069\u200f",
                "W".repeat(3000),
                "| a | b |\n| --- | --- |",
                "# heading\r\n- item\u2028> quote",
                "`code` ```\n~~~ **bold** _it_ [a](javascript:x) ![i](y) <b>",
                "1. one\n2) two",
                "http://example.org www.example.org a@example.org",
                "\ud83d\udd25 \u4e2d\u6587 \u05e9\u05dc\u05d5\u05dd Z\u00fcrich",
                "",
                "   ");
    }

    private static Document everywhere(String text) {
        Chart lines = LineChart.titled(text)
                .x(text, text)
                .y(text, text)
                .line(text, List.of(Point.at(1, 2), Point.at(2, 3)))
                .level(text, 2)
                .build();
        Chart bars = BarChart.titled(text)
                .axis(text, text)
                .marks(text)
                .ranges(text)
                .alarms(text)
                .bar(Bar.of(text, 1).noted(text).markedAt(2).within(1, 2).alarming())
                .build();
        return Document.titled("Title " + text)
                .with(
                        Heading.section(text),
                        Heading.subsection(text),
                        Paragraph.of(text),
                        new BulletList(List.of(text)),
                        Table.of(text, Column.words(text), Column.numbers(text)).row(text, text),
                        new CautionList(List.of(new Caution(text, Source.commonPractice("practice " + text)))),
                        new Preformatted(text),
                        lines,
                        bars);
    }

    @ParameterizedTest
    @MethodSource("texts")
    void inHtmlNothingBecomesAnElement(String text) {
        String html = everywhere(text).html();
        assertThat(html).matches("[\\n -~]+").isEqualTo(everywhere(text).html());
        List<String> names = elements(html);
        assertThat(names).isEqualTo(elements(everywhere("harmless").html()));
        assertThat(names).doesNotContain("script", "img", "b");
    }

    /** The names of all elements without those whose number depends on the length of the text. */
    private static List<String> elements(String html) {
        return Drawn.elements(Drawn.parse(html), "*").stream()
                .map(Element::getLocalName)
                .filter(name -> !List.of("text", "line", "p", "rect", "path").contains(name))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("texts")
    void chartsStayWellFormedAndLegible(String text) {
        everywhere(text).charts().forEach(LabelChecks::check);
    }

    @ParameterizedTest
    @MethodSource("texts")
    void plainTextIsAsciiOfHundredColumns(String text) {
        assertThat(everywhere(text).text()).matches("[\\n -~]+").endsWith("\n");
        assertThat(everywhere(text).text().lines()).allMatch(line -> line.length() <= 100);
    }

    @ParameterizedTest
    @MethodSource("texts")
    void inMarkdownEveryBlockKeepsItsShape(String text) {
        List<String> lines = withoutFence(everywhere(text).markdown("c").lines().toList());
        List<String> table = lines.stream().filter(line -> line.startsWith("|")).toList();
        assertThat(table)
                .hasSize(3)
                .allSatisfy(row -> assertThat(row.replaceAll("\\\\.", "")).matches("\\|[^|]*\\|[^|]*\\|"));
        assertThat(lines.stream().filter(line -> line.startsWith("#"))).hasSize(3);
        assertThat(lines.stream().filter(line -> line.startsWith("!["))).hasSize(2);
        assertThat(String.join("\n", lines)).doesNotContain("<script", "<img", "<b>");
    }

    /** Between two equal lines of backticks nothing is markup; there must be no third. */
    private static List<String> withoutFence(List<String> lines) {
        String fence = lines.stream()
                .filter(line -> line.matches("```+"))
                .max(Comparator.comparingInt(String::length))
                .orElseThrow();
        assertThat(lines.stream().filter(fence::equals)).hasSize(2);
        List<String> outside = new ArrayList<>(lines.subList(0, lines.indexOf(fence)));
        outside.addAll(lines.subList(lines.lastIndexOf(fence) + 1, lines.size()));
        return outside;
    }

    @ParameterizedTest
    @CsvSource({
        "a | b, a \\| b",
        "`x`, \\`x\\`",
        "<b>, &lt;b&gt;",
        "# no heading, \\# no heading",
        "- no item, \\- no item",
        "12. no item, 12\\. no item",
        "0.35 bar, 0\\.35 bar",
        "[a](b), \\[a\\](b)",
        "http://example.org, http\\://example.org",
        "www.example.org, www\\.example.org",
        "p_f, p\\_f"
    })
    void markdownIsEscaped(String text, String expected) {
        assertThat(MarkdownText.line(text)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "'a\u0000b', a[U+0000]b",
        "'a\u202eb', a[U+202E]b",
        "'a\ud800b', a[U+D800]b",
        "'a\uffffb', a[U+FFFF]b",
        "'a\r\n\t b', a b",
        "'\ud83d\udd25', '\ud83d\udd25'"
    })
    void whatCannotBeSeenIsShown(String text, String expected) {
        assertThat(VisibleText.line(text)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "Z\u00fcrich, Zurich",
        "80 \u00b0C, 80 deg C",
        "m\u00b3, m3",
        "\u00b1 5 \u00b5m, +/- 5 um",
        "Stra\u00dfe, Strasse",
        "\u4e2d, [U+4E2D]"
    })
    void asciiIsSpelt(String text, String expected) {
        assertThat(AsciiText.line(text)).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"a b/c-1, a%20b/c-1", "x)(<y>, x%29%28%3Cy%3E", "\u00fc, %C3%BC", "javascript:x, javascript%3Ax"})
    void addressesAreEncoded(String path, String expected) {
        assertThat(MarkdownText.address(path)).isEqualTo(expected);
    }
}
