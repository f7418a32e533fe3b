package org.ullage.sharing;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;

/** Threads that begin at the same moment. */
final class Together {

    /** More than the cores of a small machine, so that they are also interrupted at odd moments. */
    static final int THREADS = 12;

    private Together() {}

    /**
     * Lets every thread do its part.
     *
     * @param part what the thread of a number does
     * @return what came of it, by thread
     */
    static <T> List<T> run(IntFunction<T> part) throws InterruptedException, ExecutionException {
        CyclicBarrier start = new CyclicBarrier(THREADS);
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Callable<T>> parts = new ArrayList<>();
            for (int i = 0; i < THREADS; i++) {
                int number = i;
                parts.add(() -> {
                    start.await();
                    return part.apply(number);
                });
            }
            List<T> results = new ArrayList<>();
            for (Future<T> result : threads.invokeAll(parts, 5, TimeUnit.MINUTES)) {
                results.add(result.get());
            }
            return results;
        } finally {
            threads.shutdownNow();
        }
    }
}
