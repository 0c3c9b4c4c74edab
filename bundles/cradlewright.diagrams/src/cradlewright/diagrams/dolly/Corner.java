package cradlewright.diagrams.dolly;

import cradlewright.diagrams.Messages;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.Member;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopCopier;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;

/**
 * Finds or makes the corner of a dolly at a place: one that is there, else a new one, which parts the member that it lies on. To be used
 * inside a change.
 */
final class Corner {

    /** A corner so near is the one that is meant, m. */
    private static final double HERE = 0.06;
    /** A member so near is met, m. */
    private static final double NEAR = 0.05;

    private final Dolly dolly;
    private final IdSource ids;

    /** A point of a member. */
    record Foot(Member member, FixtureSeat.Rail rail, double distance, double off) {
    }

    Corner(Dolly dolly, IdSource ids) {
        this.dolly = dolly;
        this.ids = ids;
    }

    /** Returns the corner that is near a place. */
    static Optional<DollyNode> near(Dolly dolly, Vec3 at) {
        return dolly.getNodes().stream().filter(node -> off(node, at) <= HERE).min(Comparator.comparingDouble(node -> off(node, at)));
    }

    private static double off(DollyNode node, Vec3 at) {
        return DollyPlace.place(node).map(place -> place.minus(at).norm()).orElse(Double.POSITIVE_INFINITY);
    }

    /** Returns the nearest point of all members that are not farther off than that, m. */
    static Optional<Foot> foot(Dolly dolly, Vec3 at, double most) {
        return dolly.getMembers().stream().flatMap(member -> foot(member, at).stream()).filter(foot -> foot.off() <= most)
                .min(Comparator.comparingDouble(Foot::off));
    }

    private static Optional<Foot> foot(Member member, Vec3 at) {
        Optional<Vec3> from = DollyPlace.place(member.getFrom());
        Optional<Vec3> to = DollyPlace.place(member.getTo());
        return from.flatMap(a -> to.filter(b -> !b.equals(a)).map(b -> {
            FixtureSeat.Rail rail = FixtureSeat.Rail.of(a, b);
            double distance = Math.max(0, Math.min(rail.length(), at.minus(a).dot(rail.way())));
            return new Foot(member, rail, distance, at.minus(a).minus(rail.way().times(distance)).norm());
        }));
    }

    /** Returns the corner at a place, an old or a new one. */
    DollyNode at(Vec3 place) {
        return near(dolly, place).orElseGet(() -> foot(dolly, place, NEAR).map(this::part).orElseGet(() -> fresh(place)));
    }

    private DollyNode fresh(Vec3 place) {
        DollyNode node = ids.give(FixtureFactory.eINSTANCE.createDollyNode());
        node.setPosition(DollyPlace.position(place));
        node.setName(NLS.bind(Messages.New_corner, dolly.getNodes().size() + 1));
        dolly.getNodes().add(node);
        return node;
    }

    /** Parts a member: its second half is a member of its own with the far end and its joint; what stands there goes along. */
    private DollyNode part(Foot foot) {
        Member first = foot.member();
        Vec3 from = DollyPlace.place(first.getFrom()).orElseThrow();
        DollyNode node = fresh(from.plus(foot.rail().way().times(foot.distance())));
        Member second = new ShopCopier(ids).copy(first);
        second.setName(NLS.bind(Messages.New_secondHalf, first.getName()));
        second.setFrom(node);
        second.setEndFrom(null);
        second.setReleaseFrom(false);
        second.setTurnsFrom(false);
        first.setTo(node);
        first.setEndTo(null);
        first.setReleaseTo(false);
        first.setTurnsTo(false);
        dolly.getMembers().add(dolly.getMembers().indexOf(first) + 1, second);
        List<Fixture> beyond = dolly.getFixtures().stream().filter(fixture -> fixture.getMember() == first
                && fixture.getDistance() != null && fixture.getDistance().si() > foot.distance()).toList();
        beyond.forEach(fixture -> {
            fixture.setMember(second);
            fixture.setDistance(DollyPlace.drawn(fixture.getDistance().si() - foot.distance()));
        });
        return node;
    }
}
