package cradlewright.ui.shop;

import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.Severity;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ValueRules;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.InternalEList;

/** What is wrong with the files of a shop, kept up to date while objects are edited. Lives on the owner thread. */
final class FileTroubles {

    private final ShopFolder folder;
    private final Map<ShopFile, List<ReadProblem>> values = new LinkedHashMap<>();

    FileTroubles(ShopFolder folder) {
        this.folder = folder;
        judge(folder.files());
    }

    /** Judges the values in these files again. */
    void judge(Collection<ShopFile> touched) {
        touched.forEach(file -> values.put(file, ValueRules.check(file)));
    }

    /** Returns what is wrong now; a reference that led nowhere when it was read is left out once it is mended. */
    List<ReadProblem> all() {
        return Stream.concat(folder.problems().stream().filter(this::open), values.values().stream().flatMap(List::stream)).distinct()
                .toList();
    }

    /** Tells whether something must be mended before answers can be trusted, as the command line has it. */
    static boolean serious(List<ReadProblem> problems) {
        return problems.stream().anyMatch(problem -> problem.severity() == Severity.ERROR || !problem.unknownId().isEmpty());
    }

    private boolean open(ReadProblem problem) {
        if (problem.unknownId().isEmpty() || problem.objectId().isEmpty()) {
            return true;
        }
        return folder.find(problem.objectId()).filter(object -> leadsTo(object, problem.unknownId())).isPresent();
    }

    private static boolean leadsTo(EObject object, String unknownId) {
        return object.eClass().getEAllReferences().stream().flatMap(reference -> targets(object, reference))
                .anyMatch(target -> target instanceof InternalEObject proxy && proxy.eIsProxy() && endsIn(proxy.eProxyURI(), unknownId))
                || object.eContents().stream().anyMatch(child -> leadsTo(child, unknownId));
    }

    private static boolean endsIn(URI uri, String id) {
        return id.equals(uri.fragment());
    }

    private static Stream<?> targets(EObject object, EReference reference) {
        if (reference.isContainment() || reference.isContainer()) {
            return Stream.empty();
        }
        Object value = object.eGet(reference, false);
        return value instanceof InternalEList<?> list ? list.basicList().stream() : Stream.ofNullable(value);
    }
}
