package cradlewright.ui.shop;

import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.model.base.FileRoot;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.ui.words.Nouns;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/** Turns the objects of a shop into records, after an edit only those of the touched roots. Lives on the owner thread. */
final class Snapshots {

    private final ShopFolder folder;
    private final Clock clock;
    private final Map<EObject, List<Fact>> facts = new IdentityHashMap<>();
    private long number;

    Snapshots(ShopFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /**
     * Records of a shop.
     *
     * @param snapshot the records; with the settings of common practice when those of the shop cannot be used
     * @param hindrance why no answers must be worked out on them; empty when they may
     */
    record Taken(ShopSnapshot snapshot, String hindrance) {
    }

    /** Returns the records after something was done to these files. */
    Taken after(Collection<ShopFile> touched) {
        List<FileRoot> roots = folder.files().stream().flatMap(file -> file.root().stream()).toList();
        touched.stream().flatMap(file -> file.root().stream()).flatMap(root -> ShopImporter.toReadAgain(root, roots).stream()).distinct()
                .forEach(facts::remove);
        facts.keySet().retainAll(roots);
        List<Fact> all = roots.stream().flatMap(root -> facts.computeIfAbsent(root, ShopImporter::importRoot).stream()).toList();
        LocalDate today = LocalDate.now(clock);
        number++;
        try {
            return new Taken(ShopImporter.snapshot(folder.shop(), all, today, number), "");
        } catch (IllegalArgumentException e) {
            ShopSnapshot bare = ShopImporter.snapshot(Optional.empty(), all, today, number);
            String name = folder.shop().map(Nouns::name).orElse(bare.name());
            return new Taken(new ShopSnapshot(number, name, bare.settings(), today, bare.facts()), e.getMessage());
        }
    }
}
