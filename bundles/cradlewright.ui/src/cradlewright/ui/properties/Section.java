package cradlewright.ui.properties;

import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.floor.FloorPackage;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Set;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The headings under which the details of a thing stand, in this order. */
enum Section {
    /** Name, kind, what it is made of. */
    WHAT,
    /** Position, direction, what it stands on. */
    WHERE,
    /** Mass, load, rating. */
    HEAVY,
    /** Lengths, strengths, stiffness. */
    SIZE,
    /** When it was looked at, by whom, how it was found. */
    KNOWN,
    /** Who refers to it. */
    DEPENDS;

    private static final Set<EClassifier> PLACES = Set.of(FixturePackage.Literals.DOLLY_NODE, FixturePackage.Literals.MEMBER,
            FloorPackage.Literals.PLACE, FloorPackage.Literals.SLAB, FixturePackage.Literals.BOOM_HOLE);
    private static final Set<String> KNOWN_BY = Set.of("condition", "source", "by", "method", "digest", "findingsText", "programVersion");
    private static final Set<String> PLACED_BY = Set.of("distance", "pin", "heightsTaken");

    /** Returns the heading for a detail. */
    static Section of(EStructuralFeature feature) {
        EClassifier type = feature.getEType();
        Class<?> held = type.getInstanceClass();
        if (held == Position.class || held == Direction.class || PLACES.contains(type) || PLACED_BY.contains(feature.getName())) {
            return WHERE;
        }
        if (held == LocalDate.class || held == LocalDateTime.class || KNOWN_BY.contains(feature.getName())) {
            return KNOWN;
        }
        if (feature.getName().equals("basis")) {
            return HEAVY;
        }
        return held == Measured.class ? of(Dimensions.of(feature)) : WHAT;
    }

    private static Section of(Dimension dimension) {
        return switch (dimension) {
            case MASS, FORCE -> HEAVY;
            case ANGLE -> WHERE;
            case TIME -> WHAT;
            default -> SIZE;
        };
    }
}
