package org.ullage.fuzz;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;

/** The most heap that was in use since the start, garbage not yet collected included. */
final class HeapPeak {

    private static final double MEBIBYTE = 1 << 20;

    private final List<MemoryPoolMXBean> pools = ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .toList();

    private HeapPeak() {}

    static HeapPeak start() {
        HeapPeak heap = new HeapPeak();
        heap.pools.forEach(MemoryPoolMXBean::resetPeakUsage);
        return heap;
    }

    /** The pools have their peaks at different moments, so this is an upper limit. */
    double mebibytes() {
        return pools.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() / MEBIBYTE;
    }
}
