package cradlewright.ui.wizards;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.Shop;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.ValueRules;
import cradlewright.model.stock.Stock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Dollies that the wizard makes: files without faults, and what the checks say to them before they are made. */
class DollyPlanTest {

    @TempDir
    Path folder;

    private static DollyPlan own(double gauge, int rows, double castorLoad) {
        return new DollyPlan(true, 2800, 960, 480, 80, gauge, rows, 160, 200, castorLoad, Optional.empty(), Optional.of(6000.0),
                Optional.empty());
    }

    private static DollyPlan bought(double plate) {
        return new DollyPlan(false, 2800, 1300, 480, 0, 0, 4, 160, 200, 300, Optional.of(plate), Optional.empty(), Optional.of(90.0));
    }

    private static ShopAnswers answers(DollyPlan plan, double mass) {
        CheckCatalogue catalogue = BuiltInChecks.catalogue();
        Shop shop = BaseFactory.eINSTANCE.createShop();
        shop.setId("0shop");
        shop.setName("shed");
        Engine engine = new Engine();
        engine.update(ShopImporter.importShop(List.of(shop), LocalDate.of(2026, 4, 1), 1));
        TrialLoad load = new TrialLoad(plan, mass);
        return new ShopChecks(engine, catalogue).foresee(load.change(), load::isMeant, Progress.NONE);
    }

    private static List<Finding> of(ShopAnswers answers, String check) {
        return answers.findings().stream().filter(finding -> finding.check().equals(check)).toList();
    }

    private ShopFolder made(DollyPlan plan) throws IOException {
        ShopFolder shop = new ShopFolder(folder);
        ShopStack stack = new ShopStack(shop, new ShopWriter(shop, Clock.systemUTC()));
        IdSource ids = IdSource.secure();
        Dolly dolly = ids.give(FixtureFactory.eINSTANCE.createDolly());
        dolly.setName("Dolly 7");
        Shop root = ids.give(BaseFactory.eINSTANCE.createShop());
        root.setName("shed");
        stack.save(stack.add(FileKind.SHOP, "", root));
        ShopFile stock = NewFile.stock(stack);
        NewFile.make(stack, FileKind.DOLLY, "7", dolly, "New Dolly", List.of(stock),
                () -> plan.fill(dolly, (Stock) stock.root().orElseThrow(), ids));
        return ShopFolder.open(folder);
    }

    private static Finding only(ShopAnswers answers, String check) {
        List<Finding> found = of(answers, check);
        assertEquals(1, found.size(), check);
        return found.get(0);
    }

    /** By hand: weighed is good to 1 % at k = 1, so the unfavourable end lies 2 % above; tight begins at nine tenths of the plate. */
    @Test
    void aBoughtDollyIsHeldAgainstItsPlate() {
        Finding light = only(answers(bought(900), 350), "dolly.rated");
        assertEquals(357, light.demand().orElseThrow().si(), 1e-9);
        assertEquals(900, light.capacity().orElseThrow().si(), 1e-9);
        assertEquals(Verdict.HOLDS, light.verdict());
        assertEquals(Verdict.TIGHT, only(answers(bought(900), 860), "dolly.rated").verdict());
        assertEquals(Verdict.STOP, only(answers(bought(900), 890), "dolly.rated").verdict());
    }

    /** No test of the numbers, which other tests hold: that the trial reaches the rails and joints at all, and follows what is typed. */
    @Test
    void anOwnDollyAnswersForItsSteelAndGetsWorseWithThinnerSheet() {
        ShopAnswers stout = answers(own(6, 2, 300), 250);
        ShopAnswers thin = answers(own(1.5, 2, 300), 1500);
        assertEquals(List.of(), stout.findings().stream().filter(finding -> finding.verdict() == Verdict.CANT_SAY).toList());
        assertTrue(of(thin, "dolly.member").stream().anyMatch(finding -> finding.verdict() == Verdict.STOP));
    }

    @Test
    void theFilesAreInOrder() throws IOException {
        for (DollyPlan plan : List.of(own(4, 3, 300), bought(900))) {
            ShopFolder shop = made(plan);
            assertEquals(List.of(), shop.problems());
            assertEquals(List.of(), ValueRules.check(shop));
            Files.delete(folder.resolve("dollies/7.cwdolly"));
            Files.delete(folder.resolve("stock.cwstock"));
            Files.delete(folder.resolve("shop.cwshop"));
        }
    }
}
