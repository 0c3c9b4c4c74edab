package cradlewright.diagrams.car;

import cradlewright.diagrams.Messages;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.Hold;
import cradlewright.model.base.Named;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.Member;
import cradlewright.model.fixture.Setup;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.Mount;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import cradlewright.ui.words.Nouns;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/**
 * A support that is put down in the diagram. On a dolly it stands on the fixture that is there, else on a new one on the nearest rail, as
 * high as the place is over the rail: people enter its pad and what it can carry. Belongs to the thread that owns the shop.
 */
final class NewSupport {

    /** A fixture whose foot is so near is the one that is meant, m. */
    private static final double HERE = 0.06;
    /** A rail farther off carries no fixture, m. */
    private static final double REACH = 0.3;
    private static final double MM = 1000;

    private final ShopFolder folder;
    private final Setup setup;
    private final IdSource ids;

    /** The nearest point of a member. */
    private record Foot(Member member, double distance, Vec3 at, double off) {
    }

    NewSupport(ShopFolder folder, Setup setup, IdSource ids) {
        this.folder = folder;
        this.setup = setup;
        this.ids = ids;
    }

    /** Returns the change that puts a support under a place on the car, which has the given name unless it rests on something named. */
    ShopChange at(Position place, String name) {
        Contact contact = ids.give(FixtureFactory.eINSTANCE.createContact());
        Optional<EObject> spot = new CarEdits(folder, setup).caught(contact, place);
        Position meets = spot.flatMap(Place::of).orElse(place);
        contact.setName(spot.map(s -> ((Named) s).getName()).orElse(name));
        if (spot.isEmpty()) {
            contact.setPoint(place);
        }
        Vec3 inCarrier = Axes.of(setup).inCarrier(new Vec3(meets.si()[0], meets.si()[1], meets.si()[2]));
        Optional<Dolly> dolly = Optional.ofNullable(setup.getDolly());
        Optional<Fixture> there = dolly.flatMap(on -> free(on, inCarrier));
        Optional<Foot> foot = there.isPresent() ? Optional.empty() : dolly.flatMap(on -> nearest(on, inCarrier));
        Optional<Fixture> fresh = foot.map(under -> fixture(contact.getName(), under, inCarrier, spot));
        Set<ShopFile> files = new LinkedHashSet<>(Set.of(folder.fileOf(setup).orElseThrow()));
        fresh.ifPresent(fixture -> files.add(folder.fileOf(setup.getDolly()).orElseThrow()));
        return new ShopChange(NLS.bind(Messages.Edit_add, Nouns.kindAndName(contact)), files, () -> {
            fresh.ifPresent(fixture -> {
                fixture.setMember(foot.orElseThrow().member());
                setup.getDolly().getFixtures().add(fixture);
            });
            contact.setMount(spot.filter(Mount.class::isInstance).map(Mount.class::cast).orElse(null));
            contact.setLiftPoint(spot.filter(LiftPoint.class::isInstance).map(LiftPoint.class::cast).orElse(null));
            contact.setFixture(there.or(() -> fresh).orElse(null));
            setup.getContacts().add(contact);
        });
    }

    private Optional<Fixture> free(Dolly dolly, Vec3 at) {
        return dolly.getFixtures().stream().filter(fixture -> setup.getContacts().stream().noneMatch(c -> c.getFixture() == fixture))
                .filter(fixture -> head(fixture).filter(head -> Math.hypot(head.x() - at.x(), head.y() - at.y()) < HERE).isPresent())
                .findFirst();
    }

    private static Optional<Vec3> head(Fixture fixture) {
        Optional<Vec3> foot = node(fixture.getNode());
        if (fixture.getMember() != null && fixture.getDistance() != null) {
            Optional<Vec3> from = node(fixture.getMember().getFrom());
            Optional<Vec3> to = node(fixture.getMember().getTo());
            foot = from.flatMap(a -> to.map(b -> a.plus(b.minus(a).unit().times(fixture.getDistance().si()))));
        }
        Vec3 off = fixture.getOffset() == null ? Vec3.ZERO : metres(fixture.getOffset());
        return foot.map(off::plus);
    }

    private static Optional<Vec3> node(DollyNode node) {
        return Optional.ofNullable(node).map(DollyNode::getPosition).map(NewSupport::metres);
    }

    private static Vec3 metres(Position at) {
        return new Vec3(at.si()[0], at.si()[1], at.si()[2]);
    }

    private static Optional<Foot> nearest(Dolly dolly, Vec3 at) {
        return dolly.getMembers().stream().map(member -> foot(member, at)).flatMap(Optional::stream)
                .filter(foot -> foot.off() <= REACH && foot.at().z() < at.z()).min(Comparator.comparingDouble(Foot::off));
    }

    private static Optional<Foot> foot(Member member, Vec3 at) {
        Optional<Vec3> from = node(member.getFrom());
        Optional<Vec3> to = node(member.getTo());
        if (from.isEmpty() || to.isEmpty() || from.equals(to)) {
            return Optional.empty();
        }
        Vec3 along = to.get().minus(from.get());
        Vec3 level = new Vec3(along.x(), along.y(), 0);
        Vec3 way = at.minus(from.get());
        double share = level.norm() == 0 ? 0 : Math.max(0, Math.min(1, way.dot(level) / level.dot(level)));
        Vec3 point = from.get().plus(along.times(share));
        return Optional.of(new Foot(member, share * along.norm(), point, Math.hypot(at.x() - point.x(), at.y() - point.y())));
    }

    private Fixture fixture(String name, Foot foot, Vec3 at, Optional<EObject> spot) {
        Fixture fixture = ids.give(FixtureFactory.eINSTANCE.createFixture());
        fixture.setName(name);
        fixture.setDistance(drawn(foot.distance()));
        double shims = spot.filter(Mount.class::isInstance).map(mount -> ShimText.height(((Mount) mount).getOnDolly())).orElse(0.0);
        fixture.setHeight(drawn(at.z() - foot.at().z() - shims / MM));
        fixture.setOffset(Position.of(tenth(at.x() - foot.at().x()), tenth(at.y() - foot.at().y()), 0));
        fixture.setHold(Hold.RESTS);
        return fixture;
    }

    private static Measured drawn(double metres) {
        return Measured.of(tenth(metres), Unit.MILLIMETRE, Source.DRAWING);
    }

    private static double tenth(double metres) {
        return Math.round(10 * MM * metres) / 10.0;
    }
}
