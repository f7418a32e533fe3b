package org.ullage.examples.flink;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.stream.Stream;
import org.ullage.examples.file.BadFileException;

/** The portfolio on one machine, in a few lines of plain Java: first to last, or on all cores. */
final class PortfolioLoop {

    private PortfolioLoop() {}

    /** Sizes line by line and keeps their order. */
    static void oneByOne(Portfolio portfolio, int draws, Path answers) throws IOException {
        try (Stream<String> lines = Files.lines(portfolio.file())) {
            write(lines, portfolio, draws, answers);
        }
    }

    /** The same on all cores, still in order. */
    static void onAllCores(Portfolio portfolio, int draws, Path answers) throws IOException {
        try (Stream<String> lines = Files.readAllLines(portfolio.file()).parallelStream()) {
            write(lines, portfolio, draws, answers);
        }
    }

    private static void write(Stream<String> lines, Portfolio portfolio, int draws, Path answers) throws IOException {
        PortfolioSizing sizing = new PortfolioSizing(portfolio.header(), draws);
        try (BufferedWriter out = Files.newBufferedWriter(answers)) {
            out.write(PortfolioSizing.COLUMNS + "\n");
            Stream<String> rows = lines.filter(portfolio::isLoop).map(sizing::answer);
            // A parallel stream hands out an iterator one by one; its list is filled on all cores.
            Iterator<String> inOrder = rows.isParallel() ? rows.toList().iterator() : rows.iterator();
            while (inOrder.hasNext()) {
                out.write(inOrder.next() + "\n");
            }
        }
    }

    /** Sizes a portfolio: file, draws for each line, file of the answers. */
    public static void main(String[] arguments) throws IOException, BadFileException {
        Portfolio portfolio = Portfolio.in(Path.of(arguments[0]));
        onAllCores(portfolio, Integer.parseInt(arguments[1]), Path.of(arguments[2]));
    }
}
