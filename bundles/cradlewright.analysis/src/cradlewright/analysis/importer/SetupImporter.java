package cradlewright.analysis.importer;

import static cradlewright.analysis.importer.Identity.id;
import static cradlewright.analysis.importer.Identity.name;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.Identified;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Setup;
import cradlewright.model.fixture.SetupKind;
import cradlewright.model.fixture.ShimTarget;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads what rests on what. */
final class SetupImporter {

    private SetupImporter() {
    }

    /** Reads a setup; without shift or heading the axes of car and carrier coincide. */
    static SetupFacts setup(Setup setup) {
        return new SetupFacts(id(setup), name(setup), Identity.references(setup.getCarried()), kind(setup.getKind()),
                Identity.reference(setup.getDolly()), Identity.reference(setup.getLift()), Identity.reference(setup.getHoist()),
                Values.point(setup.getShift()).orElse(Vec3.ZERO), Values.number(setup.getHeading()).orElse(0.0),
                Identity.each(setup.getContacts(), SetupImporter::contact), target(setup.getShimTarget()),
                new SetupFacts.Weather(Optional.ofNullable(setup.getOutdoors()), Optional.ofNullable(setup.getCovered())));
    }

    private static Optional<SetupFacts.ShimTarget> target(ShimTarget target) {
        return Optional.ofNullable(target).map(given -> switch (given) {
            case AS_FOUND -> SetupFacts.ShimTarget.AS_FOUND;
            case DRAWING -> SetupFacts.ShimTarget.DRAWING;
            case MEASURED -> SetupFacts.ShimTarget.MEASURED;
        });
    }

    /** Returns the kind; what nobody named stands on the floor, where nothing is known to hold it. */
    private static CarrierKind kind(SetupKind kind) {
        if (kind == null) {
            return CarrierKind.FLOOR;
        }
        return switch (kind) {
            case ON_DOLLY -> CarrierKind.DOLLY;
            case ON_STANDS -> CarrierKind.STANDS;
            case IN_STRAPS -> CarrierKind.STRAPS;
            case ON_LIFT -> CarrierKind.LIFT;
            case ON_CHASSIS -> CarrierKind.CHASSIS;
            case AWAY -> CarrierKind.AWAY;
            case ON_FLOOR, OTHER -> CarrierKind.FLOOR;
        };
    }

    private static ContactFacts contact(Contact contact) {
        return new ContactFacts(id(contact), name(contact), Identity.reference(contact.getMount()),
                Identity.reference(contact.getLiftPoint()), Values.point(contact.getPoint()), carrier(contact),
                Identity.wantedReference(contact.getHole()), Values.direction(contact.getNormal()).orElse(Vec3.UP),
                Words.hold(contact.getHold()), Identity.wantedReference(contact.getPad()), ShimImporter.stack(contact.getShims()),
                Values.si(contact.getGap()), Values.compliance(contact.getStiffness()), Optional.ofNullable(contact.getPin()),
                Values.si(contact.getHeight()));
    }

    /** Returns what carries; the first one when the file names several, which its reader complains about. */
    private static Optional<String> carrier(Contact contact) {
        Stream<Identified> named = Stream.of(contact.getFixture(), contact.getStand(), contact.getTrestle(), contact.getArm(),
                contact.getStrap(), contact.getChassisMount());
        return named.filter(Objects::nonNull).findFirst().flatMap(Identity::wantedReference);
    }
}
