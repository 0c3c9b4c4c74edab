package cradlewright.ui.parts;

import cradlewright.model.edit.ShopChange;
import cradlewright.model.io.ShopFile;
import cradlewright.quantity.Source;
import cradlewright.ui.properties.Chosen;
import cradlewright.ui.properties.QuantityRow;
import cradlewright.ui.properties.Reply;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** Changes how well the masses of several rows are known, all in one change; rows without a mass stay without. */
final class BulkMass {

    private final PartsTable table;
    private final Map<EAttribute, List<EObject>> groups;

    BulkMass(PartsTable table, List<EObject> things) {
        this.table = table;
        groups = things.stream().filter(thing -> thing.eGet(PartsTable.mass(thing)) != null)
                .collect(Collectors.groupingBy(PartsTable::mass, LinkedHashMap::new, Collectors.toList()));
    }

    boolean possible() {
        return !groups.isEmpty();
    }

    Reply source(Source source) {
        return all(row -> row.choose(source));
    }

    /** Judges a give or take for all of them; nothing typed is none given. */
    Reply giveOrTake(String text) {
        return all(row -> row.typeGiveOrTake(text));
    }

    private Reply all(Function<QuantityRow, Reply> edit) {
        List<Reply> replies = groups.entrySet().stream()
                .map(group -> edit.apply(new QuantityRow(new Chosen(table.folder(), group.getValue(), table.habits()), group.getKey())))
                .toList();
        Optional<Reply> refused = replies.stream().filter(Reply::isRefused).findFirst();
        if (refused.isPresent()) {
            return refused.get();
        }
        List<ShopChange> changes = replies.stream().flatMap(reply -> reply.change().stream()).toList();
        if (changes.size() < 2) {
            return replies.stream().filter(reply -> reply.change().isPresent()).findFirst().orElse(Reply.nothing());
        }
        Set<ShopFile> files = new LinkedHashSet<>();
        changes.forEach(change -> files.addAll(change.files()));
        int count = groups.values().stream().mapToInt(List::size).sum();
        ShopChange both = new ShopChange(NLS.bind(Messages.Change_masses, count), files, () -> changes.forEach(each -> each.body().run()));
        return new Reply(Optional.of(both), "", replies.get(0).remark());
    }
}
