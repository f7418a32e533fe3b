package org.ullage.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ullage.provenance.Source;
import org.ullage.quantity.MissingInputException;
import org.ullage.quantity.OutOfRangeException;
import org.ullage.workings.Caution;
import org.w3c.dom.Element;

class DocumentTest {

    private static final Chart CHART =
            BarChart.titled("Volumes").axis("volume", "L").bar(Bar.of("one", 3)).build();

    private static final Document PAGE = Document.titled("A page")
            .with(
                    Heading.section("First"),
                    Paragraph.of("Some words."),
                    Heading.subsection("Below"),
                    new BulletList(List.of("one", "two")),
                    Table.of("Numbers", Column.words("what"), Column.numbers("how much"))
                            .row("a", "1 L")
                            .row("longer", "12.5 L"),
                    new CautionList(List.of(new Caution("Mind this.", Source.commonPractice("usual care")))),
                    new Preformatted("x = 1\n  y = 2\n"),
                    CHART);

    @Test
    void asText() {
        assertThat(PAGE.text()).isEqualTo("""
                A page
                ======

                First
                -----

                Some words.

                Below
                .....

                - one
                - two

                what    how much
                ------  --------
                a            1 L
                longer    12.5 L

                - Mind this. [COMMON_PRACTICE] usual care

                x = 1
                  y = 2

                Chart: Volumes
                volume, L: one 3 L.
                """);
    }

    @Test
    void asMarkdown() {
        assertThat(PAGE.markdown()).isEqualTo("""
                # A page

                ## First

                Some words.

                ### Below

                - one
                - two

                | what | how much |
                | --- | ---: |
                | a | 1 L |
                | longer | 12.5 L |

                - **Mind this.** \\[COMMON\\_PRACTICE\\] usual care

                ```
                x = 1
                  y = 2
                ```

                Chart left out here: Volumes

                volume, L: one 3 L.
                """);
    }

    @Test
    void markdownRefersToTheFilesOfItsCharts() {
        assertThat(PAGE.markdown("my charts/p-")).contains("![Volumes](my%20charts/p-1.svg)\n");
        assertThat(PAGE.chartFiles("my charts/p-")).containsOnlyKeys("my charts/p-1.svg");
        assertThat(PAGE.chartFiles("p").get("p1.svg")).isEqualTo(CHART.svg());
    }

    @Test
    void htmlIsAccessible() {
        org.w3c.dom.Document html = Drawn.parse(PAGE.html());
        assertThat(html.getDocumentElement().getAttribute("lang")).isEqualTo("en");
        assertThat(Drawn.elements(html, "meta").stream().map(meta -> meta.getAttribute("name")))
                .contains("viewport");
        assertThat(Drawn.elements(html, "th").stream().map(th -> th.getAttribute("scope")))
                .containsExactly("col", "col", "row", "row");
        assertThat(Drawn.elements(html, "svg")).hasSize(2).allSatisfy(svg -> {
            assertThat(svg.getAttribute("role")).isEqualTo("img");
            assertThat(svg.getAttribute("aria-label")).isEqualTo("Volumes");
        });
        assertThat(headings(html)).containsExactly("h1", "h2", "h3");
        assertThat(Drawn.elements(html, "script")).isEmpty();
        assertThat(PAGE.html()).contains("@media print").doesNotContain("http-equiv=\"refresh\"", "url(");
    }

    private static List<String> headings(org.w3c.dom.Document html) {
        return Drawn.elements(html, "*").stream()
                .map(Element::getLocalName)
                .filter(name -> name.matches("h[1-6]"))
                .toList();
    }

    @Test
    void wideTablesAreNarrowed() {
        Table table = Table.of("Wide", Column.words("name"), Column.words("why"))
                .row("a", "word ".repeat(40))
                .row("b", "x".repeat(300));
        String text = Document.titled("t").with(table).text();
        assertThat(text.lines()).allMatch(line -> line.length() <= 100);
        assertThat(text.chars().filter(c -> c == 'x')).hasSize(300);
    }

    @Test
    void emptyListsAreSaidToBeEmpty() {
        Document page =
                Document.titled("t").with(new CautionList(List.of()), new BulletList(List.of()), new Preformatted(""));
        assertThat(page.text()).contains("None.");
        assertThat(page.markdown()).contains("None.");
        assertThat(Drawn.elements(Drawn.parse(page.html()), "ul")).isEmpty();
    }

    @Test
    void anotherMediumSeesTheBlocksInOrder() {
        List<Block> seen = new ArrayList<>();
        Medium medium = new Medium() {
            @Override
            public void title(String title) {
                assertThat(title).isEqualTo("A page");
            }

            @Override
            public void heading(Heading heading) {
                seen.add(heading);
            }

            @Override
            public void paragraph(Paragraph paragraph) {
                seen.add(paragraph);
            }

            @Override
            public void list(BulletList list) {
                seen.add(list);
            }

            @Override
            public void table(Table table) {
                seen.add(table);
            }

            @Override
            public void cautions(CautionList cautions) {
                seen.add(cautions);
            }

            @Override
            public void preformatted(Preformatted preformatted) {
                seen.add(preformatted);
            }

            @Override
            public void chart(Chart chart) {
                seen.add(chart);
            }
        };
        PAGE.writeTo(medium);
        assertThat(seen).isEqualTo(PAGE.blocks());
    }

    @Test
    void whatMakesNoPageIsRefused() {
        assertThatThrownBy(() -> Document.titled(" ")).isInstanceOf(MissingInputException.class);
        Document page = Document.titled("t");
        Heading low = Heading.subsection("low");
        assertThatThrownBy(() -> page.with(low))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("low");
        assertThatThrownBy(() -> Table.of("t")).isInstanceOf(MissingInputException.class);
        Table table = Table.of("t", Column.words("one"));
        assertThatThrownBy(() -> table.row("a", "b"))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("cells in a row 2");
    }

    @Test
    void survivesAStream() throws Exception {
        assertThat(Copies.of(PAGE)).isEqualTo(PAGE);
    }
}
