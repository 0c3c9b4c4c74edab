package cradlewright.model.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.BasePackage;
import cradlewright.model.base.FileRoot;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.SaveOutcome;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.VehicleFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a change may do, what is left when it may not, and which files want saving. */
class ShopStackTest {

    @TempDir
    Path directory;

    private final IdSource ids = new IdSource(new Random(7));
    private ShopFolder shop;
    private ShopStack stack;
    private ShopFile first;
    private ShopFile second;
    private Piece shell;
    private Piece other;

    @BeforeEach
    void build() {
        shop = EditShop.build(directory, 3, 2, 3);
        stack = new ShopStack(shop, new ShopWriter(shop, Clock.systemUTC()));
        first = EditShop.file(shop, "cars/car 0.cwcar");
        second = EditShop.file(shop, "cars/car 1.cwcar");
        shell = shop.cars().get(0).getPieces().get(0);
        other = shop.cars().get(1).getPieces().get(0);
    }

    private ShopChange rename(String name) {
        return new ShopChange("name " + name, first, () -> shell.setName(name));
    }

    private ShopChange renameOther(String name) {
        return new ShopChange("name " + name, second, () -> other.setName(name));
    }

    private String refused(ShopChange change) {
        String before = EditShop.text(shop);
        int entries = stack.history().size();
        String why = assertThrows(ChangeRefused.class, () -> stack.execute(change)).getMessage();
        assertEquals(before, EditShop.text(shop));
        assertEquals(entries, stack.history().size());
        assertTrue(why.startsWith("\"" + change.label() + "\" was not done: "), why);
        return why;
    }

    private void save(ShopFile file) throws IOException {
        assertEquals(SaveOutcome.Kind.SAVED, stack.save(file).kind());
    }

    private void saveAll() throws IOException {
        for (ShopFile file : shop.files()) {
            save(file);
        }
    }

    @Test
    void changesAreTakenBackAndDoneAgainInTheirOrder() {
        assertFalse(stack.canUndo() || stack.canRedo());
        stack.execute(rename("a"));
        stack.execute(rename("b"));
        assertEquals("name b", stack.nextUndo().orElseThrow().label());
        assertEquals(Set.of(first), stack.nextUndo().orElseThrow().files());
        stack.undo();
        assertEquals("a", shell.getName());
        stack.undo();
        assertEquals("shell", shell.getName());
        assertEquals("name a", stack.nextRedo().orElseThrow().label());
        assertThrows(IllegalStateException.class, stack::undo);
        stack.redo();
        stack.redo();
        assertEquals("b", shell.getName());
        assertThrows(IllegalStateException.class, stack::redo);
        stack.undo();
        stack.execute(rename("c"));
        assertFalse(stack.canRedo());
        assertEquals(List.of("name a", "name c"), stack.history().stream().map(HistoryEntry::label).toList());
        assertEquals(2, stack.cursor());
    }

    @Test
    void whatComesBackIsTheSameObject() {
        Part part = shell.getParts().get(1);
        stack.execute(new Removal(shop, List.of(part)).change("take part off the list"));
        assertFalse(shop.find(part.getId()).isPresent());
        stack.undo();
        assertSame(part, shell.getParts().get(1));
        assertSame(part, shop.find(part.getId()).orElseThrow());
        assertTrue(shop.cars().get(0).getStages().get(0).getOn().contains(part));
    }

    @Test
    void aChainIsOneEntry() {
        stack.execute(ShopChange.chain("both", List.of(rename("x"), renameOther(shell.getName() + " again"), rename("y"))));
        assertEquals(1, stack.history().size());
        assertEquals(Set.of(first, second), stack.nextUndo().orElseThrow().files());
        stack.undo();
        assertEquals(List.of("shell", "shell"), List.of(shell.getName(), other.getName()));
    }

    @Test
    void aChangeThatChangesNothingLeavesNoTrace() throws IOException {
        saveAll();
        stack.execute(rename("shell"));
        assertFalse(stack.canUndo() || stack.isDirty(first));
    }

    @Test
    void aThrowLeavesNothing() {
        String before = EditShop.text(shop);
        Throwable thrown = assertThrows(StackOverflowError.class, () -> stack.execute(new ShopChange("falls", first, () -> {
            shell.setName("half");
            shell.getParts().move(0, 2);
            throw new StackOverflowError("on purpose");
        })));
        assertEquals("on purpose", thrown.getMessage());
        assertEquals(before, EditShop.text(shop));
        assertFalse(stack.canUndo());
        stack.execute(rename("afterwards"));
        assertEquals("afterwards", shell.getName());
    }

    @Test
    void anotherFileThanNamedIsRefused() {
        String why = refused(new ShopChange("two at once", first, () -> {
            shell.setName("x");
            other.setName("y");
        }));
        assertTrue(why.contains("piece \"y\" in cars/car 1.cwcar, which it did not name"), why);
    }

    /** What came from elsewhere and was then changed is where a recorder on the named file alone would not look. */
    @Test
    void whatIsFetchedFromAnotherFileGoesBackAsItWas() {
        Part wanted = other.getParts().get(1);
        refused(new ShopChange("fetch", first, () -> {
            shop.cars().get(1).getStages().get(0).getOn().remove(wanted);
            shell.getParts().add(0, wanted);
            wanted.setName("renamed");
            wanted.setMass(null);
        }));
        assertSame(other, wanted.eContainer());
    }

    @Test
    void aFileThatMayNotBeWrittenIsRefused() throws IOException {
        saveAll();
        Path car = directory.resolve("cars/car 0.cwcar");
        Files.writeString(car, Files.readString(car).replaceFirst("schema=\"\\d+\"", "schema=\"999\""));
        shop = ShopFolder.open(directory);
        stack = new ShopStack(shop, new ShopWriter(shop, Clock.systemUTC()));
        first = EditShop.file(shop, "cars/car 0.cwcar");
        assertTrue(refused(new ShopChange("late", first, () -> shop.cars().get(0).setName("x"))).contains("newer version"));
        assertTrue(refused(new ShopChange("strange", second, () -> other.setName("x"))).contains("not a file of this shop"));
    }

    @Test
    void idsAreGivenOnceAndToOneObjectOnly() {
        assertTrue(refused(new ShopChange("new id", first, () -> shell.setId("another"))).contains("changed the id of piece"));
        assertTrue(refused(new ShopChange("plain copy", first, () ->
                shell.getParts().add(EcoreUtil.copy(shell.getParts().get(0))))).contains("copies get ids of their own"));
        assertTrue(refused(new ShopChange("nameless", first, () ->
                shell.getParts().add(VehicleFactory.eINSTANCE.createPart()))).contains("without an id"));
        stack.execute(new ShopChange("new part", first, () ->
                shell.getParts().add(EditShop.giveName(VehicleFactory.eINSTANCE.createPart(), ids, "trim"))));
        assertEquals(4, shell.getParts().size());
    }

    @Test
    void noReferenceIsLeftThatLeadsNowhere() {
        Car car = shop.cars().get(0);
        String why = refused(new ShopChange("drop a mount", first, () -> car.getMounts().remove(1)));
        assertTrue(why.contains("contact \"mount of fixture 1\" refers to mount \"mount of fixture 1\""), why);
        Mount loose = EditShop.giveName(VehicleFactory.eINSTANCE.createMount(), ids, "loose");
        assertTrue(refused(new ShopChange("loose end", first, () ->
                car.getSetups().get(0).getContacts().get(0).setMount(loose))).contains("mount \"loose\""));
        stack.execute(new ShopChange("both", first, () -> {
            car.getSetups().get(0).getContacts().get(0).setMount(loose);
            car.getMounts().add(loose);
        }));
    }

    @Test
    void removalNamesTheUsersAndReachesTheirFiles() {
        String before = EditShop.text(shop);
        Removal removal = new Removal(shop, List.of(shop.dollies().get(0).getFixtures().get(2)));
        assertEquals(List.of(shop.cars().get(0).getSetups().get(0).getContacts().get(2)), removal.users());
        ShopChange change = removal.change("take the fixture off");
        assertEquals(Set.of(first, EditShop.file(shop, "dollies/dolly 0.cwdolly")), change.files());
        stack.execute(change);
        assertEquals(3, shop.dollies().get(0).getFixtures().size());
        stack.undo();
        assertEquals(before, EditShop.text(shop));
    }

    @Test
    void theTopOfAFileStays() {
        FileRoot top = first.root().orElseThrow();
        assertTrue(refused(new ShopChange("empty", first, () -> top.eResource().getContents().clear())).contains("top of a file"));
        assertSame(top, first.root().orElseThrow());
    }

    @Test
    void filesComeThroughTheStackOnly() {
        Car car = EditShop.giveName(VehicleFactory.eINSTANCE.createCar(), ids, "late");
        assertThrows(IllegalStateException.class, () -> stack.execute(new ShopChange("smuggle", first, () ->
                shop.add(FileKind.CAR, "late", car))));
        assertThrows(IllegalStateException.class, () -> shop.add(FileKind.CAR, "late", car));
        assertEquals(2, shop.cars().size());
        ShopFile file = stack.add(FileKind.CAR, "late", car);
        assertTrue(stack.isDirty(file));
        stack.execute(new ShopChange("name it", file, () -> car.setName("later")));
        stack.undo();
        assertEquals("late", car.getName());
        assertTrue(stack.isDirty(file), "it was never saved");
    }

    @Test
    void aFileIsDirtyWhenAnEntryBetweenSavingAndNowTouchesIt() throws IOException {
        saveAll();
        assertEquals(List.of(), stack.dirtyFiles());
        stack.execute(rename("a"));
        stack.execute(renameOther("b"));
        assertEquals(List.of(first, second), stack.dirtyFiles());
        save(first);
        assertEquals(List.of(second), stack.dirtyFiles());
        stack.undo();
        assertEquals(List.of(), stack.dirtyFiles());
        stack.undo();
        assertEquals(List.of(first), stack.dirtyFiles(), "undone behind its saving");
        stack.redo();
        assertEquals(List.of(), stack.dirtyFiles());
        stack.undo();
        stack.execute(renameOther("c"));
        assertEquals(List.of(first, second), stack.dirtyFiles(), "what was saved can no longer be reached");
        stack.undo();
        assertEquals(List.of(first), stack.dirtyFiles());
        save(first);
        assertEquals(List.of(), stack.dirtyFiles());
    }

    @Test
    void whatIsOnDiskIsWhatWasSaved() throws IOException {
        saveAll();
        stack.execute(rename("seen on disk"));
        save(first);
        stack.undo();
        assertEquals("seen on disk", ShopFolder.open(directory).cars().get(0).getPieces().get(0).getName());
        save(first);
        assertEquals("shell", ShopFolder.open(directory).cars().get(0).getPieces().get(0).getName());
    }

    @Test
    void aFileThatSomebodyElseChangedStaysDirty() throws IOException {
        saveAll();
        Files.writeString(directory.resolve(first.path()), "theirs");
        stack.execute(rename("mine"));
        assertEquals(SaveOutcome.Kind.KEPT_AS_MINE, stack.save(first).kind());
        assertEquals(List.of(first), stack.dirtyFiles());
    }

    @Test
    void stateNumbersTellWhetherContentsAreTheSame() {
        long before = stack.state(first);
        stack.execute(rename("a"));
        long after = stack.state(first);
        assertNotEquals(before, after);
        stack.undo();
        assertEquals(before, stack.state(first));
        stack.execute(rename("b"));
        assertNotEquals(after, stack.state(first));
        assertEquals(0, stack.state(second));
    }

    @Test
    void listenersHearEveryStepAndSeeItsResult() throws IOException {
        List<String> heard = new ArrayList<>();
        ShopListener listener = event -> heard.add(event.kind() + " " + event.label() + " "
                + event.files().stream().map(ShopFile::path).toList() + " " + shell.getName() + " " + event.kind().changesObjects());
        stack.addListener(listener);
        stack.addListener(listener);
        stack.execute(rename("a"));
        stack.undo();
        stack.redo();
        stack.save(first);
        refused(new ShopChange("not heard", first, () -> other.setName("x")));
        stack.removeListener(listener);
        stack.undo();
        assertEquals(List.of("DONE name a [cars/car 0.cwcar] a true", "UNDONE name a [cars/car 0.cwcar] shell true",
                "REDONE name a [cars/car 0.cwcar] a true", "SAVED cars/car 0.cwcar [cars/car 0.cwcar] a false"), heard);
    }

    @Test
    void aListenerCannotChangeTheShopNorStopTheOthers() {
        Thread thread = Thread.currentThread();
        Thread.UncaughtExceptionHandler usual = thread.getUncaughtExceptionHandler();
        List<Throwable> faults = new ArrayList<>();
        List<String> heard = new ArrayList<>();
        stack.addListener(event -> stack.execute(rename("from a listener")));
        stack.addListener(event -> heard.add(event.label()));
        thread.setUncaughtExceptionHandler((where, fault) -> faults.add(fault));
        try {
            stack.execute(rename("a"));
        } finally {
            thread.setUncaughtExceptionHandler(usual);
        }
        assertEquals(1, faults.size());
        assertEquals(List.of("name a"), heard);
        assertEquals("a", shell.getName());
    }

    @Test
    void changesDoNotNest() {
        String before = EditShop.text(shop);
        assertThrows(IllegalStateException.class, () -> stack.execute(new ShopChange("outer", first, () -> {
            shell.setName("outer");
            stack.execute(rename("inner"));
        })));
        assertThrows(IllegalStateException.class, () -> stack.execute(new ShopChange("outer", first, () -> {
            shell.setName("outer");
            stack.undo();
        })));
        assertEquals(before, EditShop.text(shop));
    }

    @Test
    void aChangeOutsideTheStackIsCaughtWhereItHappens() throws IOException {
        saveAll();
        stack.execute(rename("a"));
        stack.execute(renameOther("b"));
        save(first);
        assertThrows(IllegalStateException.class, () -> shell.setName("behind its back"));
        assertFalse(stack.canUndo(), "the history does not fit any more");
        assertEquals(List.of(first, second), stack.dirtyFiles());
    }

    @Test
    void whatTheHistoryHoldsCannotBeChangedEither() {
        Part part = shell.getParts().get(0);
        stack.execute(new Removal(shop, List.of(part)).change("take off"));
        assertThrows(IllegalStateException.class, () -> part.setName("meanwhile"));
    }

    @Test
    void otherThreadsAreRefused() throws InterruptedException {
        List<Runnable> attempts = List.of(() -> stack.execute(rename("x")), stack::undo, stack::redo, stack::canUndo,
                stack::history, () -> stack.state(first), () -> stack.isDirty(first), () -> shell.setNote("x"));
        for (Runnable attempt : attempts) {
            AtomicReference<Throwable> thrown = new AtomicReference<>();
            Thread stranger = new Thread(attempt, "stranger");
            stranger.setUncaughtExceptionHandler((where, fault) -> thrown.set(fault));
            stranger.start();
            stranger.join();
            assertTrue(thrown.get() instanceof IllegalStateException && thrown.get().getMessage().contains("stranger"),
                    () -> "was " + thrown.get());
        }
    }

    @Test
    void aChangeNeedsALabelAndAFile() {
        assertThrows(IllegalArgumentException.class, () -> new ShopChange(" ", first, () -> { }));
        assertThrows(IllegalArgumentException.class, () -> new ShopChange("x", Set.of(), () -> { }));
    }

    /** Features that EMF keeps alike, derives, or knows to be unset could not be taken back one by one as values. */
    @Test
    void noFeatureOfTheModelIsOfAKindThatCannotBeRecorded() {
        int seen = 0;
        for (Object registered : shop.resourceSet().getPackageRegistry().values()) {
            for (var classifier : ((EPackage) registered).getEClassifiers()) {
                if (classifier instanceof EClass type) {
                    for (EStructuralFeature feature : type.getEStructuralFeatures()) {
                        seen++;
                        assertFalse(feature instanceof EReference reference && reference.getEOpposite() != null
                                || feature.isUnsettable() || feature.isDerived() || feature.isTransient() || feature.isVolatile(),
                                feature::toString);
                    }
                }
            }
        }
        assertTrue(seen > 300, "only " + seen);
        assertTrue(BasePackage.Literals.IDENTIFIED__ID.isID());
    }
}
