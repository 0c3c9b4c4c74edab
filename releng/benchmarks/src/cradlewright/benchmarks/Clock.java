package cradlewright.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;

/** Elapsed time and processor time of all threads since it was made. */
final class Clock {

    /** Both times, s. */
    record Span(double elapsed, double processor) {
    }

    private static final OperatingSystemMXBean SYSTEM = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

    private final long start = System.nanoTime();
    private final long used = SYSTEM.getProcessCpuTime();

    Span read() {
        return new Span((System.nanoTime() - start) / 1e9, (SYSTEM.getProcessCpuTime() - used) / 1e9);
    }
}
