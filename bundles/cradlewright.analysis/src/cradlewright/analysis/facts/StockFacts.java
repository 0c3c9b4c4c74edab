package cradlewright.analysis.facts;

import java.util.List;
import java.util.Optional;

/** What is kept in stock; lengths in m, stresses in Pa. */
public sealed interface StockFacts extends Fact {

    /** Steel. */
    record Steel(String id, String name, Optional<Value> fy, Optional<Value> fu) implements StockFacts {
    }

    /** Timber by strength class. */
    record Timber(String id, String name, Optional<Value> bending, Optional<Value> shear, Optional<Value> density) implements StockFacts {
    }

    /** A section that members are made of. */
    sealed interface Section extends StockFacts {
    }

    /** Sheet folded to a shape. */
    record Folded(String id, String name, Shape shape, Optional<Value> height, Optional<Value> width, Optional<Value> lip,
            Optional<Value> thickness, Optional<Value> insideRadius, List<SheetCorner> points) implements Section {
    }

    /**
     * A corner of the mid line of a folded section, in the plane of the section.
     *
     * @param y across the section, in m
     * @param z along the section's height, in m
     */
    record SheetCorner(double y, double z) {
    }

    /** Shape of a folded section. */
    enum Shape {
        CHANNEL, LIPPED_CHANNEL, ANGLE, ZED, HAT, POLYLINE
    }

    /** Rectangular hollow section. */
    record Hollow(String id, String name, Optional<Value> height, Optional<Value> width, Optional<Value> thickness) implements Section {
    }

    /** Round tube. */
    record Tube(String id, String name, Optional<Value> diameter, Optional<Value> thickness) implements Section {
    }

    /** Flat bar, height along the section's height. */
    record Flat(String id, String name, Optional<Value> height, Optional<Value> width) implements Section {
    }

    /** Tee. */
    record Tee(String id, String name, Optional<Value> flangeWidth, Optional<Value> flangeThickness, Optional<Value> webHeight,
            Optional<Value> webThickness) implements Section {
    }

    /** Timber rail. */
    record TimberRail(String id, String name, Optional<Value> height, Optional<Value> width, Optional<String> timberId)
            implements Section {
    }

    /**
     * A bolt.
     *
     * @param size for example M10
     * @param grade for example 8.8
     * @param threadsInShear whether threads lie in the shear plane; taken so when nobody said
     */
    record Bolt(String id, String name, Optional<String> size, Optional<String> grade, boolean threadsInShear) implements StockFacts {
    }

    /** A castor type: ratedLoad in kg, stiffness in N/m, contactArea in m2, temperatureLimit in degrees Celsius. */
    record CastorType(String id, String name, Optional<Value> ratedLoad, Optional<Value> wheelDiameter, Optional<Value> lead,
            Optional<Tread> tread, Optional<Value> stiffness, Optional<Value> contactArea, Optional<Value> temperatureLimit,
            Optional<Value> mass) implements StockFacts {
    }

    /** What the wheel runs on. */
    enum Tread {
        RUBBER_SOFT, RUBBER_HARD, POLYURETHANE, POLYAMIDE, STEEL
    }

    /** A pad type: stiffness in N/m, stressLimit in Pa, temperatureLimit in degrees Celsius. */
    record Pad(String id, String name, Material material, Optional<Value> length, Optional<Value> width, Optional<Value> thickness,
            Optional<Value> modulus, Optional<Value> stiffness, Optional<Value> stressLimit, Optional<Value> strainLimit,
            Optional<Value> temperatureLimit) implements StockFacts {
    }

    /** What a pad is made of. */
    enum Material {
        CORK, RUBBER, FELT, OTHER
    }

    /** A shim type. */
    record Shim(String id, String name, Optional<Value> thickness, Optional<Value> length, Optional<Value> width, Optional<Integer> onHand)
            implements StockFacts {
    }
}
