package cradlewright.ui.warnings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import cradlewright.analysis.writeback.WriteBack;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.FileRoot;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.io.ValueRules;
import cradlewright.quantity.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the demo shop's green van is told to do about its short stack is entered, found to hold as promised, and taken back. */
class FixTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final String CHECK = "support.shim-short";

    @TempDir
    private Path directory;

    private ShopFolder folder;
    private ShopStack stack;

    @BeforeEach
    void copyTheShop() throws IOException {
        Path demo = Path.of("..", "cradlewright.demo", "shop");
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = directory.resolve(demo.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        folder = ShopFolder.open(directory);
        stack = new ShopStack(folder, new ShopWriter(folder, Clock.systemUTC()));
    }

    private ShopSnapshot snapshot(long number) {
        List<FileRoot> roots = folder.files().stream().flatMap(file -> file.root().stream()).toList();
        return ShopImporter.importShop(roots, DAY, number);
    }

    private static ShopChecks checks(ShopSnapshot shop) {
        Engine engine = new Engine();
        engine.update(shop);
        return new ShopChecks(engine, BuiltInChecks.catalogue());
    }

    /** Returns the answers about the green van, with what to do tried. */
    private static List<Finding> findings(ShopChecks checks) {
        ShopAnswers answers = checks.ask(subject -> subject.label().startsWith("Marrick Drover van, green, "), Progress.NONE);
        return checks.prove(answers, Progress.NONE).findings();
    }

    private static Finding fixable(List<Finding> findings) {
        return findings.stream().filter(finding -> finding.check().equals(CHECK) && finding.verdict() == Verdict.STOP).findFirst()
                .orElseThrow();
    }

    private Fix fix(ShopSnapshot shop) {
        ShopChecks checks = checks(shop);
        return Fix.of(fixable(findings(checks)), shop, checks, Progress.NONE).get(0);
    }

    @Test
    void isEnteredAsOneChangeAfterWhichTheAnswerIsAsPromisedAndTakenBackByUndo() {
        ShopSnapshot before = snapshot(1);
        Fix fix = fix(before);
        List<ReadProblem> troubles = troubles();
        stack.execute(fix.toChange(folder, before).orElseThrow());
        assertEquals(troubles, troubles());
        assertEquals(1, stack.history().size());
        assertTrue(stack.history().get(0).label().startsWith("what to do: Lay "), stack.history().get(0).label());
        List<Finding> after = findings(checks(snapshot(2)));
        assertEquals(fix.remedy().after(), after.stream().filter(finding -> finding.check().equals(CHECK)).map(Finding::verdict)
                .reduce(Verdict::worse));
        stack.undo();
        assertEquals(before, snapshot(1));
        stack.redo();
        assertEquals(after, findings(checks(snapshot(2))));
    }

    private List<ReadProblem> troubles() {
        return folder.files().stream().flatMap(file -> ValueRules.check(file).stream()).toList();
    }

    @Test
    void isRefusedWhenTheShopIsAnotherOneNow() {
        Fix fix = fix(snapshot(1));
        assertFalse(fix.fits(snapshot(2)));
        assertEquals(Optional.empty(), fix.toChange(folder, snapshot(2)));
    }

    @Test
    void nothingIsLeftWhenTheFilesWouldNotSayWhatWasTried() {
        ShopSnapshot before = snapshot(1);
        Fix good = fix(before);
        CarFacts car = before.all(CarFacts.class).get(0);
        Change other = Change.of(car.with(car.setups().get(0).moved(Vec3.UP)));
        ShopChange change = new Fix(good.remedy(), other, good.writeBack(), 1).toChange(folder, before).orElseThrow();
        assertThrows(NotEntered.class, () -> stack.execute(change));
        assertEquals(before, snapshot(1));
        assertEquals(List.of(), stack.history());
    }

    @Test
    void nothingIsLeftWhenAFileCannotHoldWhatWasTried() {
        ShopSnapshot before = snapshot(1);
        Fix good = fix(before);
        CarFacts car = before.all(CarFacts.class).stream().filter(one -> one.name().contains("green")).findFirst().orElseThrow();
        SetupFacts setup = car.setups().get(0);
        ContactFacts high = setup.contacts().get(0).withGap(new Value(-0.006, 0, Source.MEASURED));
        Change change = Change.of(car.with(setup.with(high)));
        Fix bad = new Fix(good.remedy(), change, WriteBack.of(before, change).orElseThrow(), 1);
        ShopChange entered = bad.toChange(folder, before).orElseThrow();
        assertThrows(NotEntered.class, () -> stack.execute(entered));
        assertEquals(before, snapshot(1));
        assertFalse(bad.canBeEntered(stack, folder, before), "so it is not offered");
    }

    @Test
    void whatIsOfferedWasRehearsedAndNothingOfThatIsLeft() {
        ShopSnapshot before = snapshot(1);
        Fix good = fix(before);
        List<Object> heard = new ArrayList<>();
        stack.addListener(heard::add);
        assertTrue(good.canBeEntered(stack, folder, before));
        assertFalse(good.canBeEntered(stack, folder, snapshot(2)), "another shop than the one for which it was tried");
        assertEquals(before, snapshot(1));
        assertEquals(List.of(), stack.history());
        assertEquals(List.of(), heard);
        stack.execute(good.toChange(folder, before).orElseThrow());
        assertEquals(1, heard.size());
    }
}
