package cradlewright.mechanics.steel;

import cradlewright.mechanics.section.Plate;
import cradlewright.mechanics.section.SectionProperties;
import java.util.List;

/**
 * Geometric range within which folded sheet may be designed by calculation, EN 1993-1-3 Table 5.1 (from memory).
 *
 * @see SteelFormulas#SHEET_RANGE
 */
public final class SheetLimits {

    private static final double OUTSTAND = 50;
    private static final double INTERNAL = 500;

    private SheetLimits() {
    }

    /** Flat parts that are too slender for design by calculation: outstands above c/t 50, internal parts above 500. */
    public static List<Plate> beyond(SectionProperties section) {
        return section.plates().stream().filter(plate -> switch (plate.kind()) {
            case OUTSTAND -> plate.slenderness() > OUTSTAND;
            case INTERNAL -> plate.slenderness() > INTERNAL;
            case TUBE -> false;
        }).toList();
    }
}
