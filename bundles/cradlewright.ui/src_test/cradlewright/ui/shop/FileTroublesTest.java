package cradlewright.ui.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong is told as long as it is wrong: a reference that led nowhere is forgotten once it leads somewhere. */
class FileTroublesTest {

    @TempDir
    private Path shop;

    private Path copy() throws IOException {
        Path from = Path.of("../cradlewright.demo/shop");
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Path to = shop.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(path, to);
                }
            }
        }
        return shop;
    }

    private static String reference(Dolly dolly) {
        return "shop:/#" + dolly.getId();
    }

    private static boolean serious(FileTroubles troubles) {
        return FileTroubles.serious(troubles.all());
    }

    @Test
    void theDemoShopIsInOrder() {
        FileTroubles troubles = new FileTroubles(ShopFolder.open(Path.of("../cradlewright.demo/shop")));
        assertFalse(serious(troubles), () -> troubles.all().toString());
    }

    @Test
    void aReferenceThatLedNowhereIsForgottenWhenItIsMended() throws IOException {
        Path file = copy().resolve("cars/white coupe.cwcar");
        String text = Files.readString(file);
        Dolly dolly = ShopFolder.open(shop).dollies().stream().filter(each -> text.contains(reference(each))).findFirst().orElseThrow();
        Files.writeString(file, text.replace(reference(dolly), "shop:/#nowhere0000000"));
        ShopFolder folder = ShopFolder.open(shop);
        FileTroubles troubles = new FileTroubles(folder);
        List<ReadProblem> open = troubles.all().stream().filter(problem -> problem.unknownId().equals("nowhere0000000")).toList();
        assertFalse(open.isEmpty(), () -> troubles.all().toString());
        assertTrue(serious(troubles));
        ShopStack stack = new ShopStack(folder, new ShopWriter(folder, Clock.systemUTC()));
        Dolly there = (Dolly) folder.find(dolly.getId()).orElseThrow();
        ShopFile own = folder.files().stream().filter(each -> each.path().equals("cars/white coupe.cwcar")).findFirst().orElseThrow();
        stack.execute(new ShopChange("mend", own, () -> {
            for (ReadProblem problem : open) {
                EObject user = folder.find(problem.objectId()).orElseThrow();
                user.eClass().getEAllReferences().stream().filter(each -> !each.isContainment() && !each.isMany())
                        .filter(each -> user.eGet(each, false) instanceof InternalEObject proxy && proxy.eIsProxy())
                        .forEach(each -> user.eSet(each, there));
            }
        }));
        assertFalse(serious(troubles), () -> troubles.all().toString());
        stack.undo();
        assertTrue(serious(troubles), "undone, it leads nowhere again");
    }

    @Test
    void valuesAreJudgedAgainWhenTheirFileIsTouched() throws IOException {
        ShopFolder folder = ShopFolder.open(copy());
        FileTroubles troubles = new FileTroubles(folder);
        ShopStack stack = new ShopStack(folder, new ShopWriter(folder, Clock.systemUTC()));
        stack.addListener(event -> troubles.judge(event.files()));
        int before = troubles.all().size();
        var car = folder.cars().get(0);
        stack.execute(new ShopChange("no name", folder.fileOf(car).orElseThrow(), () -> car.setName("")));
        assertEquals(before + 1, troubles.all().size());
        stack.undo();
        assertEquals(before, troubles.all().size());
    }
}
