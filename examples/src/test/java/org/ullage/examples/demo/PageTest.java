package org.ullage.examples.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.ullage.quantity.Volume;

class PageTest {

    private static String printed(Consumer<Page> writing) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        writing.accept(new Page(out));
        out.flush();
        return text.toString();
    }

    @Test
    void keepsALineThatFits() {
        String full = "x".repeat(49) + " " + "y".repeat(50);

        assertThat(printed(page -> page.line(full))).isEqualTo(full + "\n");
    }

    @Test
    void indentsWhatFollowsABreak() {
        String text = "   " + "x".repeat(60) + " " + "y".repeat(60);

        assertThat(printed(page -> page.line(text)))
                .isEqualTo("   " + "x".repeat(60) + "\n     " + "y".repeat(60) + "\n");
    }

    @Test
    void breaksRunningTextWithoutIndent() {
        String text = "x".repeat(60) + " " + "y".repeat(60);

        assertThat(printed(page -> page.paragraph(text))).isEqualTo("x".repeat(60) + "\n" + "y".repeat(60) + "\n");
    }

    @Test
    void leavesAWordThatCannotBeBroken() {
        String word = "  " + "x".repeat(120);

        assertThat(printed(page -> page.line(word))).isEqualTo(word + "\n");
    }

    @Test
    void putsBothSystemsInColumns() {
        String[] lines = printed(page -> {
                    page.valueHead();
                    page.value("Contents", Volume.litres(1150));
                })
                .split("\n", -1);

        assertThat(lines[1]).startsWith("Contents").contains("1150 L").contains("303.8 gal");
        assertThat(lines[0].indexOf("metric")).isEqualTo(lines[1].indexOf("1150"));
        assertThat(lines[0].indexOf("inch-pound")).isEqualTo(lines[1].indexOf("303.8"));
    }

    @Test
    void padsTheCellsOfARow() {
        assertThat(printed(page -> page.row(List.of("a", "b", "c"), 3, 3))).isEqualTo("a  b  c\n");
    }

    @Test
    void saysSoWhenThereIsNothingToWatch() {
        assertThat(printed(page -> new CautionSection("Warnings", List.of()).print(page)))
                .isEqualTo("\nWarnings\n--------\nNone.\n");
    }
}
