package org.ullage.examples.flink;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import org.apache.flink.api.common.eventtime.WatermarkStrategy;
import org.apache.flink.api.common.serialization.SimpleStringEncoder;
import org.apache.flink.configuration.Configuration;
import org.apache.flink.configuration.RestartStrategyOptions;
import org.apache.flink.connector.file.sink.FileSink;
import org.apache.flink.connector.file.src.FileSource;
import org.apache.flink.connector.file.src.reader.TextLineInputFormat;
import org.apache.flink.streaming.api.datastream.DataStream;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;

/**
 * The portfolio on Apache Flink: its lines are sized by all tasks and written to a folder of part files, whose rows stand in no order. A task that dies is begun again at its last checkpoint; a part file is shown only when a checkpoint covers it, so no row is
 * lost or stands twice.
 */
final class PortfolioOnFlink {

    private static final int MOST_RESTARTS = 3;

    private final Portfolio portfolio;
    private final int draws;
    private final Path answers;

    /**
     * Describes the job.
     *
     * @param answers the folder of the part files
     */
    PortfolioOnFlink(Portfolio portfolio, int draws, Path answers) {
        this.portfolio = portfolio;
        this.draws = draws;
        this.answers = answers;
    }

    /** Begins tasks again that have died, from checkpoints at an interval. */
    static Configuration recovering() {
        Configuration configuration = new Configuration();
        configuration.set(RestartStrategyOptions.RESTART_STRATEGY, "fixed-delay");
        configuration.set(RestartStrategyOptions.RESTART_STRATEGY_FIXED_DELAY_ATTEMPTS, MOST_RESTARTS);
        configuration.set(RestartStrategyOptions.RESTART_STRATEGY_FIXED_DELAY_DELAY, Duration.ofMillis(100));
        return configuration;
    }

    /** The loops of the portfolio: one task reads the file and deals its lines out to all, because sizing them is what takes time. */
    DataStream<String> loops(StreamExecutionEnvironment environment) {
        FileSource<String> source = FileSource.forRecordStreamFormat(
                        new TextLineInputFormat(StandardCharsets.UTF_8.name()),
                        new org.apache.flink.core.fs.Path(portfolio.file().toUri()))
                .build();
        String header = portfolio.header();
        return environment
                .fromSource(source, WatermarkStrategy.noWatermarks(), "portfolio")
                .filter(line -> !line.isBlank() && !line.equals(header))
                .rebalance();
    }

    /** Sizes the loops and writes the answers. */
    void size(DataStream<String> loops) {
        PortfolioSizing sizing = new PortfolioSizing(portfolio.header(), draws);
        FileSink<String> sink = FileSink.forRowFormat(
                        new org.apache.flink.core.fs.Path(answers.toUri()),
                        new SimpleStringEncoder<String>(StandardCharsets.UTF_8.name()))
                .build();
        loops.map(sizing::answer).name("size").sinkTo(sink);
    }

    /** Runs the job to its end. */
    void run(StreamExecutionEnvironment environment) throws Exception {
        size(loops(environment));
        environment.execute("portfolio");
    }

    /** Sizes a portfolio on the cluster that starts this, or on one of its own: file, draws for each line, folder of the answers. */
    public static void main(String[] arguments) throws Exception {
        StreamExecutionEnvironment environment = StreamExecutionEnvironment.getExecutionEnvironment(recovering());
        environment.enableCheckpointing(Duration.ofSeconds(10).toMillis());
        Portfolio portfolio = Portfolio.in(Path.of(arguments[0]));
        new PortfolioOnFlink(portfolio, Integer.parseInt(arguments[1]), Path.of(arguments[2])).run(environment);
    }
}
