package cradlewright.diagrams.dolly;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.Optional;

/** The record of a dolly as it would be if something of it were elsewhere; nothing is edited. */
final class DollyForesight {

    private DollyForesight() {
    }

    /**
     * Returns the record; nothing when the thing has no place.
     *
     * @param id of the thing
     * @param to where it would be, in the axes of the dolly, m
     */
    static Optional<DollyFacts> moved(ShopSnapshot shop, String dollyId, String id, Vec3 to) {
        return shop.find(DollyFacts.class, dollyId).flatMap(dolly -> corner(dolly, id).flatMap(dolly::node)
                .map(node -> dolly.with(new NodeFacts(node.id(), node.name(), Optional.of(to))))
                .or(() -> dolly.fixture(id).flatMap(fixture -> seat(dolly, fixture).map(seat -> dolly.with(on(fixture, seat.headAt(to))))))
                .or(() -> CarFacts.find(dolly.props(), id).map(p -> dolly.with(new PropFacts(p.id(), p.name(), Optional.of(to), p.fitted(),
                        p.capacity(), p.basis(), p.nodeId())))));
    }

    private static Optional<String> corner(DollyFacts dolly, String id) {
        return CarFacts.find(dolly.castors(), id).flatMap(CastorFacts::nodeId)
                .or(() -> CarFacts.find(dolly.feet(), id).flatMap(FootFacts::nodeId)).or(() -> dolly.node(id).map(NodeFacts::id));
    }

    private static Optional<FixtureSeat> seat(DollyFacts dolly, FixtureFacts f) {
        double height = f.height().map(Value::si).orElse(0.0);
        if (f.nodeId().isPresent()) {
            return place(dolly, f.nodeId()).map(base -> new FixtureSeat(base, Optional.empty(), 0, f.offset(), height));
        }
        Optional<MemberFacts> member = f.on().flatMap(on -> CarFacts.find(dolly.members(), on.memberId()));
        Optional<Vec3> from = member.flatMap(m -> place(dolly, m.fromId()));
        Optional<Vec3> to = member.flatMap(m -> place(dolly, m.toId()));
        Optional<Value> distance = f.on().flatMap(FixtureFacts.Station::distance);
        return from.flatMap(a -> to.filter(b -> !b.equals(a)).flatMap(b -> distance.map(d -> new FixtureSeat(a,
                Optional.of(FixtureSeat.Rail.of(a, b)), d.si(), f.offset(), height))));
    }

    private static Optional<Vec3> place(DollyFacts dolly, Optional<String> nodeId) {
        return nodeId.flatMap(dolly::node).flatMap(NodeFacts::at);
    }

    private static FixtureFacts on(FixtureFacts f, FixtureSeat seat) {
        Optional<FixtureFacts.Station> station = f.on().map(on -> new FixtureFacts.Station(on.memberId(),
                Optional.of(new Value(seat.distance(), on.distance().map(Value::u).orElse(0.0), Source.DRAWING))));
        Optional<Value> height = f.height().map(before -> new Value(seat.height(), before.u(), before.source()));
        return new FixtureFacts(f.id(), f.name(), f.nodeId(), station, height, seat.offset(), f.padId(), f.hold(), f.boltId(),
                f.boltCount(), f.capacity(), f.basis(), f.stiffness());
    }
}
