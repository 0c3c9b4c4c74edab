package cradlewright.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;

/** Elapsed time, and processor time of all threads and of the one that asks, since it was made. */
final class Clock {

    /**
     * The three times, s.
     *
     * @param elapsed by the clock on the wall
     * @param processor of all threads, those that compile and collect garbage included
     * @param own of the thread that asks alone
     */
    record Span(double elapsed, double processor, double own) {

        /** What is told of a span, in this order. */
        static final List<String> KINDS = List.of("elapsed", "processor, all threads", "processor, checking thread");

        /** Returns the time of a kind. */
        double of(String kind) {
            return new double[] {elapsed, processor, own}[KINDS.indexOf(kind)];
        }
    }

    private static final OperatingSystemMXBean SYSTEM = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final long start = System.nanoTime();
    private final long used = SYSTEM.getProcessCpuTime();
    private final long usedHere = THREADS.getCurrentThreadCpuTime();

    Span read() {
        return new Span((System.nanoTime() - start) / 1e9, (SYSTEM.getProcessCpuTime() - used) / 1e9,
                (THREADS.getCurrentThreadCpuTime() - usedHere) / 1e9);
    }
}
