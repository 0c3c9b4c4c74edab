package cradlewright.diagrams.dolly;

import cradlewright.diagrams.shared.Moved;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.fixture.Castor;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.Foot;
import cradlewright.model.fixture.Prop;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import java.util.Optional;
import java.util.OptionalDouble;
import org.eclipse.emf.ecore.EObject;

/**
 * Where things of a dolly have their place. Castors and feet have that of the corner that they are bolted to, fixtures that of their head.
 */
final class DollyPlace {

    private static final double MM = 1000;

    private DollyPlace() {
    }

    /** Returns the place of a thing; nothing when it has none. */
    static Optional<Position> of(EObject thing) {
        if (thing instanceof Fixture fixture) {
            return seat(fixture).map(seat -> position(seat.head()));
        }
        return thing instanceof Prop prop ? Optional.ofNullable(prop.getPosition()) : corner(thing).map(DollyNode::getPosition);
    }

    /** Returns the corner whose place a thing has. */
    static Optional<DollyNode> corner(EObject thing) {
        if (thing instanceof Castor castor) {
            return Optional.ofNullable(castor.getNode());
        }
        if (thing instanceof Foot foot) {
            return Optional.ofNullable(foot.getNode());
        }
        return thing instanceof DollyNode node ? Optional.of(node) : Optional.empty();
    }

    /** Puts a thing somewhere else; what shares its corner goes along. */
    static void set(EObject thing, Position at) {
        if (thing instanceof Fixture fixture) {
            put(fixture, seat(fixture).orElseThrow(), metres(at));
        } else if (thing instanceof Prop prop) {
            prop.setPosition(at);
        } else {
            corner(thing).orElseThrow(() -> new IllegalArgumentException("this has no place of its own: " + thing.eClass().getName()))
                    .setPosition(at);
        }
    }

    private static void put(Fixture fixture, FixtureSeat before, Vec3 to) {
        FixtureSeat seat = before.headAt(to);
        if (seat.distance() != before.distance()) {
            fixture.setDistance(drawn(seat.distance()));
        }
        if (!seat.offset().equals(before.offset())) {
            fixture.setOffset(position(seat.offset()));
        }
        if (Math.abs(seat.height() - before.height()) > 1e-9) {
            fixture.setHeight(drawn(seat.height()));
        }
    }

    /** Returns how a fixture stands; nothing when the file does not say where. */
    static Optional<FixtureSeat> seat(Fixture fixture) {
        Vec3 offset = fixture.getOffset() == null ? Vec3.ZERO : metres(fixture.getOffset());
        double height = fixture.getHeight() == null ? 0 : fixture.getHeight().si();
        if (fixture.getNode() != null) {
            return place(fixture.getNode()).map(base -> new FixtureSeat(base, Optional.empty(), 0, offset, height));
        }
        if (fixture.getMember() == null || fixture.getDistance() == null) {
            return Optional.empty();
        }
        Optional<Vec3> from = place(fixture.getMember().getFrom());
        Optional<Vec3> to = place(fixture.getMember().getTo());
        return from.flatMap(a -> to.filter(b -> !b.equals(a)).map(b -> new FixtureSeat(a, Optional.of(FixtureSeat.Rail.of(a, b)),
                fixture.getDistance().si(), offset, height)));
    }

    /** Returns the place of a corner, m. */
    static Optional<Vec3> place(DollyNode node) {
        return Optional.ofNullable(node).map(DollyNode::getPosition).map(DollyPlace::metres);
    }

    /** Returns a place in m. */
    static Vec3 metres(Position at) {
        return new Vec3(at.si()[0], at.si()[1], at.si()[2]);
    }

    /** Returns a place in m as files hold what was drawn. */
    static Position position(Vec3 metres) {
        return new Position(Moved.tenth(MM * metres.x()), Moved.tenth(MM * metres.y()), Moved.tenth(MM * metres.z()),
                OptionalDouble.empty(), Source.DRAWING);
    }

    /** Returns a length in m as files hold what was drawn. */
    static Measured drawn(double metres) {
        return Measured.of(Moved.tenth(MM * metres), Unit.MILLIMETRE, Source.DRAWING);
    }
}
