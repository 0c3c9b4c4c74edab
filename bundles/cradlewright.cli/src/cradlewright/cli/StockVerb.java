package cradlewright.cli;

import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.SaveOutcome;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.io.StandardStock;
import cradlewright.model.stock.Stock;
import cradlewright.model.stock.StockFactory;
import cradlewright.model.stock.StockItem;
import cradlewright.report.text.Lines;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows what standards list, or takes one of it into the stock of a shop. */
@Command(name = "stock", mixinStandardHelpOptions = true,
        description = {"Lists steels, gauges, sections, timber, bolts, wheels, pads and shims from standards, each with its source.",
            "With --into a copy of what is named goes into the stock of that shop; it is the only thing that is written.",
            "For example: stock \"Hollow section 60 x 60 x 4\" --into SHOP"})
final class StockVerb implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME",
            description = "only what has this in its name; with --into its whole name")
    private String name;

    @Option(names = "--into", paramLabel = "SHOP", description = "folder of the shop that takes it")
    private Path shop;

    @Override
    public Integer call() {
        StandardStock standards = StandardStock.load();
        if (shop == null) {
            list(standards);
        } else {
            take(standards);
        }
        return ExitCode.HELD;
    }

    private void list(StandardStock standards) {
        String part = name == null ? "" : name.strip().toLowerCase(Locale.ROOT);
        List<StockItem> found = standards.items().stream().filter(item -> item.getName().toLowerCase(Locale.ROOT).contains(part)).toList();
        if (found.isEmpty()) {
            throw new BadInputException("nothing in the list has \"" + name + "\" in its name"
                    + Near.hint(name, names(standards), "run stock without a name to see all"));
        }
        PrintWriter out = spec.commandLine().getOut();
        found.forEach(item -> out.print(Lines.wrap(String.format("%-44s ", item.getName()), item.getSource())));
    }

    private void take(StandardStock standards) {
        if (name == null) {
            throw new BadInputException("--into takes one thing: name it, run stock without --into to see all names");
        }
        StockItem item = standards.find(name).orElseThrow(() -> new BadInputException("nothing in the list is called \"" + name + "\""
                + Near.hint(name, names(standards), "run stock without --into to see all names")));
        ShopFolder folder = OpenShop.folder(shop);
        if (folder.shop().isEmpty()) {
            throw new BadInputException(shop + " is no shop: name the folder that holds shop.cwshop");
        }
        ShopFile file = folder.files().stream().filter(f -> f.kind() == FileKind.STOCK).findFirst()
                .orElseGet(() -> folder.add(FileKind.STOCK, "", StockFactory.eINSTANCE.createStock()));
        Stock stock = Optional.of(file).flatMap(ShopFile::root).filter(Stock.class::isInstance).map(Stock.class::cast)
                .orElseThrow(() -> new BadInputException(file.path() + " cannot be read: run validate to see what is wrong with it"));
        List<StockItem> added = standards.take(item, stock, IdSource.secure());
        PrintWriter out = spec.commandLine().getOut();
        if (added.isEmpty()) {
            out.print(Lines.wrap("", file.path() + " has " + name + " already; nothing was written."));
            return;
        }
        save(new ShopWriter(folder, Clock.systemUTC()), file);
        added.forEach(one -> out.print(Lines.wrap("", file.path() + " has now " + one.getName() + ", id " + one.getId() + ".")));
    }

    private static List<String> names(StandardStock standards) {
        return standards.items().stream().map(StockItem::getName).toList();
    }

    private static void save(ShopWriter writer, ShopFile file) {
        try {
            SaveOutcome outcome = writer.save(file);
            if (outcome.kind() != SaveOutcome.Kind.SAVED) {
                throw new BadInputException(outcome.message());
            }
        } catch (IOException e) {
            throw new BadInputException(file.path() + " cannot be written: check rights and room on the disk (" + e.getMessage() + ")");
        }
    }
}
