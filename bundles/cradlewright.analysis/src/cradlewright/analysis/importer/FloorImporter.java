package cradlewright.analysis.importer;

import static cradlewright.analysis.importer.Identity.id;
import static cradlewright.analysis.importer.Identity.name;

import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.model.floor.Place;
import cradlewright.model.floor.PlaceKind;
import cradlewright.model.floor.Placement;
import cradlewright.model.floor.Slab;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the floor. */
final class FloorImporter {

    /** Fabric with equal wires both ways: A and D (BS 4483; from memory), Q (DIN 488-4; from memory). */
    private static final Pattern SQUARE_FABRIC = Pattern.compile("[ADQ] ?([1-9]\\d{1,3})", Pattern.CASE_INSENSITIVE);

    private FloorImporter() {
    }

    static SlabFacts slab(Slab slab) {
        return new SlabFacts(id(slab), name(slab), Values.si(slab.getThickness()), Values.si(slab.getFck()),
                Values.si(slab.getSubgrade()), meshArea(slab.getFabric()), Values.si(slab.getDailyWheelLoad()),
                Values.si(slab.getDailyWheelContact()), Optional.ofNullable(slab.getSuspended()));
    }

    /**
     * Returns the steel area each way in m2 per m that the name of a fabric speaks of in mm2 per m, as A193. Names of fabric
     * with thinner cross wires (B, C, R) say only the area along the main ones; they and any other text count as not known.
     */
    private static Optional<Value> meshArea(String fabric) {
        return Values.text(fabric).map(SQUARE_FABRIC::matcher).filter(Matcher::matches)
                .map(name -> new Value(Unit.SQUARE_MILLIMETRE.toSi(Integer.parseInt(name.group(1))), 0, Source.DRAWING));
    }

    /** Reads a place; where nobody said whether it is outdoors, a yard is and all others are not. */
    static PlaceFacts place(Place place) {
        PlaceFacts.Kind kind = kind(place.getKind());
        boolean outdoors = place.getOutdoors() == null ? kind == PlaceFacts.Kind.YARD : place.getOutdoors();
        return new PlaceFacts(id(place), name(place), kind, Identity.reference(place.getSlab()), outdoors,
                Values.si(place.getFall()), Values.celsius(place.getTemperature()), Values.si(place.getSteepestStep()));
    }

    private static PlaceFacts.Kind kind(PlaceKind kind) {
        if (kind == null) {
            return PlaceFacts.Kind.BAY;
        }
        return switch (kind) {
            case BAY -> PlaceFacts.Kind.BAY;
            case RACK -> PlaceFacts.Kind.RACK;
            case YARD -> PlaceFacts.Kind.YARD;
            case BOOTH -> PlaceFacts.Kind.BOOTH;
            case AWAY -> PlaceFacts.Kind.AWAY;
        };
    }

    static PlacementFacts placement(Placement placement) {
        return new PlacementFacts(id(placement), name(placement), Identity.reference(placement.getVisit()),
                Identity.reference(placement.getPlace()));
    }
}
