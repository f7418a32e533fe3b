package org.ullage.examples.flink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.ullage.examples.file.BadFileException;

class PortfolioLoopTest {

    @TempDir
    Path folder;

    @Test
    void onAllCoresTheOrderAndTheBitsAreThoseOfOne() throws Exception {
        Path file = folder.resolve("portfolio.csv");
        PortfolioGenerator.write(file, 200, 7);
        Portfolio portfolio = Portfolio.in(file);
        Path one = folder.resolve("one.csv");
        Path all = folder.resolve("all.csv");
        PortfolioLoop.oneByOne(portfolio, 1000, one);
        PortfolioLoop.onAllCores(portfolio, 1000, all);
        List<String> rows = Files.readAllLines(one);
        assertThat(rows).hasSize(201).first().isEqualTo(PortfolioSizing.COLUMNS);
        assertThat(Files.readAllLines(all)).isEqualTo(rows);
        assertThat(rows.get(200)).startsWith("Quillbrook Yard 200,").endsWith(",1000,");
    }

    /** A line that moves in the file, or into another file, keeps its answer. */
    @Test
    void theAnswerHangsOnTheLineAlone() throws Exception {
        Path file = folder.resolve("portfolio.csv");
        PortfolioGenerator.write(file, 3, 7);
        List<String> lines = Files.readAllLines(file);
        PortfolioSizing sizing = new PortfolioSizing(lines.get(0), 1000);
        String answer = sizing.answer(lines.get(2));
        sizing.answer(lines.get(1));
        assertThat(sizing.answer(lines.get(2))).isEqualTo(answer);
        assertThat(sizing.answer(lines.get(2).replace("Yard 2", "Yard 4"))).isNotEqualTo(answer);
    }

    @Test
    void sameSeedSameFile() throws Exception {
        Path one = folder.resolve("one.csv");
        Path two = folder.resolve("two.csv");
        Path other = folder.resolve("other.csv");
        PortfolioGenerator.write(one, 50, 7);
        PortfolioGenerator.write(two, 50, 7);
        PortfolioGenerator.write(other, 50, 8);
        assertThat(two).hasSameTextualContentAs(one);
        assertThat(Files.readString(other)).isNotEqualTo(Files.readString(one));
    }

    @Test
    void anUnknownColumnIsRefused() throws Exception {
        Path file = Files.writeString(folder.resolve("portfolio.csv"), "id,colour\n");
        assertThatThrownBy(() -> Portfolio.in(file))
                .isInstanceOf(BadFileException.class)
                .hasMessageContaining("[colour]")
                .hasMessageContaining("contents_spread");
    }
}
