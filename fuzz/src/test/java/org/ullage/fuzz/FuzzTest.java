package org.ullage.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The run: short in every build, long on request. README.md of this module has the properties. */
class FuzzTest {

    private static final long SHORT_RUN = 30_000;

    /** Of a target with a small share, so that its share of answers means something. */
    private static final long LEAST_CASES = 300;

    private static final long HANG_MILLIS = 10_000;

    /** A run that is only ever refused would find nothing. */
    private static final double LEAST_ANSWERED = 0.1;

    private static final List<Target> TARGETS = List.of(
            new TextTarget(),
            new FluidTarget(),
            new SizingTarget(),
            new LoopInUseTarget(),
            new ApiTarget(),
            new SheetTarget(),
            new JsonTarget());

    private static long seed() {
        Long given = Long.getLong("ullage.fuzz.seed");
        return given == null ? new SplittableRandom().nextLong() : given;
    }

    @Test
    void everyCaseIsAnsweredWithFiniteNumbersOrRefusedAsDocumented() throws InterruptedException {
        long seed = seed();
        String only = System.getProperty("ullage.fuzz.only");
        if (only != null) {
            System.out.println("fuzz: " + only + ", seed " + seed + ": " + again(only, seed));
            return;
        }
        long cases = Long.getLong("ullage.fuzz.cases", SHORT_RUN);
        int threads =
                Integer.getInteger("ullage.fuzz.threads", Runtime.getRuntime().availableProcessors());
        System.out.println("fuzz: seed " + seed + ", " + cases + " cases, " + threads + " threads");
        System.out.println(TargetReport.HEADER);
        List<TargetReport> reports = new ArrayList<>();
        for (Target target : targets()) {
            long share = Math.max(LEAST_CASES, Math.round(cases * target.share()));
            TargetReport report = new FuzzRun(target, seed, share).run(threads, HANG_MILLIS);
            System.out.println(report.row());
            reports.add(report);
        }
        assertThat(faults(reports)).as("faults").isEmpty();
        for (TargetReport report : reports) {
            assertThat(report.answeredShare())
                    .as(report.target() + ": share answered")
                    .isGreaterThan(LEAST_ANSWERED);
        }
    }

    private static String faults(List<TargetReport> reports) {
        return reports.stream().flatMap(report -> report.faults().stream()).collect(Collectors.joining("\n"));
    }

    /** All, or those that are named. */
    private static List<Target> targets() {
        String named = System.getProperty("ullage.fuzz.targets", "");
        return TARGETS.stream()
                .filter(target -> named.isEmpty() || List.of(named.split(",")).contains(target.name()))
                .toList();
    }

    /** One case by its name, such as {@code sizing:4711}; a fault comes out with its whole trace. */
    private static Oracle.Verdict again(String only, long seed) {
        String name = only.substring(0, only.indexOf(':'));
        long index = Long.parseLong(only.substring(only.indexOf(':') + 1));
        Target target = TARGETS.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no target is called " + name));
        return Oracle.judge(target, new Draw(seed, name, index));
    }
}
