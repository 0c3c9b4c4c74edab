package cradlewright.analysis.importer;

import static cradlewright.analysis.importer.Identity.each;
import static cradlewright.analysis.importer.Identity.id;
import static cradlewright.analysis.importer.Identity.name;

import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.EndRelease;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.fixture.Brake;
import cradlewright.model.fixture.Castor;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyBuild;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.Foot;
import cradlewright.model.fixture.HeightsTaken;
import cradlewright.model.fixture.Member;
import cradlewright.model.fixture.Prop;
import java.util.Optional;

/** Reads a dolly. */
final class DollyImporter {

    private DollyImporter() {
    }

    static DollyFacts dolly(Dolly dolly) {
        return new DollyFacts(id(dolly), name(dolly), build(dolly.getBuild()), Values.si(dolly.getMass()),
                Values.point(dolly.getBalancePoint()), Values.rating(dolly.getRatedLoad()), Words.examination(dolly),
                each(dolly.getNodes(), DollyImporter::node), each(dolly.getMembers(), DollyImporter::member),
                each(dolly.getJoints(), JointImporter::joint), each(dolly.getCastors(), DollyImporter::castor),
                each(dolly.getFeet(), DollyImporter::foot), each(dolly.getFixtures(), DollyImporter::fixture),
                each(dolly.getProps(), DollyImporter::prop), heights(dolly.getHeightsTaken()));
    }

    /** Returns how it came about; built in the shop when nobody said, so that its members are worked out. */
    private static DollyFacts.Build build(DollyBuild build) {
        if (build == null) {
            return DollyFacts.Build.OWN;
        }
        return switch (build) {
            case OWN -> DollyFacts.Build.OWN;
            case BOUGHT -> DollyFacts.Build.BOUGHT;
            case WELDED -> DollyFacts.Build.WELDED;
            case TIMBER -> DollyFacts.Build.TIMBER;
        };
    }

    private static Optional<DollyFacts.Heights> heights(HeightsTaken taken) {
        return Optional.ofNullable(taken).map(given -> switch (given) {
            case STANDING -> DollyFacts.Heights.STANDING;
            case DRAWING -> DollyFacts.Heights.DRAWING;
        });
    }

    private static NodeFacts node(DollyNode node) {
        return new NodeFacts(id(node), name(node), Values.point(node.getPosition()));
    }

    private static MemberFacts member(Member member) {
        return new MemberFacts(id(member), name(member), Identity.reference(member.getFrom()), Identity.reference(member.getTo()),
                Identity.reference(member.getSection()), Identity.reference(member.getSteel()), Values.direction(member.getUp()),
                new EndRelease(member.isReleaseFrom(), member.isTurnsFrom()), new EndRelease(member.isReleaseTo(), member.isTurnsTo()),
                Identity.reference(member.getEndFrom()), Identity.reference(member.getEndTo()), Values.si(member.getUnbracedLength()));
    }

    private static CastorFacts castor(Castor castor) {
        return new CastorFacts(id(castor), name(castor), Identity.reference(castor.getNode()),
                Identity.reference(castor.getType()), castor.isSwivel(), brake(castor.getBrake()));
    }

    /** Returns what the brake holds; nothing when nobody named a brake. */
    private static CastorFacts.Brake brake(Brake brake) {
        if (brake == null) {
            return CastorFacts.Brake.NONE;
        }
        return switch (brake) {
            case NONE -> CastorFacts.Brake.NONE;
            case WHEEL -> CastorFacts.Brake.WHEEL;
            case WHEEL_AND_SWIVEL -> CastorFacts.Brake.WHEEL_AND_SWIVEL;
        };
    }

    private static FootFacts foot(Foot foot) {
        return new FootFacts(id(foot), name(foot), Identity.reference(foot.getNode()), foot.isDown(), Values.si(foot.getStiffness()));
    }

    /** Reads a fixture; one of which nobody said how it holds only pushes. */
    private static FixtureFacts fixture(Fixture fixture) {
        return new FixtureFacts(id(fixture), name(fixture), Identity.reference(fixture.getNode()),
                Identity.reference(fixture.getMember()).map(m -> new FixtureFacts.Station(m, Values.si(fixture.getDistance()))),
                Values.si(fixture.getHeight()), Values.point(fixture.getOffset()).orElse(Vec3.ZERO),
                        Identity.wantedReference(fixture.getPad()),
                Words.hold(fixture.getHold()).orElse(Hold.RESTS), Identity.reference(fixture.getBolt()),
                Values.count(fixture.getBoltCount()), Values.rating(fixture.getRatedLoad()), Words.basis(fixture.getBasis()),
                Values.si(fixture.getStiffness()));
    }

    private static PropFacts prop(Prop prop) {
        return new PropFacts(id(prop), name(prop), Values.point(prop.getPosition()), prop.isFitted(),
                Values.rating(prop.getRatedLoad()), Words.basis(prop.getBasis()), Identity.wantedReference(prop.getNode()));
    }
}
