package cradlewright.diagrams.dolly;

import cradlewright.diagrams.Messages;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.Hold;
import cradlewright.model.base.Named;
import cradlewright.model.edit.ShopChange;
import cradlewright.model.fixture.Castor;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.Foot;
import cradlewright.model.fixture.Member;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.ShopFile;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;

/** New things put on a dolly, each as one change of the shop. Belongs to the thread that owns the shop. */
final class DollyAdditions {

    /** What the palette offers. */
    enum Sort {
        MEMBER, CASTOR, FOOT, FIXTURE
    }

    /** A fixture farther from any member stands on nothing, m. */
    private static final double REACH = 0.3;
    /** A member drawn so little askew, sideways over along, is meant straight. */
    private static final double STRAIGHT = 0.2;
    /** A member shorter than this is a slip of the hand, m. */
    private static final double SHORTEST = 0.05;
    /** Height of a fixture over what it stands on, until somebody says otherwise, m. */
    private static final double USUAL_HEIGHT = 0.15;

    private final Dolly dolly;
    private final IdSource ids;

    DollyAdditions(Dolly dolly, IdSource ids) {
        this.dolly = dolly;
        this.ids = ids;
    }

    /**
     * Returns the change that adds a thing; nothing when that cannot be done there.
     *
     * @param at m
     * @param far the other end of a member
     */
    Optional<ShopChange> add(Sort sort, Vec3 at, Optional<Vec3> far, ShopFile file) {
        return switch (sort) {
            case MEMBER -> far.map(end -> straight(at, end)).filter(end -> end.minus(at).norm() >= SHORTEST)
                    .map(end -> member(at, end, file));
            case CASTOR -> Optional.of(castor(at, file));
            case FOOT -> Optional.of(foot(at, file));
            case FIXTURE -> fixture(at, file);
        };
    }

    private static Vec3 straight(Vec3 from, Vec3 to) {
        Vec3 by = to.minus(from);
        double most = Math.max(Math.abs(by.x()), Math.max(Math.abs(by.y()), Math.abs(by.z())));
        return from.plus(new Vec3(along(by.x(), most), along(by.y(), most), along(by.z(), most)));
    }

    private static double along(double by, double most) {
        return Math.abs(by) < STRAIGHT * most ? 0 : by;
    }

    private static String free(String name, List<? extends Named> others) {
        List<String> taken = others.stream().map(Named::getName).filter(Objects::nonNull).toList();
        int number = others.size() + 1;
        while (taken.contains(NLS.bind(name, number))) {
            number++;
        }
        return NLS.bind(name, number);
    }

    private static ShopChange change(String name, ShopFile file, Runnable body) {
        return new ShopChange(NLS.bind(Messages.Edit_add, name), file, body);
    }

    /** A new member is made of what the first one is made of. */
    private ShopChange member(Vec3 from, Vec3 to, ShopFile file) {
        Member member = ids.give(FixtureFactory.eINSTANCE.createMember());
        member.setName(free(Messages.New_member, dolly.getMembers()));
        return change(member.getName(), file, () -> {
            dolly.getMembers().stream().findFirst().ifPresent(like -> {
                member.setSection(like.getSection());
                member.setSteel(like.getSteel());
            });
            Corner corner = new Corner(dolly, ids);
            member.setFrom(corner.at(from));
            member.setTo(corner.at(to));
            dolly.getMembers().add(member);
        });
    }

    /** A new castor is of the type of the first one. */
    private ShopChange castor(Vec3 at, ShopFile file) {
        Castor castor = ids.give(FixtureFactory.eINSTANCE.createCastor());
        castor.setName(free(Messages.New_castor, dolly.getCastors()));
        return change(castor.getName(), file, () -> {
            dolly.getCastors().stream().findFirst().ifPresent(like -> {
                castor.setType(like.getType());
                castor.setSwivel(like.isSwivel());
                castor.setBrake(like.getBrake());
            });
            castor.setNode(new Corner(dolly, ids).at(at));
            dolly.getCastors().add(castor);
        });
    }

    private ShopChange foot(Vec3 at, ShopFile file) {
        Foot foot = ids.give(FixtureFactory.eINSTANCE.createFoot());
        foot.setName(free(Messages.New_foot, dolly.getFeet()));
        return change(foot.getName(), file, () -> {
            foot.setNode(new Corner(dolly, ids).at(at));
            dolly.getFeet().add(foot);
        });
    }

    /** A fixture stands on the corner that is there, else on the nearest member. */
    private Optional<ShopChange> fixture(Vec3 at, ShopFile file) {
        Optional<DollyNode> node = Corner.near(dolly, at);
        Optional<Corner.Foot> on = node.isPresent() ? Optional.empty() : Corner.foot(dolly, at, REACH);
        if (node.isEmpty() && on.isEmpty()) {
            return Optional.empty();
        }
        Fixture fixture = ids.give(FixtureFactory.eINSTANCE.createFixture());
        fixture.setName(free(Messages.New_fixture, dolly.getFixtures()));
        return Optional.of(change(fixture.getName(), file, () -> {
            fixture.setHold(Hold.RESTS);
            fixture.setHeight(DollyPlace.drawn(USUAL_HEIGHT));
            fixture.setNode(node.orElse(null));
            on.ifPresent(foot -> {
                fixture.setMember(foot.member());
                fixture.setDistance(DollyPlace.drawn(foot.distance()));
            });
            dolly.getFixtures().stream().findFirst().ifPresent(like -> fixture.setPad(like.getPad()));
            dolly.getFixtures().add(fixture);
        }));
    }
}
