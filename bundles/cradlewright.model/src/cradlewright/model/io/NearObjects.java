package cradlewright.model.io;

import cradlewright.model.base.Identified;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** Says how a reference to an object that is gone may be mended: by the objects of the right kind that there are, the likely ones first. */
final class NearObjects {

    private static final int SHOWN = 4;
    /** Whoever has so many references to nothing has lost a file; comparing further would take too long. */
    private static final int MOST_COMPARED = 400_000;

    private final List<ShopFile> files;
    private final Map<EClass, List<Identified>> ofKind = new HashMap<>();
    private long compared;

    /** Looks among the objects of some files. */
    NearObjects(List<ShopFile> files) {
        this.files = files;
    }

    /** Returns how to mend a reference to an id that is nowhere. */
    String mend(EObject from, EReference reference, String id) {
        String kind = Words.of(reference.getEType());
        String lost = "bring back the " + kind + " with the id " + Words.quote(id);
        String delete = ", or delete the reference";
        List<Identified> all = all(reference.getEReferenceType(), from);
        if (all.isEmpty()) {
            return lost + delete;
        }
        compared += all.size();
        if (compared > MOST_COMPARED) {
            return lost + ", let the " + Words.name(from) + " refer to another" + delete;
        }
        List<Identified> slips = NearNames.of(id, all, Identified::getId, SHOWN);
        if (!slips.isEmpty()) {
            return "let the " + Words.name(from) + " refer to " + listed(slips, slips.size()) + " if that is meant, " + lost + delete;
        }
        return lost + ", let the " + Words.name(from) + " refer to another (there " + (all.size() == 1 ? "is " : "are ")
                + listed(all, all.size()) + ")" + delete;
    }

    /** Returns the objects of a kind, those of the file of the reference first. */
    private List<Identified> all(EClass kind, EObject from) {
        List<Identified> all = ofKind.computeIfAbsent(kind, this::gather);
        if (compared > MOST_COMPARED) {
            return all;
        }
        List<Identified> sorted = new ArrayList<>(all.stream().filter(object -> object.eResource() == from.eResource()).toList());
        all.stream().filter(object -> object.eResource() != from.eResource()).forEach(sorted::add);
        return sorted;
    }

    private List<Identified> gather(EClass kind) {
        List<Identified> found = new ArrayList<>();
        files.forEach(file -> file.root().ifPresent(top -> Contents.walk(top, object -> {
            if (kind.isInstance(object) && object instanceof Identified identified && identified.getId() != null) {
                found.add(identified);
            }
        })));
        return found;
    }

    private static String listed(List<Identified> objects, int count) {
        return objects.stream().limit(SHOWN).map(object -> Words.name(object) + " (id " + object.getId() + ")")
                .collect(Collectors.joining(", ")) + (count > SHOWN ? " and " + (count - SHOWN) + " more" : "");
    }
}
