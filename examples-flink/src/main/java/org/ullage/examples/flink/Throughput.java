package org.ullage.examples.flink;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;

/** Measures the ways of sizing a portfolio against each other, each a whole run from file to file. */
final class Throughput {

    private static final int CHECKPOINT_MILLIS = 10_000;
    private static final long SEED = 7;

    private final Path folder;
    private final int draws;
    private final PrintStream out;

    private Throughput(Path folder, int draws, PrintStream out) {
        this.folder = folder;
        this.draws = draws;
        this.out = out;
    }

    /** A way to size a portfolio. */
    @FunctionalInterface
    private interface Way {
        void size(Portfolio portfolio, Path answers) throws Exception;
    }

    private void measure(int lines) throws Exception {
        Path file = folder.resolve("portfolio-" + lines + ".csv");
        PortfolioGenerator.write(file, lines, SEED);
        Portfolio portfolio = Portfolio.in(file);
        row(lines, "plain loop", portfolio, (from, to) -> PortfolioLoop.oneByOne(from, draws, to));
        row(lines, "parallel stream", portfolio, (from, to) -> PortfolioLoop.onAllCores(from, draws, to));
        row(lines, "Flink", portfolio, this::onFlink);
    }

    private void onFlink(Portfolio portfolio, Path answers) throws Exception {
        StreamExecutionEnvironment environment = StreamExecutionEnvironment.createLocalEnvironment(
                Runtime.getRuntime().availableProcessors(), PortfolioOnFlink.recovering());
        environment.enableCheckpointing(CHECKPOINT_MILLIS);
        new PortfolioOnFlink(portfolio, draws, answers).run(environment);
    }

    private void row(int lines, String name, Portfolio portfolio, Way way) throws Exception {
        Path answers = folder.resolve(name.replace(' ', '-') + "-" + lines);
        long start = System.nanoTime();
        way.size(portfolio, answers);
        double seconds = (System.nanoTime() - start) / 1e9;
        out.printf(
                Locale.ROOT,
                "| %7d | %-15s | %8.2f | %8.0f | %12.0f |%n",
                lines,
                name,
                seconds,
                lines / seconds,
                lines / seconds * draws);
    }

    /** Takes the draws for each line, and then the numbers of lines to try. */
    public static void main(String[] arguments) throws Exception {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        List<Integer> numbers = Arrays.stream(arguments).map(Integer::valueOf).toList();
        Path folder = Files.createTempDirectory("portfolio");
        Throughput throughput = new Throughput(folder, numbers.get(0), out);
        try {
            out.println("|   lines | way             |        s |  lines/s |      draws/s |");
            out.println("| ------: | --------------- | -------: | -------: | -----------: |");
            // The first size is run twice: the first time is for the compiler.
            throughput.measure(numbers.get(1));
            out.println("| again, warm | | | | |");
            for (int lines : numbers.subList(1, numbers.size())) {
                throughput.measure(lines);
            }
        } finally {
            delete(folder);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
