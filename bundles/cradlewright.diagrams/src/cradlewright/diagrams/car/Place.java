package cradlewright.diagrams.car;

import cradlewright.diagrams.shared.Moved;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Prop;
import cradlewright.model.vehicle.CutZone;
import cradlewright.model.vehicle.LiftPoint;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.WorkPoint;
import cradlewright.quantity.Position;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/** Where things that can be moved in the diagram have their place, as they stand in their file. */
final class Place {

    private Place() {
    }

    /** Returns the place of a thing: of a cut zone its lower corner, of a support that of what rests there; nothing when it has none. */
    static Optional<Position> of(EObject thing) {
        if (thing instanceof Contact contact) {
            return Optional.ofNullable(contact.getPoint()).or(() -> Optional.ofNullable(contact.getMount()).map(Mount::getPosition))
                    .or(() -> Optional.ofNullable(contact.getLiftPoint()).map(LiftPoint::getPosition));
        }
        if (thing instanceof Mount mount) {
            return Optional.ofNullable(mount.getPosition());
        }
        if (thing instanceof LiftPoint point) {
            return Optional.ofNullable(point.getPosition());
        }
        if (thing instanceof WorkPoint point) {
            return Optional.ofNullable(point.getPosition());
        }
        if (thing instanceof Prop prop) {
            return Optional.ofNullable(prop.getPosition());
        }
        return thing instanceof CutZone zone ? Optional.ofNullable(zone.getLow()) : Optional.empty();
    }

    /** Puts a thing somewhere else; a support lets go of the body mount or lift point where it was. */
    static void set(EObject thing, Position at) {
        if (thing instanceof Contact contact) {
            contact.setMount(null);
            contact.setLiftPoint(null);
            contact.setPoint(at);
        } else if (thing instanceof Mount mount) {
            mount.setPosition(at);
        } else if (thing instanceof LiftPoint point) {
            point.setPosition(at);
        } else if (thing instanceof WorkPoint point) {
            point.setPosition(at);
        } else if (thing instanceof Prop prop) {
            prop.setPosition(at);
        } else if (thing instanceof CutZone zone) {
            Position low = zone.getLow();
            if (zone.getHigh() != null && low != null) {
                zone.setHigh(Moved.by(zone.getHigh(), at.x() - low.x(), at.y() - low.y(), at.z() - low.z()));
            }
            zone.setLow(at);
        } else {
            throw new IllegalArgumentException("this has no place of its own: " + thing.eClass().getName());
        }
    }
}
