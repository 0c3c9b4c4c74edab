package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.Shop;
import cradlewright.model.stock.BoltType;
import cradlewright.model.stock.Sheet;
import cradlewright.model.stock.Steel;
import cradlewright.model.stock.Stock;
import cradlewright.model.stock.StockFactory;
import cradlewright.model.stock.StockItem;
import cradlewright.model.stock.Timber;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The list from standards: numbers against the tables that it names. */
class StandardStockTest {

    private static final StandardStock STANDARDS = StandardStock.load();

    @TempDir
    Path directory;

    private static IdSource ids() {
        return new IdSource(new SplittableRandom(20261125));
    }

    @ParameterizedTest
    @CsvSource({
        // EN 1993-1-1 Table 3.1, t up to 40 mm.
        "'S235 hot rolled, up to 40 mm', 235, 360", "'S275 hot rolled, up to 40 mm', 275, 430", "'S355 hot rolled, up to 40 mm', 355, 490",
        // EN 10149-2, least values.
        "'S315MC for folding, up to 8 mm', 315, 390", "'S355MC for folding, up to 8 mm', 355, 430",
                "'S420MC for folding, up to 8 mm', 420, 480",
        "'S460MC for folding, up to 8 mm', 460, 520", "'S500MC for folding, up to 8 mm', 500, 550"})
    void steelsHaveTheStrengthOfTheirStandard(String name, double fy, double fu) {
        Steel steel = (Steel) STANDARDS.find(name).orElseThrow();
        assertEquals(fy, steel.getFy().value());
        assertEquals(fu, steel.getFu().value());
    }

    @Test
    void timberHasTheStrengthOfItsClass() {
        // EN 338:2016 Table 1 (from memory): C24 has 24 and 4.0 N/mm2, mean density 420 kg/m3.
        Timber timber = (Timber) STANDARDS.find("Softwood C24").orElseThrow();
        assertEquals(24, timber.getFmk().value());
        assertEquals(4, timber.getFvk().value());
        assertEquals(420, timber.getDensity().value());
    }

    @Test
    void everythingHasANameOfItsOwnAndASource() {
        List<StockItem> items = STANDARDS.items();
        assertTrue(items.size() > 100, "items: " + items.size());
        assertEquals(items.size(), items.stream().map(StockItem::getName).distinct().count());
        items.forEach(item -> assertFalse(item.getSource().isBlank(), item.getName()));
        assertTrue(items.stream().filter(BoltType.class::isInstance).count() >= 10);
    }

    @Test
    void theListIsInOrderAndReadsLikeAnyFileOfAShop() throws Exception {
        ShopFolder shop = shop(StockFactory.eINSTANCE.createStock());
        Path file = directory.resolve("stock.cwstock");
        try (InputStream in = StandardStock.class.getResourceAsStream("standards.cwstock")) {
            Files.write(file, in.readAllBytes());
        }
        String text = Files.readString(file);
        assertTrue(text.contains("schema=\"" + Schema.CURRENT + "\""), "written in the present form");
        new ShopWriter(shop, Clock.systemUTC()).save(shop.files().get(0));
        ShopFolder read = ShopFolder.open(directory);
        assertEquals(List.of(), read.problems());
        assertEquals(List.of(), ValueRules.check(read));
        ShopFile stock = read.files().stream().filter(f -> f.kind() == FileKind.STOCK).findFirst().orElseThrow();
        assertEquals(text, new String(ShopWriter.text(stock).bytes(), StandardCharsets.UTF_8));
    }

    private ShopFolder shop(Stock stock) {
        ShopFolder shop = new ShopFolder(directory);
        Shop root = BaseFactory.eINSTANCE.createShop();
        root.setName("Shed");
        shop.add(FileKind.SHOP, "", ids().give(root));
        shop.add(FileKind.STOCK, "", stock);
        return shop;
    }

    @Test
    void aShopTakesACopyWithWhatItRefersToButNothingTwice() {
        Stock stock = StockFactory.eINSTANCE.createStock();
        Sheet original = (Sheet) STANDARDS.find("Sheet 3 mm S355MC").orElseThrow();
        List<StockItem> added = STANDARDS.take(original, stock, ids());
        assertEquals(List.of("S355MC for folding, up to 8 mm", "Sheet 3 mm S355MC"), added.stream().map(StockItem::getName).toList());
        Sheet own = (Sheet) added.get(1);
        assertSame(added.get(0), own.getSteel());
        assertNotSame(original.getSteel(), own.getSteel());
        assertEquals(original.getSource(), own.getSource());

        assertEquals(List.of(), STANDARDS.take(original, stock, ids()));
        List<StockItem> more = STANDARDS.take(STANDARDS.find("Sheet 4 mm S355MC").orElseThrow(), stock,
                new IdSource(new SplittableRandom(7)));
        assertEquals(1, more.size());
        assertSame(added.get(0), ((Sheet) more.get(0)).getSteel());
        assertEquals(3, stock.getItems().stream().map(StockItem::getId).collect(Collectors.toSet()).size());
        assertFalse(stock.getItems().stream().anyMatch(item -> STANDARDS.items().stream().anyMatch(s -> s.getId().equals(item.getId()))));
    }
}
