package cradlewright.analysis.importer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.EndRelease;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.Identified;
import cradlewright.model.fixture.BoltedJoint;
import cradlewright.model.fixture.BoomHole;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.Hoist;
import cradlewright.model.fixture.Lift;
import cradlewright.model.fixture.LiftArm;
import cradlewright.model.fixture.Member;
import cradlewright.model.fixture.Stand;
import cradlewright.model.fixture.Strap;
import cradlewright.model.fixture.Weld;
import cradlewright.model.fixture.WeldedJoint;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Dollies, their joints, and lifting gear. */
class DollyAndGearTest {

    private static final FixtureFactory FIXTURES = FixtureFactory.eINSTANCE;

    private final Dolly dolly = with(FIXTURES.createDolly(), "dolly");

    private static <T extends Identified> T with(T object, String id) {
        object.setId(id);
        return object;
    }

    private static Measured of(String text, Dimension dimension) {
        return Measured.parse(text, dimension);
    }

    private static void weld(WeldedJoint joint, String length, String offset) {
        Weld weld = FIXTURES.createWeld();
        weld.setLength(length == null ? null : of(length, Dimension.LENGTH));
        weld.setOffset(offset == null ? null : of(offset, Dimension.LENGTH));
        joint.getWelds().add(weld);
    }

    private JointFacts.Welded welded(WeldedJoint joint) {
        dolly.getJoints().add(joint);
        return (JointFacts.Welded) DollyImporter.dolly(dolly).joints().get(0);
    }

    @Test
    void anEmptyDollyHasNothingMadeUp() {
        dolly.getFixtures().add(with(FIXTURES.createFixture(), "f"));
        dolly.getCastors().add(with(FIXTURES.createCastor(), "c"));
        DollyFacts facts = DollyImporter.dolly(dolly);
        assertEquals(DollyFacts.Build.OWN, facts.build());
        assertEquals(Optional.empty(), facts.mass());
        assertEquals(new Examination(Optional.empty(), Optional.empty(), Optional.empty()), facts.examination());
        assertEquals(List.of(new FixtureFacts("f", "fixture 1", Optional.empty(), Optional.empty(), Optional.empty(), Vec3.ZERO,
                Optional.empty(),
                Hold.RESTS, Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(), Optional.empty())),
                facts.fixtures());
        assertEquals(List.of(new CastorFacts("c", "castor 1", Optional.empty(), Optional.empty(), false, CastorFacts.Brake.NONE)),
                facts.castors());
    }

    @Test
    void membersNameTheirNodesAndJoints() {
        DollyNode from = with(FIXTURES.createDollyNode(), "n1");
        from.setPosition(Position.of(-800, 600, 250));
        DollyNode to = with(FIXTURES.createDollyNode(), "n2");
        BoltedJoint joint = with(FIXTURES.createBoltedJoint(), "j");
        joint.setRows(2);
        joint.setE1(of("25 mm", Dimension.LENGTH));
        joint.setE2(of("20 mm", Dimension.LENGTH));
        Member member = with(FIXTURES.createMember(), "m");
        member.setFrom(from);
        member.setTo(to);
        member.setEndTo(joint);
        member.setReleaseFrom(true);
        dolly.getNodes().addAll(List.of(from, to));
        dolly.getMembers().add(member);
        dolly.getJoints().add(joint);
        DollyFacts facts = DollyImporter.dolly(dolly);
        assertEquals(List.of(new NodeFacts("n1", "dolly node 1", Optional.of(new Vec3(-0.8, 0.6, 0.25))),
                new NodeFacts("n2", "dolly node 2", Optional.empty())), facts.nodes());
        assertEquals(List.of(new MemberFacts("m", "member 1", Optional.of("n1"), Optional.of("n2"), Optional.empty(),
                Optional.empty(), Optional.empty(), EndRelease.HINGED, EndRelease.FIXED, Optional.empty(), Optional.of("j"),
                Optional.empty())),
                facts.members());
        JointFacts.Bolted bolted = (JointFacts.Bolted) facts.joints().get(0);
        assertEquals(OptionalInt.of(2), bolted.rows());
        assertEquals(OptionalInt.empty(), bolted.columns());
        assertEquals(Optional.of(new Value(0.025, 0, Source.UNSTATED)), bolted.endDistance());
        assertEquals(Optional.of(new Value(0.02, 0, Source.UNSTATED)), bolted.edgeDistance());
    }

    @Test
    void weldsOfUnequalRunsCountAsTheWeakerEqualOnes() {
        WeldedJoint joint = with(FIXTURES.createWeldedJoint(), "w");
        weld(joint, "60 mm", "40 mm u 0.3 measured");
        weld(joint, "50 mm", "-40 mm u 0.4 measured");
        weld(joint, "70 mm", "10 mm u 0.4 measured");
        JointFacts.Welded facts = welded(joint);
        assertEquals(3, facts.runs());
        assertEquals(0.05, facts.runLength().orElseThrow().si(), 1e-15);
        Value spacing = facts.runSpacing().orElseThrow();
        assertEquals(0.03, spacing.si(), 1e-15);
        assertEquals(0.0005, spacing.u(), 1e-15);
        assertEquals(Source.MEASURED, spacing.source());
    }

    @Test
    void oneRunWithoutLengthOrOffsetLeavesTheGroupUnknown() {
        WeldedJoint joint = with(FIXTURES.createWeldedJoint(), "w");
        weld(joint, "60 mm", "40 mm");
        weld(joint, null, null);
        weld(joint, "60 mm", "-40 mm");
        JointFacts.Welded facts = welded(joint);
        assertEquals(Optional.empty(), facts.runLength());
        assertEquals(Optional.empty(), facts.runSpacing());
    }

    @Test
    void aLiftKeepsItsArmsInOrderAndTheirAnglesInRadians() {
        Lift lift = with(FIXTURES.createLift(), "lift");
        lift.setTag("T 12");
        lift.setExaminationDue(LocalDate.of(2026, 9, 30));
        lift.setRatedLoad(of("3 t plate", Dimension.MASS));
        lift.setFrontRearHigh(of("1.5", Dimension.RATIO));
        for (String from : new String[] {"0 deg", "180 deg"}) {
            LiftArm arm = FIXTURES.createLiftArm();
            arm.setAzimuthFrom(of(from, Dimension.ANGLE));
            lift.getArms().add(arm);
        }
        GearFacts.Lift facts = (GearFacts.Lift) GearImporter.gear(lift);
        assertEquals(Optional.of(new Value(3000, 0, Source.PLATE)), facts.ratedLoad());
        assertEquals(new Examination(Optional.of("T 12"), Optional.empty(), Optional.of(LocalDate.of(2026, 9, 30))),
                facts.examination());
        assertEquals(Optional.empty(), facts.frontRearLow());
        assertEquals(Optional.of(1.5), facts.frontRearHigh());
        assertEquals(List.of(0.0, Math.PI), facts.arms().stream().map(arm -> arm.azimuthFrom().orElseThrow().si()).toList());
    }

    @Test
    void strapsStandsAndHoists() {
        Strap strap = with(FIXTURES.createStrap(), "s");
        strap.setWorkingLoadLimit(of("1 t", Dimension.MASS));
        GearFacts.Strap strapFacts = (GearFacts.Strap) GearImporter.gear(strap);
        assertEquals(GearFacts.Mode.CHOKED, strapFacts.mode());
        assertEquals(1000, strapFacts.ratedLoad().orElseThrow().si());

        Stand stand = with(FIXTURES.createStand(), "st");
        stand.setStep(of("1 in", Dimension.LENGTH));
        GearFacts.Stand standFacts = (GearFacts.Stand) GearImporter.gear(stand);
        assertEquals(Optional.empty(), standFacts.perPair());
        assertEquals(OptionalInt.empty(), standFacts.steps());
        assertEquals(0.0254, standFacts.step().orElseThrow().si(), 1e-15);

        Hoist hoist = with(FIXTURES.createHoist(), "h");
        BoomHole hole = with(FIXTURES.createBoomHole(), "far");
        hole.setRatedLoad(of("250 kg plate", Dimension.MASS));
        hoist.getBoomHoles().add(hole);
        assertEquals(List.of(new GearFacts.HoleFacts("far", "boom hole 1", Optional.empty(),
                Optional.of(new Value(250, 0, Source.PLATE)))), ((GearFacts.Hoist) GearImporter.gear(hoist)).holes());
    }
}
