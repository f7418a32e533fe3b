package org.ullage.fuzz;

import java.util.List;
import java.util.Locale;

/**
 * What came of one target.
 *
 * @param target its name
 * @param cases how many cases were asked
 * @param answered how many of them were answered; the others were refused as documented, or were faults
 * @param seconds how long all took
 * @param cpuSeconds processor time of all threads, which a busy machine does not stretch
 * @param slowest the slowest case
 * @param heap most heap in use in mebibytes
 * @param faults one text for each place that faults came from
 */
record TargetReport(
        String target,
        long cases,
        long answered,
        double seconds,
        double cpuSeconds,
        Slowest slowest,
        double heap,
        List<String> faults) {

    static final String HEADER = String.format(
            Locale.ROOT,
            "%-8s %9s %9s %8s %8s %8s %22s %9s %7s",
            "target",
            "cases",
            "answered",
            "seconds",
            "cpu s",
            "cases/s",
            "slowest case",
            "heap MiB",
            "faults");

    /**
     * The slowest case.
     *
     * @param millis how long it took
     * @param index its number
     */
    record Slowest(double millis, long index) {}

    double answeredShare() {
        return (double) answered / cases;
    }

    String row() {
        return String.format(
                Locale.ROOT,
                "%-8s %9d %7.1f %% %8.1f %8.1f %8.0f %22s %9.0f %7d",
                target,
                cases,
                100 * answeredShare(),
                seconds,
                cpuSeconds,
                cases / seconds,
                String.format(Locale.ROOT, "%.1f ms (%d)", slowest.millis, slowest.index),
                heap,
                faults.size());
    }
}
