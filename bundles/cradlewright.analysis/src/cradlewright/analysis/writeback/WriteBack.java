package cradlewright.analysis.writeback;

import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.ShopSnapshot;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.eclipse.emf.ecore.EObject;

/**
 * What is to be set in the objects of a shop so that they say what changed records say: another pad, shim, bolt, castor type, a prop in
 * place, feet down and the like. Made on any thread from records; carried out on the thread that owns the objects.
 *
 * <p>Changes that are a way of going about it (nobody leans, half the pace), that need a choice on the car (other places for lift pads),
 * or that name something the shop does not have cannot be written back; people enter these themselves.
 */
public final class WriteBack {

    private final List<Difference> differences;

    private WriteBack(List<Difference> differences) {
        this.differences = List.copyOf(differences);
    }

    /**
     * Finds what differs.
     *
     * @param shop the records as they are
     * @param change as they would be
     * @return nothing when any of it has no place in the files, so that it could be entered in part only
     */
    public static Optional<WriteBack> of(ShopSnapshot shop, Change change) {
        List<Difference> all = new ArrayList<>();
        for (Fact after : change.facts()) {
            Fact before = shop.facts().get(after.id());
            if (before == null) {
                return Optional.empty();
            }
            all.addAll(Difference.between(before, after));
        }
        boolean whole = change.settings().isEmpty() && !all.isEmpty() && all.stream().allMatch(Places::known);
        return whole ? Optional.of(new WriteBack(all)) : Optional.empty();
    }

    /** Returns the ids of the objects that are to be changed. */
    public Set<String> objectIds() {
        Set<String> ids = new LinkedHashSet<>();
        differences.forEach(difference -> ids.add(difference.ownerId()));
        return ids;
    }

    /**
     * Sets it all.
     *
     * @param find finds objects of the shop by their ids
     * @throws IllegalArgumentException when an object is not there any more; what was set before stays, so the caller has to roll back
     */
    public void apply(Function<String, Optional<EObject>> find) {
        Places.Objects objects = new Places.Objects(find);
        differences.forEach(difference -> Places.set(difference, objects));
    }

    /**
     * Tells whether the records of a shop say what was to be set; asked after {@link #apply} and a new import, before it is kept.
     *
     * @param shop the records read anew
     * @param change what was wanted
     */
    public static boolean reached(ShopSnapshot shop, Change change) {
        return change.facts().stream().allMatch(wanted -> Optional.ofNullable(shop.facts().get(wanted.id()))
                .filter(found -> Difference.between(found, wanted).isEmpty()).isPresent());
    }
}
