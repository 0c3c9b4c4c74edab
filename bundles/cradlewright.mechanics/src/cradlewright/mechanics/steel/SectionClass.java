package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.section.Plate;
import cradlewright.mechanics.section.SectionProperties;

/**
 * Class of a cross-section by local buckling, EN 1993-1-1 Table 5.2: 1 plastic with rotation, 2 plastic, 3 elastic, 4 needs
 * effective widths.
 *
 * <p>For parts under bending and compression the limits of class 1 and 2 depend on the plastic stress distribution. Here the
 * plastic limits of uniform compression stand in for it, except for bending about the middle of the part: the safe side.
 *
 * @see SteelFormulas#CLASS_LIMITS
 */
public enum SectionClass {

    /** Plastic hinge with rotation. */
    CLASS_1,
    /** Plastic resistance. */
    CLASS_2,
    /** Elastic resistance. */
    CLASS_3,
    /** Local buckling before yield. */
    CLASS_4;

    private static final double[] INTERNAL_COMPRESSION = {33, 38, 42};
    private static final double[] INTERNAL_BENDING = {72, 83, 124};
    private static final double[] OUTSTAND_COMPRESSION = {9, 10, 14};
    private static final double[] TUBE = {50, 70, 90};
    private static final double REFERENCE_YIELD = 235e6;

    /** Material factor sqrt(235 MPa/fy). */
    public static double epsilon(double yield) {
        return Math.sqrt(REFERENCE_YIELD / Require.positive(yield, "yield strength"));
    }

    /**
     * Largest c/t (d/t of a tube) of the class 1, 2 or 3.
     *
     * @param kind of the part
     * @param stress at its ends
     * @param yield Pa
     * @param sectionClass class 1 to 3
     * @throws IllegalArgumentException for class 4, which has no limit
     */
    public static double limit(Plate.Kind kind, PlateStress stress, double yield, SectionClass sectionClass) {
        if (sectionClass == CLASS_4) {
            throw new IllegalArgumentException("class 4 has no limit");
        }
        double epsilon = epsilon(yield);
        int i = sectionClass.ordinal();
        return switch (kind) {
            case TUBE -> TUBE[i] * epsilon * epsilon;
            case INTERNAL -> epsilon * internal(stress, i);
            case OUTSTAND -> epsilon * (i < 2 || stress.even() ? OUTSTAND_COMPRESSION[i]
                    : 21 * Math.sqrt(PlateBuckling.factor(Plate.Kind.OUTSTAND, stress)));
        };
    }

    private static double internal(PlateStress stress, int i) {
        if (stress.symmetricBending()) {
            return INTERNAL_BENDING[i];
        }
        if (i < 2 || stress.even()) {
            return INTERNAL_COMPRESSION[i];
        }
        double psi = stress.psi();
        return psi > -1 ? 42 / (0.67 + 0.33 * psi) : 62 * (1 - psi) * Math.sqrt(-psi);
    }

    /** Class of one flat part; class 1 when nothing of it is in compression. */
    public static SectionClass of(Plate plate, PlateStress stress, double yield) {
        if (!stress.compressed()) {
            return CLASS_1;
        }
        for (SectionClass c : new SectionClass[] {CLASS_1, CLASS_2, CLASS_3}) {
            if (plate.slenderness() <= limit(plate.kind(), stress, yield, c)) {
                return c;
            }
        }
        return CLASS_4;
    }

    /**
     * Class of a section under a normal force and moments of which only the ratios count: the worst of its parts. Sections
     * that list no parts, as solid bars, are class 3: elastic, the safe side.
     *
     * @param section to classify
     * @param n tension positive
     * @param my about y
     * @param mz about z
     * @param yield Pa
     */
    public static SectionClass of(SectionProperties section, double n, double my, double mz, double yield) {
        SectionClass worst = section.plates().isEmpty() ? CLASS_3 : CLASS_1;
        for (Plate plate : section.plates()) {
            SectionClass c = of(plate, stress(section, plate, n, my, mz), yield);
            worst = c.compareTo(worst) > 0 ? c : worst;
        }
        return worst;
    }

    private static PlateStress stress(SectionProperties section, Plate plate, double n, double my, double mz) {
        if (plate.kind() == Plate.Kind.TUBE) {
            return n > 0 && my == 0 && mz == 0 ? new PlateStress(-1, -1) : PlateStress.uniform();
        }
        return new PlateStress(-section.moments().stress(plate.root(), n, my, mz),
                -section.moments().stress(plate.tip(), n, my, mz));
    }

    /** Number of the class, 1 to 4. */
    public int number() {
        return ordinal() + 1;
    }
}
