package cradlewright.analysis.change;

import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.VisitFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A car as it is at one of its visits, hung or raised in a way that its file describes, by lifting gear of the shop: a question that needs
 * no visit of its own. Which parts are on is that of the visit; where pads and straps take hold is that of the way of lifting.
 *
 * @param car the car
 * @param visit the visit that tells which parts are on
 * @param setup the way of lifting
 * @param gear the lift or hoist; nothing when the setup names one that is not in the shop
 */
public record LiftQuestion(CarFacts car, VisitFacts visit, SetupFacts setup, Optional<GearFacts> gear) {

    /** Returns what can be asked of the visits of a car that are on today; none when its file describes no way of lifting it. */
    public static List<LiftQuestion> of(ShopSnapshot shop, CarFacts car) {
        List<LiftQuestion> questions = new ArrayList<>();
        for (VisitFacts visit : PartOffQuestion.current(car, shop.today())) {
            for (SetupFacts setup : car.setups()) {
                if (setup.kind() == CarrierKind.LIFT || setup.kind() == CarrierKind.STRAPS) {
                    questions.addAll(of(shop, car, visit, setup));
                }
            }
        }
        return List.copyOf(questions);
    }

    private static List<LiftQuestion> of(ShopSnapshot shop, CarFacts car, VisitFacts visit, SetupFacts setup) {
        List<LiftQuestion> questions = new ArrayList<>();
        Optional<GearFacts> own = setup.liftId().or(setup::hoistId).flatMap(id -> shop.find(GearFacts.class, id));
        questions.add(new LiftQuestion(car, visit, setup, own));
        shop.all(GearFacts.class).stream().filter(gear -> takes(gear, setup) && !own.filter(gear::equals).isPresent())
                .forEach(gear -> questions.add(new LiftQuestion(car, visit, setup, Optional.of(gear))));
        return questions;
    }

    /** Straps hang from the arms of a lift or from a hoist; pads are those of a lift. */
    private static boolean takes(GearFacts gear, SetupFacts setup) {
        return gear instanceof GearFacts.Lift || gear instanceof GearFacts.Hoist && setup.kind() == CarrierKind.STRAPS;
    }

    /** Returns whom the answers are about. */
    public Subject subject() {
        return new Subject(Scope.VISIT, car.id(), Optional.of(visit.id()), car.name() + ", " + visit.name());
    }

    /** Returns the records to ask on; nothing when the car is lifted just so as things are. */
    public Optional<Change> change(ShopSnapshot shop) {
        SetupFacts wanted = gear.map(other -> below(other, shop)).orElse(setup);
        CarFacts changed = car.with(wanted).with(visit.withSetup(setup.id()));
        return changed.equals(car) ? Optional.empty() : Optional.of(Change.of(changed));
    }

    private SetupFacts below(GearFacts other, ShopSnapshot shop) {
        if (setup.liftId().or(setup::hoistId).filter(other.id()::equals).isPresent()) {
            return setup;
        }
        return setup.below(other, setup.contacts().stream().map(contact -> moved(contact, other, shop)).toList());
    }

    /** A pad goes to the arm of the same name; where there is none it stays on one that the other lift does not have. */
    private ContactFacts moved(ContactFacts contact, GearFacts other, ShopSnapshot shop) {
        if (!(other instanceof GearFacts.Lift to)) {
            return contact;
        }
        Optional<String> name = shop.all(GearFacts.Lift.class).stream().flatMap(lift -> lift.arms().stream())
                .filter(arm -> contact.carrierId().filter(arm.id()::equals).isPresent()).map(Fact::name).findFirst();
        return name.flatMap(wanted -> to.arms().stream().filter(arm -> arm.name().equals(wanted)).findFirst())
                .map(arm -> contact.withCarrier(arm.id())).orElse(contact);
    }
}
