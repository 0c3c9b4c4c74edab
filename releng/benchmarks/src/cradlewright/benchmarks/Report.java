package cradlewright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/** What is printed and kept in the result file. */
final class Report {

    private final StringBuilder text = new StringBuilder();
    private final Path file;

    Report(Path file) {
        this.file = file;
    }

    void line(String format, Object... values) {
        String line = String.format(Locale.ROOT, format, values);
        System.out.println(line);
        text.append(line).append('\n');
    }

    /** Reports median, least and most, and returns the median. */
    double spread(String what, double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double median = sorted[sorted.length / 2];
        line("%s: median of %d %.4f, from %.4f to %.4f", what, sorted.length, median, sorted[0], sorted[sorted.length - 1]);
        return median;
    }

    /** Appends to the result file. */
    void write() throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, Files.exists(file) ? Files.readString(file) + text : text.toString());
    }
}
