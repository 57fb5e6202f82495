package bedwright.plan;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;

/** How much of the heap is used, and was at most since it was last asked to forget. */
final class HeapUse {
    private static final int MEGABYTE = 20;

    private final List<MemoryPoolMXBean> pools = ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .toList();

    /** Forgets what was used before, after a collection. */
    void forget() {
        Runtime.getRuntime().gc();
        pools.forEach(MemoryPoolMXBean::resetPeakUsage);
    }

    SearchRow.Heap now() {
        long used = pools.stream().mapToLong(pool -> pool.getUsage().getUsed()).sum();
        long peak =
                pools.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
        return new SearchRow.Heap(
                used >> MEGABYTE, peak >> MEGABYTE, Runtime.getRuntime().maxMemory() >> MEGABYTE);
    }
}
