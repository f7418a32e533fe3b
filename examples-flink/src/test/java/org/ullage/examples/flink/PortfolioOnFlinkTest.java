package org.ullage.examples.flink;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.flink.configuration.Configuration;
import org.apache.flink.configuration.RestartStrategyOptions;
import org.apache.flink.streaming.api.environment.LocalStreamEnvironment;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Flink answers what the plain loop answers, to the last bit, whatever happens on the way. */
class PortfolioOnFlinkTest {

    private static final int DRAWS = 1000;
    private static final int CORES = 2;
    private static final int MANY = 4000;

    @TempDir
    Path folder;

    private Portfolio portfolio(int lines) throws Exception {
        Path file = folder.resolve("portfolio.csv");
        PortfolioGenerator.write(file, lines, 7);
        return Portfolio.in(file);
    }

    private List<String> byLoop(Portfolio portfolio) throws Exception {
        Path answers = folder.resolve("answers.csv");
        PortfolioLoop.oneByOne(portfolio, DRAWS, answers);
        return Answers.inFile(answers);
    }

    private PortfolioOnFlink onFlink(Portfolio portfolio) {
        return new PortfolioOnFlink(portfolio, DRAWS, folder.resolve("parts"));
    }

    private static LocalStreamEnvironment environment(Configuration configuration) {
        LocalStreamEnvironment environment = StreamExecutionEnvironment.createLocalEnvironment(CORES, configuration);
        environment.enableCheckpointing(50);
        // One that waits behind the lines already dealt out would come only after the last of them.
        environment.getCheckpointConfig().enableUnalignedCheckpoints();
        return environment;
    }

    @Test
    void sameAnswersToTheLastBit() throws Exception {
        Portfolio portfolio = portfolio(300);
        onFlink(portfolio).run(environment(PortfolioOnFlink.recovering()));
        assertThat(Answers.inFolder(folder.resolve("parts")))
                .hasSize(300)
                .noneMatch(row -> row.contains("\""))
                .isEqualTo(byLoop(portfolio));
    }

    @Test
    void aTaskThatDiesMidwayLosesAndDoublesNothing() throws Exception {
        Portfolio portfolio = portfolio(MANY);
        PortfolioOnFlink job = onFlink(portfolio);
        LocalStreamEnvironment environment = environment(PortfolioOnFlink.recovering());
        job.size(job.loops(environment).map(new FailsOnce(1, 100)));
        environment.execute("portfolio with an accident");
        assertThat(FailsOnce.hasFailed()).isTrue();
        assertThat(Answers.inFolder(folder.resolve("parts"))).isEqualTo(byLoop(portfolio));
    }

    /** The accident is a real one: with nobody to begin again, the job fails. */
    @Test
    void withoutRestartsTheAccidentEndsTheJob() throws Exception {
        PortfolioOnFlink job = onFlink(portfolio(MANY));
        LocalStreamEnvironment environment = environment(neverRestarting());
        job.size(job.loops(environment).map(new FailsOnce(1, 100)));
        assertThatThrownBy(() -> environment.execute("doomed")).hasStackTraceContaining("killed on purpose");
    }

    private static Configuration neverRestarting() {
        Configuration configuration = new Configuration();
        configuration.set(RestartStrategyOptions.RESTART_STRATEGY, "none");
        return configuration;
    }

    @Test
    void aBadLineGetsItsErrorAndTheRestGoesOn() throws Exception {
        Portfolio good = portfolio(20);
        List<String> lines = Files.readAllLines(good.file());
        lines.set(3, lines.get(3).replace("3 bar", "3 bars"));
        lines.set(5, lines.get(5).replace("diaphragm", "barrel"));
        lines.set(7, "\"Quillbrook Yard, no end");
        lines.set(9, lines.get(9).replace(",2 K,", ",900 K,"));
        Files.write(good.file(), lines);
        onFlink(good).run(environment(PortfolioOnFlink.recovering()));
        List<String> rows = Answers.inFolder(folder.resolve("parts"));
        assertThat(rows).hasSize(20).isEqualTo(byLoop(good));
        assertThat(rows.stream().filter(row -> !row.endsWith(",1000,")).toList())
                .hasSize(4)
                .anyMatch(row -> row.contains("relief_setting: "))
                .anyMatch(row -> row.contains("vessel: "))
                .anyMatch(row -> row.contains("a double quote is out of place"))
                .anyMatch(row -> row.contains("cold_spread: "));
    }
}
