package cradlewright.ui.warnings;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.analysis.run.ShopChecks;
import cradlewright.analysis.writeback.WriteBack;
import cradlewright.model.base.FileRoot;
import cradlewright.model.edit.ChangeRefused;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ValueRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.osgi.util.NLS;

/**
 * Something to do that was tried and mends without harm, ready to be entered into the files as it was tried. Made on any thread from
 * records; carried out on the thread that owns the objects, as one change that can be undone.
 *
 * @param remedy what to do
 * @param change the records on which it was tried
 * @param writeBack what is to be set
 * @param snapshot number of the snapshot for which it was tried; on any other nobody knows whether it mends
 */
record Fix(Remedy remedy, Change change, WriteBack writeBack, long snapshot) {

    /** Returns what can be entered about an answer for the snapshot that the checks hold. */
    static List<Fix> of(Finding finding, ShopSnapshot shop, ShopChecks checks, Progress progress) {
        List<Fix> fixes = new ArrayList<>();
        for (Remedy remedy : finding.remedies()) {
            if (remedy.proof() == Remedy.Proof.MENDS) {
                checks.trial(finding, remedy, progress).map(Trial::change).flatMap(change -> WriteBack.of(shop, change)
                        .map(found -> new Fix(remedy, change, found, shop.number()))).ifPresent(fixes::add);
            }
        }
        return List.copyOf(fixes);
    }

    /** Tells whether the shop is still the one for which it was tried. */
    boolean fits(ShopSnapshot now) {
        return now.number() == snapshot;
    }

    /**
     * Returns it as one change of the files that hold what is to be set; nothing when something of it is not there any more. The change
     * reads the files anew before it is kept and throws {@link NotEntered} when they do not say what was tried: nothing of it is left then.
     */
    Optional<ShopChange> toChange(ShopFolder folder, ShopSnapshot now) {
        List<Optional<ShopFile>> files = writeBack.objectIds().stream().map(id -> folder.find(id).flatMap(folder::fileOf)).toList();
        if (!fits(now) || files.isEmpty() || files.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        Set<ShopFile> touched = files.stream().flatMap(Optional::stream).collect(Collectors.toSet());
        return Optional.of(new ShopChange(NLS.bind(Messages.Fix_label, remedy.words().replaceAll("\\.$", "")), touched,
                () -> enter(folder, touched, now)));
    }

    /** Tells whether the files can hold what was tried: does it, looks, and takes it back before anybody hears of it. */
    boolean canBeEntered(ShopStack stack, ShopFolder folder, ShopSnapshot now) {
        Optional<ShopChange> change = toChange(folder, now);
        if (change.isEmpty()) {
            return false;
        }
        try {
            stack.execute(new ShopChange(change.get().label(), change.get().files(), () -> {
                change.get().body().run();
                throw new Rehearsed();
            }));
        } catch (Rehearsed e) {
            return true;
        } catch (NotEntered | ChangeRefused e) {
            return false;
        }
        throw new IllegalStateException("a rehearsal is never kept");
    }

    /** Ends a rehearsal. */
    private static final class Rehearsed extends RuntimeException {

        private static final long serialVersionUID = 1;

        Rehearsed() {
            super(null, null, false, false);
        }
    }

    private void enter(ShopFolder folder, Set<ShopFile> touched, ShopSnapshot now) {
        List<ReadProblem> before = troubles(touched);
        try {
            writeBack.apply(folder::find);
        } catch (IllegalArgumentException e) {
            throw new NotEntered(e);
        }
        // What was tried may be no value that a file can hold, such as a gap below zero where shims lift a support off its neighbours.
        if (!WriteBack.reached(read(folder, now), change) || !before.containsAll(troubles(touched))) {
            throw new NotEntered(null);
        }
    }

    private static List<ReadProblem> troubles(Set<ShopFile> files) {
        return files.stream().flatMap(file -> ValueRules.check(file).stream()).toList();
    }

    private static ShopSnapshot read(ShopFolder folder, ShopSnapshot now) {
        List<FileRoot> roots = folder.files().stream().flatMap(file -> file.root().stream()).toList();
        return ShopImporter.importShop(roots, now.today(), now.number() + 1);
    }
}
