package org.ullage.fuzz;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/** Puts a number of cases to one target, on several threads, under a watch. */
final class FuzzRun {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private static final int CHUNK = 64;
    private static final long WATCH_MILLIS = 100;

    private final Target target;
    private final long seed;
    private final long cases;
    private final AtomicLong next = new AtomicLong();
    private final List<Worker> workers = new ArrayList<>();
    private final Faults faults = new Faults();

    FuzzRun(Target target, long seed, long cases) {
        this.target = target;
        this.seed = seed;
        this.cases = cases;
    }

    /**
     * Runs all cases.
     *
     * @param threads how many at a time
     * @param hangMillis a case that takes longer is a fault and ends the run
     */
    TargetReport run(int threads, long hangMillis) throws InterruptedException {
        HeapPeak heap = HeapPeak.start();
        long start = System.nanoTime();
        for (int i = 0; i < threads; i++) {
            Worker worker = new Worker();
            workers.add(worker);
            worker.setDaemon(true);
            worker.start();
        }
        for (Worker worker : workers) {
            while (worker.isAlive()) {
                worker.join(WATCH_MILLIS);
                watch(hangMillis);
            }
        }
        return new TargetReport(
                target.name(),
                sum(Worker::asked),
                sum(Worker::answered),
                (System.nanoTime() - start) / 1e9,
                sum(Worker::cpuNanos) / 1e9,
                slowest(),
                heap.mebibytes(),
                faults.texts());
    }

    /** A thread cannot be ended from outside, so a hang ends the whole run. */
    private void watch(long hangMillis) {
        for (Worker worker : workers) {
            long since = worker.since;
            if (worker.isAlive() && since != 0 && System.nanoTime() - since > hangMillis * 1_000_000) {
                Fault hang = new Fault("hang: " + target.name() + ":" + worker.index + " takes more than " + hangMillis
                        + " ms, seed " + seed);
                hang.setStackTrace(worker.getStackTrace());
                throw hang;
            }
        }
    }

    private interface Count {
        long of(Worker worker);
    }

    private long sum(Count count) {
        return workers.stream().mapToLong(count::of).sum();
    }

    private TargetReport.Slowest slowest() {
        Worker slow = workers.get(0);
        for (Worker worker : workers) {
            slow = worker.slowestNanos > slow.slowestNanos ? worker : slow;
        }
        return new TargetReport.Slowest(slow.slowestNanos / 1e6, slow.slowestIndex);
    }

    private final class Worker extends Thread {

        private volatile long since;
        private volatile long index;
        private long asked;
        private long answered;
        private long slowestNanos;
        private long slowestIndex;
        private long cpuNanos;

        private long asked() {
            return asked;
        }

        private long answered() {
            return answered;
        }

        private long cpuNanos() {
            return cpuNanos;
        }

        @Override
        public void run() {
            long first = next.getAndAdd(CHUNK);
            while (first < cases) {
                long end = Math.min(first + CHUNK, cases);
                for (long i = first; i < end; i++) {
                    one(i);
                }
                first = next.getAndAdd(CHUNK);
            }
            since = 0;
            cpuNanos = THREADS.getCurrentThreadCpuTime();
        }

        private void one(long number) {
            long start = System.nanoTime();
            index = number;
            since = start;
            asked++;
            try {
                if (Oracle.judge(target, new Draw(seed, target.name(), number)) == Oracle.Verdict.ANSWERED) {
                    answered++;
                }
            } catch (Fault fault) {
                faults.add(target.name() + ":" + number + " seed " + seed, fault);
            }
            long nanos = System.nanoTime() - start;
            if (nanos > slowestNanos) {
                slowestNanos = nanos;
                slowestIndex = number;
            }
        }
    }
}
