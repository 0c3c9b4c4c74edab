package cradlewright.ui.parts;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.io.ShopFile;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.TemporaryLoad;
import cradlewright.ui.words.Nouns;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** Which parts and temporary loads are on in a stage. */
final class Ticks {

    private Ticks() {
    }

    static boolean isOn(Stage stage, EObject thing) {
        return thing instanceof Part ? stage.getOn().contains(thing) : stage.getLoads().contains(thing);
    }

    /** Returns one change that ticks all of these on or off in a stage; nothing when all are so already. */
    static Optional<ShopChange> change(ShopFile file, Stage stage, List<? extends EObject> things, boolean on) {
        List<? extends EObject> turned = things.stream().filter(thing -> isOn(stage, thing) != on).toList();
        if (turned.isEmpty()) {
            return Optional.empty();
        }
        String what = turned.size() == 1 ? Nouns.kindAndName(turned.get(0)) : NLS.bind(Messages.Several, turned.size());
        String label = NLS.bind(on ? Messages.Change_on : Messages.Change_off, what, Nouns.name(stage));
        return Optional.of(new ShopChange(label, file, () -> turned.forEach(thing -> turn(stage, thing, on))));
    }

    /** Does it, inside a change. */
    static void turn(Stage stage, EObject thing, boolean on) {
        if (thing instanceof Part part) {
            turn(stage.getOn(), part, on);
        } else {
            turn(stage.getLoads(), (TemporaryLoad) thing, on);
        }
    }

    private static <T> void turn(EList<T> list, T thing, boolean on) {
        if (!on) {
            list.remove(thing);
        } else if (!list.contains(thing)) {
            list.add(thing);
        }
    }

    /** Returns the names of the visits of a day at which a car stands in a stage. */
    static List<String> standing(CarFacts car, String stageId, LocalDate day) {
        return car.visitsOn(day).stream().filter(visit -> visit.stageId().filter(stageId::equals).isPresent()).map(VisitFacts::name)
                .toList();
    }

    /** Returns the names of the other visits that have a stage, too: a tick is for all of them. */
    static List<String> others(CarFacts car, String stageId, LocalDate day) {
        List<VisitFacts> now = car.visitsOn(day);
        return car.visits().stream().filter(visit -> visit.stageId().filter(stageId::equals).isPresent() && !now.contains(visit))
                .map(VisitFacts::name).toList();
    }
}
