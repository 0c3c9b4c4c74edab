package cradlewright.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Starts the other program on one deck and reads what it printed. */
final class CcxRun {

    /** What came out, with the time of the process alone: elapsed, and its own and the system's processor time, s. */
    record Timed(List<CcxOutput> steps, double elapsed, double processor) {
    }

    private final Path folder;

    CcxRun(Path folder) throws IOException {
        this.folder = Files.createDirectories(folder);
    }

    Timed run(String job, String deck) throws IOException, InterruptedException {
        Files.writeString(folder.resolve(job + ".inp"), deck);
        Files.deleteIfExists(folder.resolve(job + ".dat"));
        Path times = folder.resolve(job + ".times");
        Process process = new ProcessBuilder("bash", "-c", "TIMEFORMAT='%R %U %S'; time ccx " + job + " > " + job + ".log 2>&1")
                .directory(folder.toFile()).redirectError(times.toFile()).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        if (process.waitFor() != 0 || !Files.exists(folder.resolve(job + ".dat"))) {
            throw new IOException("ccx broke off on " + job + ", see " + folder.resolve(job + ".log"));
        }
        String[] t = Files.readString(times).strip().split("\\s+");
        double processor = Double.parseDouble(t[1]) + Double.parseDouble(t[2]);
        return new Timed(CcxOutput.read(Files.readAllLines(folder.resolve(job + ".dat"))), Double.parseDouble(t[0]), processor);
    }
}
