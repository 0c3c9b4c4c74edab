package cradlewright.model.io;

import cradlewright.quantity.QuantityFormatException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.ClassNotFoundException;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;

/** Says in words what the loader could not take over from a file, and closes the file for writing when there is any. */
final class LoadProblems {

    private static final int MOST_LISTED = 200;
    private static final int MOST_NEAR = 3;

    private final ShopFile file;
    private final NearObjects near;
    private final List<ReadProblem> problems = new ArrayList<>();

    LoadProblems(ShopFile file) {
        this.file = file;
        this.near = new NearObjects(List.of(file));
    }

    /** Returns the problems of the file after loading, at most 200 and a line that tells how many more there are. */
    List<ReadProblem> list() {
        file.resource().getErrors().forEach(this::translate);
        if (problems.isEmpty()) {
            return problems;
        }
        file.close(ShopFile.State.INCOMPLETE);
        if (problems.size() <= MOST_LISTED) {
            return problems;
        }
        List<ReadProblem> listed = new ArrayList<>(problems.subList(0, MOST_LISTED));
        listed.add(ReadProblem.of(file.path(), 0, (problems.size() - MOST_LISTED) + " more problems in this file are not listed",
                "mend the first ones and open the shop again", Severity.ERROR));
        return listed;
    }

    private void translate(Resource.Diagnostic error) {
        if (error instanceof IllegalValueException e) {
            illegal(e);
        } else if (error instanceof UnresolvedReferenceException e) {
            unresolved(e);
        } else if (error instanceof FeatureNotFoundException e) {
            unknown(e);
        } else if (error instanceof ClassNotFoundException e) {
            sort(e);
        } else {
            problems.add(ReadProblem.of(file.path(), error.getLine(), error.getMessage(),
                    "correct the spelling, or delete the element", severity()));
        }
    }

    private void illegal(IllegalValueException e) {
        EStructuralFeature feature = e.getFeature();
        String words = Words.of(feature);
        Throwable cause = e.getCause();
        if (e.getValue() instanceof EObject value) {
            add(e.getObject(), feature, words + " refers to the " + Words.name(value) + ", "
                    + Words.one(feature.getEType()) + " is wanted", "refer to the right object, or delete the reference",
                    e.getLine());
        } else if (cause instanceof QuantityFormatException quantity) {
            add(e.getObject(), feature, words + ": " + quantity.what(), quantity.mend(), e.getLine());
        } else {
            String found = Words.quote(String.valueOf(e.getValue()));
            add(e.getObject(), feature, words + ": " + found + " is not " + wanted(feature), "write " + wanted(feature),
                    e.getLine());
        }
    }

    private static String wanted(EStructuralFeature feature) {
        Class<?> type = feature.getEType().getInstanceClass();
        if (type != null && type.isEnum()) {
            return Arrays.stream(type.getEnumConstants()).map(constant -> ((Enumerator) constant).getLiteral())
                    .collect(Collectors.joining(" or "));
        }
        if (type == boolean.class || type == Boolean.class) {
            return "true or false";
        }
        return type == int.class || type == Integer.class ? "a whole number" : Words.one(feature.getEType());
    }

    private void unresolved(UnresolvedReferenceException e) {
        EStructuralFeature feature = e.getFeature();
        add(e.getObject(), feature, Words.of(feature) + " refers to " + Words.quote(String.valueOf(e.getReference()))
                + ", which no object in this file has as its id",
                (feature instanceof EReference reference ? near.mend(e.getObject(), reference, String.valueOf(e.getReference())) + "; "
                        : "correct the id; ") + "when the object lies in another file write an element <" + feature.getName()
                        + " href=\"" + ShopResource.reference("...") + "\"/> instead",
                e.getLine());
    }

    private void add(EObject object, EStructuralFeature feature, String what, String mend, int line) {
        ReadProblem problem = file.problem(object, feature.getName(), what, mend, severity());
        boolean textOfAList = feature.isMany() && !(feature instanceof EReference) && line > 0;
        problems.add(textOfAList ? new ReadProblem(problem.file(), line, problem.objectId(), problem.objectName(), what, mend,
                problem.severity(), "") : problem);
    }

    private void unknown(FeatureNotFoundException e) {
        String what = Words.quote(e.getName()) + " is not known here";
        String mend = file.state() == ShopFile.State.NEWER
                ? "nothing to do: it stays in the file"
                : "correct the spelling, or delete it";
        if (e.getObject() == null) {
            problems.add(ReadProblem.of(file.path(), e.getLine(), what, mend, severity()));
        } else {
            int line = file.hasAttribute(e.getObject(), e.getName()) ? file.lineOf(e.getObject(), e.getName()) : e.getLine();
            problems.add(new ReadProblem(file.path(), line, Words.id(e.getObject()), Words.name(e.getObject()), what, mend,
                    severity(), ""));
        }
    }

    /** An element of which several sorts may stand there says by xsi:type which one it is. */
    private void sort(ClassNotFoundException e) {
        if (e.getFactory() == null) {
            problems.add(ReadProblem.of(file.path(), e.getLine(), "the sort " + Words.quote(e.getName()) + " is not found: what its prefix "
                    + "stands for is not known here", "write a sort with a prefix of this program, or delete the element", severity()));
            return;
        }
        EPackage where = e.getFactory().getEPackage();
        EClassifier wanted = where.getEClassifier(e.getName());
        List<EClass> sorts = where.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .filter(sort -> !sort.isAbstract() && (!(wanted instanceof EClass all) || all.isSuperTypeOf(sort))).toList();
        List<String> near = NearNames.of(e.getName(), sorts.stream().map(EClass::getName).toList(), MOST_NEAR);
        List<String> named = wanted != null || near.isEmpty() ? sorts.stream().map(EClass::getName).toList() : near;
        String what = wanted == null ? "there is no sort " + Words.quote(e.getName())
                : "nothing says what sort of " + Words.of(wanted) + " this is";
        String mend = severity() == Severity.WARNING ? "nothing to do: it stays in the file" : "write " + named.stream()
                .map(name -> "xsi:type=\"" + where.getNsPrefix() + ":" + name + "\"").collect(Collectors.joining(" or ")) + " into it";
        problems.add(ReadProblem.of(file.path(), e.getLine(), what, mend, severity()));
    }

    /** What a newer file holds beyond this program is no mistake of the file. */
    private Severity severity() {
        return file.state() == ShopFile.State.NEWER ? Severity.WARNING : Severity.ERROR;
    }
}
