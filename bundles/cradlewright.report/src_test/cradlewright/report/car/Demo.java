package cradlewright.report.car;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import cradlewright.analysis.run.SubjectsKey;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

/** The visits of the demo shop as it lies in the sources, on a fixed day. */
public final class Demo {

    private static final Path FOLDER = Path.of("..", "cradlewright.demo", "shop");

    private static Map<String, VisitSight> sights;

    private Demo() {
    }

    /** Returns what there is to see of each visit, by the name of the car and the visit, without answers. */
    static synchronized Map<String, VisitSight> sights() {
        if (sights == null) {
            sights = read();
        }
        return sights;
    }

    private static Map<String, VisitSight> read() {
        Engine engine = engine();
        Map<String, VisitSight> found = new LinkedHashMap<>();
        for (Subject subject : engine.read(new SubjectsKey(), Progress.NONE)) {
            if (subject.scope() == Scope.VISIT) {
                engine.read(new VisitSightKey(subject.ownerId(), subject.visitId().orElseThrow()), Progress.NONE)
                        .ifPresent(sight -> found.put(subject.label(), sight));
            }
        }
        return found;
    }

    /** Returns what there is to see of one visit, with its answers. */
    static VisitSight answered(String label) {
        Engine engine = engine();
        ShopAnswers answers = new ShopChecks(engine, BuiltInChecks.catalogue()).ask(s -> s.label().equals(label), Progress.NONE);
        Subject subject = answers.subjects().get(0);
        return engine.read(new VisitSightKey(subject.ownerId(), subject.visitId().orElseThrow()), Progress.NONE).orElseThrow()
                .withFindings(answers.about(subject), false);
    }

    /** Returns an engine that holds the shop. */
    public static Engine engine() {
        assumeTrue(Files.isRegularFile(FOLDER.resolve("shop.cwshop")), "the demo shop is not beside this bundle");
        Engine engine = new Engine();
        engine.update(ShopImporter.importShop(ShopFolder.open(FOLDER).files().stream().map(ShopFile::root).flatMap(root -> root.stream())
                .toList(), LocalDate.of(2026, 11, 25), 1));
        return engine;
    }
}
