package cradlewright.ui.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.model.base.FileRoot;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.vehicle.Car;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Unit;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Records taken root by root are those of a whole import, whatever was edited, undone and redone before. */
class SnapshotsTest {

    private static final Clock DAY = Clock.fixed(Instant.parse("2026-04-01T09:00:00Z"), ZoneOffset.UTC);
    private static final int EDITS = 60;

    private ShopFolder folder;
    private ShopStack stack;
    private Snapshots snapshots;
    private ShopSnapshot latest;

    @BeforeEach
    void open() {
        folder = ShopFolder.open(Path.of("../cradlewright.demo/shop"));
        stack = new ShopStack(folder, new ShopWriter(folder, DAY));
        snapshots = new Snapshots(folder, DAY);
        latest = snapshots.after(folder.files()).snapshot();
        stack.addListener(event -> latest = snapshots.after(event.files()).snapshot());
    }

    private ShopSnapshot whole() {
        List<FileRoot> roots = folder.files().stream().flatMap(file -> file.root().stream()).toList();
        return ShopImporter.importShop(roots, LocalDate.now(DAY), latest.number());
    }

    @Test
    void theFirstRecordsAreThoseOfTheWholeShop() {
        assertEquals(whole(), latest);
    }

    @Test
    void randomEditsUndosAndRedosLeaveRecordsEqualToThoseOfAWholeImport() {
        Random random = new Random(7);
        for (int i = 0; i < EDITS; i++) {
            switch (random.nextInt(4)) {
                case 0 -> undoIfPossible();
                case 1 -> redoIfPossible();
                default -> edit(random);
            }
            assertEquals(whole(), latest, "after edit " + i);
        }
    }

    private void undoIfPossible() {
        if (stack.canUndo()) {
            stack.undo();
        }
    }

    private void redoIfPossible() {
        if (stack.canRedo()) {
            stack.redo();
        }
    }

    private static Stream<EObject> contents(EObject root) {
        Iterable<EObject> all = root::eAllContents;
        return StreamSupport.stream(all.spliterator(), false);
    }

    /** Moves a member of some list, in whatever file: order is a fact in every list. */
    private void edit(Random random) {
        List<ShopFile> files = folder.files();
        ShopFile file = files.get(random.nextInt(files.size()));
        List<EList<?>> lists = file.root().stream().flatMap(root -> Stream.concat(Stream.of((EObject) root), contents(root)))
                .flatMap(object -> object.eClass().getEAllContainments().stream().filter(list -> list.isMany())
                        .<EList<?>>map(list -> (EList<?>) object.eGet(list)))
                .filter(list -> list.size() > 1).toList();
        if (!lists.isEmpty()) {
            EList<?> list = lists.get(random.nextInt(lists.size()));
            stack.execute(new ShopChange("move", file, () -> list.move(list.size() - 1, 0)));
        }
    }

    @Test
    void onlyTheTouchedRootIsReadAgain() {
        Car car = folder.cars().get(0);
        ShopSnapshot before = latest;
        stack.execute(new ShopChange("call it", folder.fileOf(car).orElseThrow(), () -> car.setName("other")));
        assertEquals("other", latest.find(CarFacts.class, car.getId()).orElseThrow().name());
        assertNotEquals(before.number(), latest.number());
        String dolly = folder.dollies().get(0).getId();
        assertSame(before.find(DollyFacts.class, dolly).orElseThrow(), latest.find(DollyFacts.class, dolly).orElseThrow());
    }

    @Test
    void aSettingOutOfRangeHoldsAnswersBackAndLeavesCommonPractice() {
        assertEquals("", snapshots.after(Set.of()).hindrance());
        ShopFile file = folder.fileOf(folder.shop().orElseThrow()).orElseThrow();
        stack.execute(new ShopChange("margin", file, () -> folder.shop().orElseThrow().getSettings().setTightMargin(
                Measured.of(2, Unit.ONE))));
        Snapshots.Taken taken = snapshots.after(Set.of());
        assertNotEquals("", taken.hindrance());
        assertEquals(SettingsFacts.commonPractice(), taken.snapshot().settings());
        assertEquals(folder.shop().orElseThrow().getName(), taken.snapshot().name());
    }
}
