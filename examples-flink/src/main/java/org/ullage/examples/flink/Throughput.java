package org.ullage.examples.flink;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
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
public final class Throughput {

    private static final int CHECKPOINT_MILLIS = 10_000;
    private static final long SEED = 7;
    private static final int WARM_UP = 999;
    private static final double NANOS = 1e9;

    private static final OperatingSystemMXBean PROCESS =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

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
        long startOfWork = PROCESS.getProcessCpuTime();
        way.size(portfolio, answers);
        double seconds = (System.nanoTime() - start) / NANOS;
        double work = (PROCESS.getProcessCpuTime() - startOfWork) / NANOS;
        out.printf(
                Locale.ROOT,
                "| %7d | %-15s | %7.2f | %7.2f | %8.0f | %9.0f |%n",
                lines,
                name,
                seconds,
                work,
                lines / seconds,
                lines / seconds * draws);
    }

    /** Takes the draws for each line, and then the numbers of lines to try. */
    public static void main(String[] arguments) throws Exception {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        List<Integer> numbers = Arrays.stream(arguments).map(Integer::valueOf).toList();
        int draws = numbers.get(0);
        Path folder = Files.createTempDirectory("portfolio");
        try {
            // Once without being looked at: it is for the compiler.
            new Throughput(folder, draws, new PrintStream(OutputStream.nullOutputStream())).measure(WARM_UP);
            out.println("|   lines | way             |       s |   CPU s |  lines/s |   draws/s |");
            out.println("| ------: | --------------- | ------: | ------: | -------: | --------: |");
            for (int lines : numbers.subList(1, numbers.size())) {
                new Throughput(folder, draws, out).measure(lines);
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
