package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;
import java.util.List;

/**
 * Minimum strengths of steel grades by thickness.
 *
 * <p>S235, S275, S355: EN 10025-2 Table 7 up to 63 mm. MC grades: EN 10149-2, up to 20 mm (16 mm from S500MC on); S700MC and
 * these thickness limits are from memory. These product values are used for design; they never exceed the nominal values of
 * EN 1993-1-1 Table 3.1 except for the tensile strength of S275 and S355 below 3 mm.
 *
 * @see SteelFormulas#GRADE
 */
public enum SteelGrade {

    /** Structural steel S235. */
    S235(63, List.of(new Step(16, 235), new Step(40, 225), new Step(63, 215)), 360, 360, 0, "EN 10025-2 Table 7"),
    /** Structural steel S275. */
    S275(63, List.of(new Step(16, 275), new Step(40, 265), new Step(63, 255)), 430, 410, 0, "EN 10025-2 Table 7"),
    /** Structural steel S355. */
    S355(63, List.of(new Step(16, 355), new Step(40, 345), new Step(63, 335)), 510, 470, 0, "EN 10025-2 Table 7"),
    /** Cold-forming steel S315MC. */
    S315MC(20, List.of(new Step(20, 315)), 390, 390, 0, "EN 10149-2"),
    /** Cold-forming steel S355MC. */
    S355MC(20, List.of(new Step(20, 355)), 430, 430, 0.5, "EN 10149-2"),
    /** Cold-forming steel S420MC. */
    S420MC(20, List.of(new Step(20, 420)), 480, 480, 0.5, "EN 10149-2"),
    /** Cold-forming steel S460MC. */
    S460MC(20, List.of(new Step(20, 460)), 520, 520, 1, "EN 10149-2"),
    /** Cold-forming steel S500MC. */
    S500MC(16, List.of(new Step(16, 500)), 550, 550, 1, "EN 10149-2"),
    /** Cold-forming steel S700MC. */
    S700MC(16, List.of(new Step(8, 700), new Step(16, 680)), 750, 750, 2, "EN 10149-2 (from memory)");

    private static final double MM = 1e-3;
    private static final double MPA = 1e6;
    private static final double ROUNDING = 1e-9;
    private static final double THIN = 3 * MM;

    private record Step(double upToMm, double yieldMpa) {
    }

    private final double thickestMm;
    private final List<Step> yields;
    private final double tensileBelow3;
    private final double tensileFrom3;
    private final double mandrel;
    private final String source;

    SteelGrade(double thickestMm, List<Step> yields, double tensileBelow3, double tensileFrom3, double mandrel, String source) {
        this.thickestMm = thickestMm;
        this.yields = yields;
        this.tensileBelow3 = tensileBelow3;
        this.tensileFrom3 = tensileFrom3;
        this.mandrel = mandrel;
        this.source = source;
    }

    /**
     * Minimum yield strength, Pa.
     *
     * @param thickness m
     * @throws IllegalArgumentException for a thickness that is not above zero or beyond the table
     */
    public double yieldStrength(double thickness) {
        requireThickness(thickness);
        return MPA * yields.stream().filter(step -> thickness <= step.upToMm * MM * (1 + ROUNDING)).findFirst().orElseThrow()
                .yieldMpa;
    }

    /**
     * Minimum tensile strength, Pa.
     *
     * @param thickness m
     * @throws IllegalArgumentException for a thickness that is not above zero or beyond the table
     */
    public double tensileStrength(double thickness) {
        requireThickness(thickness);
        return MPA * (thickness < THIN ? tensileBelow3 : tensileFrom3);
    }

    /**
     * Smallest mandrel radius of the 180 degree bend test over thickness; 0 also where the standard gives none in this form
     * (S235 to S355: ask for a grade suited to cold bending).
     */
    public double mandrelOverThickness() {
        return mandrel;
    }

    /** The standard and table behind the values. */
    public String source() {
        return source;
    }

    private void requireThickness(double thickness) {
        Require.positive(thickness, "thickness");
        Require.within(thickness, 0, thickestMm * MM * (1 + ROUNDING), "thickness of " + name());
    }
}
