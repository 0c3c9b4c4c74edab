package cradlewright.benchmarks;

import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.quantity.Position;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;

/** Times one edit through the stack, beside the same edit under the recorder that EMF ships; see the README beside. */
public final class EditBenchmark {

    private static final int OBJECTS = 500;
    private static final int FILES = 40;
    private static final int WARM = 3000;
    private static final int ROUNDS = 2001;

    private final IdSource ids = new IdSource(new Random(20261125));
    private final ShopFolder shop;
    private final Report report;

    private EditBenchmark(Path directory, Report report) {
        this.shop = new ShopFolder(directory);
        this.report = report;
    }

    /** Runs; argument: folder for results. */
    public static void main(String[] args) throws IOException {
        Path out = Path.of(args[0]);
        Report report = new Report(out.resolve("result.txt"));
        new EditBenchmark(out, report).run();
        report.write();
    }

    private void run() {
        for (int i = 0; i < FILES; i++) {
            shop.add(FileKind.CAR, "car " + i, car());
        }
        ShopFile file = shop.files().get(0);
        Part part = shop.cars().get(0).getPieces().get(0).getParts().get(OBJECTS / 2);
        report.line("Shop of %d files, %d objects each; one position set; microseconds: median, 95 of 100 within", FILES, OBJECTS);
        time("bare setter", () -> move(part));
        time("recorder of EMF on the file", () -> {
            ChangeRecorder recorder = new ChangeRecorder(List.of(file.root().orElseThrow().eResource()));
            move(part);
            recorder.endRecording();
            recorder.dispose();
        });
        long start = System.nanoTime();
        ShopStack stack = new ShopStack(shop, new ShopWriter(shop, Clock.systemUTC()));
        report.line("  putting the whole shop under watch, once: %.1f ms", (System.nanoTime() - start) / 1e6);
        ShopChange change = new ShopChange("move", file, () -> move(part));
        time("change through the stack", () -> stack.execute(change));
        time("change and undo", () -> {
            stack.execute(change);
            stack.undo();
        });
        time("undo and redo", () -> {
            stack.undo();
            stack.redo();
        });
    }

    private static void move(Part part) {
        Position at = part.getPosition();
        part.setPosition(new Position(at.x() + 1, at.y(), at.z(), at.uncertainty(), at.source()));
    }

    private void time(String what, Runnable edit) {
        for (int i = 0; i < WARM; i++) {
            edit.run();
        }
        double[] times = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            long start = System.nanoTime();
            edit.run();
            times[i] = (System.nanoTime() - start) / 1e3;
        }
        Arrays.sort(times);
        report.line("  %s: %.1f, %.1f", what, times[ROUNDS / 2], times[ROUNDS * 95 / 100]);
    }

    private Car car() {
        Car car = ids.give(VehicleFactory.eINSTANCE.createCar());
        Piece shell = ids.give(VehicleFactory.eINSTANCE.createPiece());
        car.getPieces().add(shell);
        for (int i = 2; i < OBJECTS; i++) {
            Part part = ids.give(VehicleFactory.eINSTANCE.createPart());
            part.setPosition(Position.parse(i + " 0 0 mm"));
            shell.getParts().add(part);
        }
        return car;
    }
}
