package cradlewright.ui.properties;

import cradlewright.model.base.BasePackage;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.Severity;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ValueRules;
import cradlewright.model.job.JobPackage;
import cradlewright.model.vehicle.VehiclePackage;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/** The things of a shop that are selected together: what they have in common, and changes of all of them at once. */
public final class Chosen {

    private static final Set<EStructuralFeature> HIDDEN = Set.of(BasePackage.Literals.IDENTIFIED__ID,
            BasePackage.Literals.FILE_ROOT__SCHEMA, BasePackage.Literals.FILE_ROOT__DRAFT);
    private static final Set<EClass> NEVER_EDITED = Set.of(VehiclePackage.Literals.WEIGHING, VehiclePackage.Literals.WEIGHING_READING,
            VehiclePackage.Literals.APERTURE_READING, JobPackage.Literals.SIGN_OFF);

    private final ShopFolder shop;
    private final List<EObject> objects;
    private final Habits habits;

    /**
     * Takes objects of one shop.
     *
     * @param objects one or more
     * @param habits of the one who looks at them
     */
    public Chosen(ShopFolder shop, List<? extends EObject> objects, Habits habits) {
        this.shop = shop;
        this.objects = List.copyOf(objects);
        this.habits = habits;
    }

    ShopFolder shop() {
        return shop;
    }

    List<EObject> objects() {
        return objects;
    }

    EObject first() {
        return objects.get(0);
    }

    boolean single() {
        return objects.size() == 1;
    }

    Habits habits() {
        return habits;
    }

    /** Returns what all of them have, in the order of the metamodel; a name and references to many only when it is one thing. */
    List<EStructuralFeature> features() {
        List<EStructuralFeature> common = new ArrayList<>(first().eClass().getEAllStructuralFeatures());
        objects.forEach(each -> common.retainAll(each.eClass().getEAllStructuralFeatures()));
        common.removeIf(feature -> HIDDEN.contains(feature) || feature instanceof EReference reference && reference.isContainment()
                || !single() && (feature == BasePackage.Literals.NAMED__NAME || feature instanceof EReference && feature.isMany()));
        return List.copyOf(common);
    }

    /** Tells whether they are records of what was seen or signed once, which stay as they are. */
    boolean neverEdited() {
        return objects.stream().anyMatch(each -> NEVER_EDITED.contains(each.eClass()));
    }

    /** Finds a file of theirs that may not be written. */
    Optional<ShopFile> closedFile() {
        return objects.stream().flatMap(each -> shop.fileOf(each).stream())
                .filter(file -> file.state() != ShopFile.State.WRITABLE).findFirst();
    }

    /** Tells whether they may be changed: they lie in files that may be written, and are no readings or signatures. */
    public boolean editable() {
        return !neverEdited() && closedFile().isEmpty() && objects.stream().allMatch(each -> shop.fileOf(each).isPresent());
    }

    /** Returns what all of them have for a detail; nothing when it is not known or when they differ. */
    Optional<Object> shared(EStructuralFeature feature) {
        return differ(feature) ? Optional.empty() : Optional.ofNullable(first().eGet(feature));
    }

    boolean differ(EStructuralFeature feature) {
        return objects.stream().anyMatch(each -> !Objects.equals(each.eGet(feature), first().eGet(feature)));
    }

    /**
     * Makes one change of a detail of all of them, as far as the rules of the model allow it.
     *
     * @param edit gives the new value for an old one; null is not known
     * @param remark how it was understood
     */
    public Reply change(EStructuralFeature feature, UnaryOperator<Object> edit, String remark) {
        Map<EObject, Object> values = new IdentityHashMap<>();
        List<EObject> changed = new ArrayList<>();
        for (EObject object : objects) {
            Object value = edit.apply(object.eGet(feature));
            if (!Objects.equals(value, object.eGet(feature))) {
                values.put(object, value);
                changed.add(object);
            }
        }
        if (changed.isEmpty()) {
            return new Reply(Optional.empty(), "", remark);
        }
        Set<ShopFile> files = new LinkedHashSet<>();
        String warning = "";
        for (EObject object : changed) {
            ShopFile file = shop.fileOf(object).orElseThrow();
            files.add(file);
            for (ReadProblem problem : ValueRules.foresee(file, object, feature, values.get(object))) {
                String words = NLS.bind(Messages.Page_refused, new Object[] {Nouns.kindAndName(object), problem.what(), problem.mend()});
                if (problem.severity() == Severity.ERROR) {
                    return Reply.refused(words);
                }
                warning = words;
            }
        }
        ShopChange change = new ShopChange(label(feature, changed), files,
                () -> changed.forEach(each -> each.eSet(feature, values.get(each))));
        return new Reply(Optional.of(change), "", warning.isEmpty() ? remark : warning);
    }

    private static String label(EStructuralFeature feature, List<EObject> changed) {
        String words = FeatureWords.label(changed.get(0), feature);
        String name = Nouns.kindAndName(changed.get(0));
        return changed.size() == 1 ? NLS.bind(Messages.Change_one, words, name)
                : NLS.bind(Messages.Change_many, new Object[] {words, name, changed.size() - 1});
    }
}
