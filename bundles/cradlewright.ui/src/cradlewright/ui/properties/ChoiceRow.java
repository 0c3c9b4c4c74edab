package cradlewright.ui.properties;

import cradlewright.model.io.FittingObjects;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.osgi.util.NLS;

/** A detail that is one of a few: yes or no, a word of a list, another thing of the shop. */
final class ChoiceRow extends Row {

    /**
     * Something to choose.
     *
     * @param value null is not known
     * @param label as people read it
     */
    record Choice(Object value, String label) {
    }

    private final List<Choice> choices;

    ChoiceRow(Chosen chosen, EStructuralFeature feature) {
        super(chosen, feature);
        this.choices = choices(chosen, feature);
    }

    /** Returns the choices; not known is the first of them where that is possible. */
    List<Choice> choices() {
        return choices;
    }

    /** Returns the number of the choice that holds; nothing when they differ. */
    Optional<Integer> current() {
        if (differ()) {
            return Optional.empty();
        }
        Object value = chosen().first().eGet(feature());
        return choices.stream().filter(choice -> Objects.equals(choice.value(), value)).findFirst().map(choices::indexOf);
    }

    /** Makes all of them what was chosen. */
    Reply choose(int number) {
        return chosen().change(feature(), old -> choices.get(number).value(), "");
    }

    private static List<Choice> choices(Chosen chosen, EStructuralFeature feature) {
        List<Choice> all = new ArrayList<>();
        Class<?> held = feature.getEType().getInstanceClass();
        if (held != boolean.class) {
            all.add(new Choice(null, ""));
        }
        if (held == boolean.class || held == Boolean.class) {
            all.add(new Choice(true, Messages.Choice_yes));
            all.add(new Choice(false, Messages.Choice_no));
        } else if (feature instanceof EReference reference) {
            fitting(chosen, reference).forEach(each -> all.add(new Choice(each, label(chosen, each))));
        } else {
            Arrays.stream(held.getEnumConstants()).map(Enumerator.class::cast)
                    .forEach(literal -> all.add(new Choice(literal, FeatureWords.choice(literal))));
        }
        return List.copyOf(all);
    }

    /** Returns what fits all of them, and what they refer to now. */
    private static List<EObject> fitting(Chosen chosen, EReference reference) {
        List<EObject> common = new ArrayList<>(FittingObjects.of(chosen.shop(), chosen.first(), reference));
        chosen.objects().stream().skip(1).forEach(each -> common.retainAll(FittingObjects.of(chosen.shop(), each, reference)));
        chosen.objects().stream().map(each -> (EObject) each.eGet(reference)).filter(Objects::nonNull)
                .filter(each -> !common.contains(each)).forEach(common::add);
        return common;
    }

    /** Returns the name of a thing, and of what it is in unless that is the same file or one of which the shop has only one. */
    static String label(Chosen chosen, EObject thing) {
        if (thing.eIsProxy()) {
            return NLS.bind(Messages.Choice_notFound, ((InternalEObject) thing).eProxyURI().fragment());
        }
        EObject around = thing.eContainer();
        boolean single = chosen.shop().fileOf(thing).filter(file -> file.kind().single()).isPresent();
        boolean near = around == null || around.eContainer() == null && (single || around.eResource() == chosen.first().eResource());
        return near ? Nouns.name(thing) : NLS.bind(Messages.Choice_of, Nouns.name(thing), Nouns.name(around));
    }
}
