package cradlewright.diagrams.dolly;

import cradlewright.diagrams.Messages;
import cradlewright.diagrams.shared.TwinName;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.Named;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.fixture.Castor;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.Foot;
import cradlewright.model.fixture.Member;
import cradlewright.model.fixture.Prop;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopCopier;
import cradlewright.model.io.ShopFile;
import cradlewright.quantity.Position;
import cradlewright.ui.words.Nouns;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** Gives things on one side of a dolly their twins on the other. Belongs to the thread that owns the shop. */
final class DollyTwins {

    /** Two places count as the same, m. */
    private static final double SAME = 0.02;

    private final Dolly dolly;
    private final IdSource ids;

    DollyTwins(Dolly dolly, IdSource ids) {
        this.dolly = dolly;
        this.ids = ids;
    }

    /**
     * Returns the change; nothing for things on the middle plane, where the other side has its twin already, and for a fixture on a rail
     * that has no twin to stand on. Rails get theirs first.
     */
    Optional<ShopChange> mirror(List<EObject> things, ShopFile file) {
        List<EObject> wanted = things.stream().filter(Named.class::isInstance).filter(this::missing)
                .filter(thing -> !(thing instanceof Fixture fixture) || things.contains(fixture.getMember()) || canStand(fixture))
                .sorted(Comparator.comparing(thing -> !(thing instanceof Member))).toList();
        List<String> names = wanted.stream().map(Nouns::kindAndName).toList();
        String label = NLS.bind(Messages.Edit_mirror, String.join(", ", names));
        return wanted.isEmpty() ? Optional.empty() : Optional.of(new ShopChange(label, file, () -> wanted.forEach(this::add)));
    }

    private boolean missing(EObject thing) {
        List<Vec3> across = across(thing);
        List<Vec3> here = places(thing);
        return !here.isEmpty() && !same(here, across) && siblings(thing).noneMatch(other -> same(places(other), across));
    }

    /** Two members are the same whichever end they begin at. */
    private static boolean same(List<Vec3> some, List<Vec3> others) {
        return some.size() == others.size() && some.stream().allMatch(a -> others.stream().anyMatch(b -> a.minus(b).norm() <= SAME));
    }

    private static Stream<EObject> siblings(EObject thing) {
        return ((List<?>) thing.eContainer().eGet(thing.eContainmentFeature())).stream().map(EObject.class::cast);
    }

    private static List<Vec3> places(EObject thing) {
        if (thing instanceof Member member) {
            List<Vec3> ends = Stream.of(member.getFrom(), member.getTo()).filter(Objects::nonNull)
                    .flatMap(node -> DollyPlace.place(node).stream()).toList();
            return ends.size() == 2 ? ends : List.of();
        }
        return DollyPlace.of(thing).map(DollyPlace::metres).stream().toList();
    }

    private static List<Vec3> across(EObject thing) {
        return places(thing).stream().map(DollyTwins::across).toList();
    }

    private static Vec3 across(Vec3 at) {
        return new Vec3(at.x(), -at.y(), at.z());
    }

    @SuppressWarnings("unchecked") // the twin goes into the list that its model holds, so it is of the type of that list
    private void add(EObject thing) {
        if (thing instanceof DollyNode node) {
            corner(node);
            return;
        }
        EObject twin = new ShopCopier(ids).copy(thing);
        ((Named) twin).setName(TwinName.of(((Named) thing).getName()));
        if (twin instanceof Member member) {
            member.setFrom(corner(((Member) thing).getFrom()));
            member.setTo(corner(((Member) thing).getTo()));
        } else if (twin instanceof Castor castor) {
            castor.setNode(corner(((Castor) thing).getNode()));
        } else if (twin instanceof Foot foot) {
            foot.setNode(corner(((Foot) thing).getNode()));
        } else if (twin instanceof Prop prop) {
            prop.setPosition(across(prop.getPosition()));
            prop.setNode(Optional.ofNullable(((Prop) thing).getNode()).map(this::corner).orElse(null));
        } else if (twin instanceof Fixture fixture) {
            stand(fixture, (Fixture) thing);
        }
        ((EList<EObject>) thing.eContainer().eGet(thing.eContainmentFeature())).add(twin);
    }

    /** The corner across, an old or a new one. */
    private DollyNode corner(DollyNode node) {
        return new Corner(dolly, ids).at(across(DollyPlace.place(node).orElseThrow()));
    }

    /** A fixture on a corner stands on the corner across; one on a member on the member that is there, as far along it. */
    private void stand(Fixture twin, Fixture of) {
        FixtureSeat seat = DollyPlace.seat(of).orElseThrow();
        if (of.getOffset() != null) {
            twin.setOffset(across(of.getOffset()));
        }
        if (of.getNode() != null) {
            twin.setNode(corner(of.getNode()));
            return;
        }
        Corner.Foot there = rail(seat).orElseThrow();
        twin.setMember(there.member());
        twin.setDistance(DollyPlace.drawn(there.distance()));
    }

    private boolean canStand(Fixture fixture) {
        return fixture.getNode() != null || DollyPlace.seat(fixture).flatMap(this::rail).isPresent();
    }

    /** Where on the other side a fixture that stands so would stand. */
    private Optional<Corner.Foot> rail(FixtureSeat seat) {
        return Corner.foot(dolly, across(seat.head().minus(seat.offset()).minus(Vec3.UP.times(seat.height()))), SAME);
    }

    private static Position across(Position at) {
        return new Position(at.x(), -at.y() + 0.0, at.z(), at.uncertainty(), at.source());
    }
}
