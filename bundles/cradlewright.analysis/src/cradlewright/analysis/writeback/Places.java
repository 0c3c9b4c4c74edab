package cradlewright.analysis.writeback;

import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.Hold;
import cradlewright.model.fixture.BoltedJoint;
import cradlewright.model.fixture.Brake;
import cradlewright.model.fixture.Castor;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.fixture.Foot;
import cradlewright.model.fixture.Member;
import cradlewright.model.fixture.Prop;
import cradlewright.model.fixture.Setup;
import cradlewright.model.fixture.Strap;
import cradlewright.model.fixture.StrapMode;
import cradlewright.model.fixture.WeldedJoint;
import cradlewright.model.stock.BoltType;
import cradlewright.model.stock.CastorType;
import cradlewright.model.stock.PadType;
import cradlewright.model.stock.Section;
import cradlewright.model.stock.ShimType;
import cradlewright.model.vehicle.Brace;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.MountState;
import cradlewright.model.vehicle.Shim;
import cradlewright.model.vehicle.ShimStack;
import cradlewright.model.vehicle.VehicleFactory;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** Which component of a record is which attribute of an object, for everything that a remedy changes and that people enter as done. */
final class Places {

    /** Sets what a component of a record says. */
    private interface Place {
        void set(EObject owner, Object after, Objects objects);
    }

    /** Finds the objects that records name. */
    record Objects(Function<String, Optional<EObject>> byId) {

        private <T extends EObject> T get(Class<T> kind, String id) {
            return kind.cast(byId.apply(id).filter(kind::isInstance)
                    .orElseThrow(() -> new IllegalArgumentException("the shop has no " + kind.getSimpleName() + " with the id " + id)));
        }

        private <T extends EObject> T link(Class<T> kind, Object optionalId) {
            return ((Optional<?>) optionalId).map(id -> get(kind, (String) id)).orElse(null);
        }
    }

    private static final List<EReference> CARRIERS = List.of(FixturePackage.Literals.CONTACT__STAND,
            FixturePackage.Literals.CONTACT__STRAP, FixturePackage.Literals.CONTACT__TRESTLE);
    private static final Map<String, Place> PLACES = new HashMap<>();

    static {
        link("ContactFacts.padId", Contact.class, PadType.class, Contact::setPad);
        PLACES.put("ContactFacts.carrierId", (owner, after, objects) -> carry((Contact) owner, objects.link(EObject.class, after)));
        PLACES.put("ContactFacts.hold", (owner, after, objects) -> ((Contact) owner).setHold(hold(after)));
        PLACES.put("ContactFacts.gap", (owner, after, objects) -> ((Contact) owner).setGap(StoredValue.length((Optional<?>) after,
                ((Contact) owner).getGap())));
        PLACES.put("ContactFacts.shims", (owner, after, objects) -> lay((Contact) owner, (Optional<?>) after, objects));
        link("CastorFacts.typeId", Castor.class, CastorType.class, Castor::setType);
        PLACES.put("CastorFacts.brake", (owner, after, objects) -> ((Castor) owner).setBrake(Brake.getByName(((CastorFacts.Brake) after)
                .name())));
        PLACES.put("FootFacts.down", (owner, after, objects) -> ((Foot) owner).setDown((Boolean) after));
        PLACES.put("PropFacts.fitted", (owner, after, objects) -> ((Prop) owner).setFitted((Boolean) after));
        PLACES.put("BraceFacts.fitted", (owner, after, objects) -> ((Brace) owner).setFitted((Boolean) after));
        PLACES.put("MountFacts.fast", (owner, after, objects) -> ((Mount) owner).setState(state((Optional<?>) after)));
        link("MemberFacts.sectionId", Member.class, Section.class, Member::setSection);
        link("Bolted.boltId", BoltedJoint.class, BoltType.class, BoltedJoint::setBolt);
        PLACES.put("Welded.throat", (owner, after, objects) -> ((WeldedJoint) owner).setThroat(StoredValue.length((Optional<?>) after,
                ((WeldedJoint) owner).getThroat())));
        PLACES.put("NodeFacts.at", (owner, after, objects) -> ((DollyNode) owner).setPosition(StoredValue.at((Vec3) ((Optional<?>) after)
                .orElseThrow(), ((DollyNode) owner).getPosition())));
        PLACES.put("DollyFacts.balancePoint", (owner, after, objects) -> ((Dolly) owner).setBalancePoint(StoredValue.at(
                (Vec3) ((Optional<?>) after).orElseThrow(), ((Dolly) owner).getBalancePoint())));
        PLACES.put("SetupFacts.shift", (owner, after, objects) -> ((Setup) owner).setShift(StoredValue.at((Vec3) after,
                ((Setup) owner).getShift())));
        PLACES.put("Strap.mode", (owner, after, objects) -> ((Strap) owner).setMode(StrapMode.getByName(((GearFacts.Mode) after).name())));
    }

    private Places() {
    }

    /** Returns all of them. */
    static Set<String> all() {
        return new TreeSet<>(PLACES.keySet());
    }

    /** Tells whether what differs has a place in the files that people may enter without more questions. */
    static boolean known(Difference difference) {
        return PLACES.containsKey(difference.place());
    }

    /** Sets what differs in its object. */
    static void set(Difference difference, Objects objects) {
        PLACES.get(difference.place()).set(objects.get(EObject.class, difference.ownerId()), difference.after(), objects);
    }

    private static <O, T extends EObject> void link(String place, Class<O> owner, Class<T> kind, BiConsumer<O, T> setter) {
        PLACES.put(place, (object, after, objects) -> setter.accept(owner.cast(object), objects.link(kind, after)));
    }

    private static Hold hold(Object after) {
        return ((Optional<?>) after).map(hold -> Hold.getByName(((Enum<?>) hold).name())).orElse(null);
    }

    private static MountState state(Optional<?> fast) {
        return fast.map(is -> (Boolean) is ? MountState.FAST : MountState.FREE).orElse(null);
    }

    /** What carries is one of several references; the others are emptied. */
    private static void carry(Contact contact, EObject carrier) {
        EReference fitting = CARRIERS.stream().filter(reference -> reference.getEReferenceType().isInstance(carrier)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("a remedy exchanges stands, trestles and straps, nothing else"));
        CARRIERS.forEach(contact::eUnset);
        contact.eSet(fitting, carrier);
    }

    private static void lay(Contact contact, Optional<?> after, Objects objects) {
        if (after.isEmpty()) {
            contact.setShims(null);
            return;
        }
        ShimStack stack = VehicleFactory.eINSTANCE.createShimStack();
        ((ShimStackFacts) after.get()).shims().forEach(facts -> stack.getShims().add(shim(facts, objects)));
        contact.setShims(stack);
    }

    private static Shim shim(ShimFacts facts, Objects objects) {
        Shim shim = VehicleFactory.eINSTANCE.createShim();
        shim.setShim(objects.link(ShimType.class, facts.stockId()));
        if (facts.stockId().isEmpty()) {
            shim.setLoose(StoredValue.length(facts.thickness(), null));
        }
        if (facts.count().isPresent()) {
            shim.setCount(facts.count().getAsInt());
        }
        return shim;
    }
}
