package cradlewright.model.io;

import cradlewright.model.stock.Stock;
import cradlewright.model.stock.StockItem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/**
 * Steels, gauges, sections, timber, bolts, wheels, pads and shims as standards and common practice list them, each with its source; nothing
 * of any maker. A shop never refers to them: it takes a copy into its own stock, with an id of its own, and may change that.
 */
public final class StandardStock {

    private static final String FILE = "standards.cwstock";

    private final Stock stock;

    private StandardStock(Stock stock) {
        this.stock = stock;
    }

    /** Reads the list that comes with the program. */
    public static StandardStock load() {
        ShopFile file = new ShopFolder(Path.of("")).addEmpty(FileKind.STOCK, FileKind.STOCK.path(""));
        try (InputStream in = Objects.requireNonNull(StandardStock.class.getResourceAsStream(FILE), FILE)) {
            SafeXml.Result result = SafeXml.read(in.readAllBytes(), FILE);
            Schema.upgrade(result.root(), Schema.of(result.root()));
            file.resource().load(result.root());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (Refused e) {
            throw new IllegalStateException(e.in(FILE).text(), e);
        }
        return new StandardStock((Stock) file.root().orElseThrow());
    }

    /** Returns everything, in the order of the list. */
    public List<StockItem> items() {
        return List.copyOf(stock.getItems());
    }

    /** Returns the item of that name. */
    public Optional<StockItem> find(String name) {
        return stock.getItems().stream().filter(item -> item.getName().equals(name)).findFirst();
    }

    /**
     * Takes a copy of an item into the stock of a shop, with what it refers to, such as the steel of a sheet. What the shop has already
     * under the same name and from the same source is not taken again.
     *
     * @param item one of {@link #items()}
     * @param into the stock of a shop
     * @param ids gives the copies their ids
     * @return what is new in the stock, in the order in which it was added; empty when all was there
     */
    public List<StockItem> take(StockItem item, Stock into, IdSource ids) {
        Map<EObject, StockItem> there = new LinkedHashMap<>();
        List<StockItem> wanted = new ArrayList<>();
        want(item, wanted);
        List<StockItem> added = new ArrayList<>();
        for (StockItem original : wanted) {
            Optional<StockItem> same = into.getItems().stream().filter(other -> isSame(other, original)).findFirst();
            StockItem own = same.orElseGet(() -> new ShopCopier(ids).copy(original));
            there.put(original, own);
            if (same.isEmpty()) {
                redirect(own, there);
                into.getItems().add(own);
                added.add(own);
            }
        }
        return added;
    }

    /** Lists what an item refers to before the item itself. */
    private static void want(StockItem item, List<StockItem> wanted) {
        item.eCrossReferences().stream().map(StockItem.class::cast).forEach(referred -> want(referred, wanted));
        if (!wanted.contains(item)) {
            wanted.add(item);
        }
    }

    private static boolean isSame(StockItem one, StockItem other) {
        return one.eClass() == other.eClass() && Objects.equals(one.getName(), other.getName())
                && Objects.equals(one.getSource(), other.getSource());
    }

    private static void redirect(StockItem copy, Map<EObject, StockItem> there) {
        for (EReference reference : copy.eClass().getEAllReferences()) {
            if (!reference.isContainment() && copy.eGet(reference) instanceof EObject referred) {
                copy.eSet(reference, there.get(referred));
            }
        }
    }
}
