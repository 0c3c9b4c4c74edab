package cradlewright.analysis.facts;

import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;

/**
 * A dolly with its fixtures.
 *
 * @param mass in kg; worked out from the members when empty
 * @param balancePoint in the axes of the dolly
 * @param ratedLoad plate rating in kg
 * @param examination tag and examination dates
 */
public record DollyFacts(String id, String name, Build build, Optional<Value> mass, Optional<Vec3> balancePoint,
        Optional<Value> ratedLoad, Examination examination, List<NodeFacts> nodes, List<MemberFacts> members, List<JointFacts> joints,
        List<CastorFacts> castors, List<FootFacts> feet, List<FixtureFacts> fixtures, List<PropFacts> props) implements Fact {

    /** How it came about. */
    public enum Build {
        OWN, BOUGHT, WELDED, TIMBER
    }

    /** Returns the node of that id. */
    public Optional<NodeFacts> node(String nodeId) {
        return CarFacts.find(nodes, nodeId);
    }

    /** Returns the fixture of that id. */
    public Optional<FixtureFacts> fixture(String fixtureId) {
        return CarFacts.find(fixtures, fixtureId);
    }
}
