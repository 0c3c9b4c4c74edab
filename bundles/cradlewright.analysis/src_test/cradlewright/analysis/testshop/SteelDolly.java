package cradlewright.analysis.testshop;

import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.EndRelease;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** A dolly as it is being described; without members it is rigid. */
public final class SteelDolly {

    private final String id;
    public final List<NodeFacts> nodes = new ArrayList<>();
    public final List<MemberFacts> members = new ArrayList<>();
    public final List<CastorFacts> castors = new ArrayList<>();
    public final List<FootFacts> feet = new ArrayList<>();
    public final List<FixtureFacts> fixtures = new ArrayList<>();
    public final List<PropFacts> props = new ArrayList<>();
    public Optional<DollyFacts.Heights> heights = Optional.empty();
    /** Of the fixtures that are added from now on. */
    public Vec3 offset = Vec3.ZERO;
    /** Of the fixtures that are added from now on. */
    public Optional<Value> stiffness = Optional.empty();
    public Optional<Value> mass = Optional.empty();
    public Optional<Vec3> balance = Optional.empty();

    /** Starts a dolly without anything. */
    public SteelDolly(String id) {
        this.id = id;
    }

    /** Returns a rigid dolly of 100 kg with a castor at each corner of a square of 2 m about the origin. */
    public static SteelDolly square(String id) {
        SteelDolly dolly = new SteelDolly(id);
        dolly.mass = Optional.of(VisitShop.measured(100));
        dolly.balance = Optional.of(Vec3.ZERO);
        for (int corner = 0; corner < 4; corner++) {
            dolly.node(id + "-n" + corner, corner < 2 ? -1 : 1, corner % 2 == 0 ? -1 : 1, 0.2);
            dolly.castor(id + "-c" + corner, id + "-n" + corner, Optional.empty());
        }
        return dolly;
    }

    /** Adds a node. */
    public SteelDolly node(String node, double x, double y, double z) {
        nodes.add(new NodeFacts(node, node, Optional.of(new Vec3(x, y, z))));
        return this;
    }

    /** Adds a member of a section between two nodes. */
    public SteelDolly member(String member, String from, String to, String section) {
        members.add(new MemberFacts(member, member, Optional.of(from), Optional.of(to), Optional.of(section), Optional.empty(),
                Optional.empty(),
                EndRelease.FIXED, EndRelease.FIXED, Optional.empty(), Optional.empty(), Optional.empty()));
        return this;
    }

    /** Adds a castor at a node. */
    public SteelDolly castor(String castor, String node, Optional<String> type) {
        castors.add(new CastorFacts(castor, castor, Optional.of(node), type, true, CastorFacts.Brake.WHEEL));
        return this;
    }

    /** Adds a fixture on a node, with its height above the node if that is known. */
    public SteelDolly fixture(String fixture, String node, Optional<Value> height) {
        fixtures.add(new FixtureFacts(fixture, fixture, Optional.of(node), Optional.empty(), height, offset, Optional.empty(),
                Hold.RESTS, Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(), stiffness));
        return this;
    }

    /** Adds a fixture on a member, at that distance from its start, m. */
    public SteelDolly fixtureOn(String fixture, String member, double distance) {
        fixtures.add(new FixtureFacts(fixture, fixture, Optional.empty(),
                Optional.of(new FixtureFacts.Station(member, Optional.of(VisitShop.measured(distance)))), Optional.empty(), Vec3.ZERO,
                Optional.empty(), Hold.RESTS, Optional.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(), stiffness));
        return this;
    }

    /** Returns the record. */
    public DollyFacts facts() {
        return new DollyFacts(id, id, DollyFacts.Build.OWN, mass, balance, Optional.empty(),
                new Examination(Optional.empty(), Optional.empty(), Optional.empty()), nodes, members, List.of(), castors, feet,
                        fixtures, props, heights);
    }
}
