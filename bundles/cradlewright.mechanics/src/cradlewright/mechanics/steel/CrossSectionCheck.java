package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.section.Plate;
import cradlewright.mechanics.section.SectionPoint;
import cradlewright.mechanics.section.SectionProperties;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Resistance of a cross-section to EN 1993-1-1 clause 6.2. Forces are design values (already factored).
 *
 * <p>Always on the safe side of the code: the reduction by shear acts on the whole moment resistance, shear by torsion is
 * added in full, all combined by the linear sum. Plastic bending next to compression is used only when the section is of class
 * 1 or 2 in pure compression too. Stress of restrained warping is that of the gross section (EN 1993-1-3 6.1.4, from memory), its
 * largest size added to the largest of the others. Not looked at: holes, web crippling under point loads (EN 1993-1-3 6.1.7),
 * fatigue.
 */
public final class CrossSectionCheck {

    private static final double MOST_SHEAR_REDUCTION = 0.99;
    private static final double ALONG = Math.sqrt(0.5) - 1e-12;

    private final SectionProperties section;
    private final double yield;
    private final double gamma;

    /**
     * Prepares the checks of a section.
     *
     * @param section properties
     * @param yield characteristic yield strength, Pa
     * @param gammaM0 partial factor, from 1 to 2
     */
    public CrossSectionCheck(SectionProperties section, double yield, double gammaM0) {
        this.section = Objects.requireNonNull(section, "section");
        this.yield = Require.positive(yield, "yield strength");
        this.gamma = Require.within(gammaM0, 1, 2, "gamma_M0");
    }

    /** Class in pure compression. */
    public SectionClass compressionClass() {
        return SectionClass.of(section, -1, 0, 0, yield);
    }

    /** Class in bending about y, by the sign of the moment. */
    public SectionClass bendingClassY(double my) {
        return SectionClass.of(section, 0, my < 0 ? -1 : 1, 0, yield);
    }

    /** Class in bending about z, by the sign of the moment. */
    public SectionClass bendingClassZ(double mz) {
        return SectionClass.of(section, 0, 0, mz < 0 ? -1 : 1, yield);
    }

    /**
     * Area that resists an axial force: the gross area in tension and up to class 3, the effective one in class 4, m2.
     *
     * @param n tension positive
     */
    public double axialArea(double n) {
        return n < 0 && compressionClass() == SectionClass.CLASS_4 ? EffectiveSection.compression(section, yield).moments().area()
                : section.area();
    }

    /** Axial resistance, EN 1993-1-1 6.2.3 and 6.2.4, N. See {@link SteelFormulas#AXIAL}. */
    public double axialResistance(double n) {
        return axialArea(n) * yield / gamma;
    }

    /** Modulus for bending about y by class: plastic, elastic or effective, m3. */
    public double modulusY(double my, boolean plasticAllowed) {
        return switch (bendingClassY(my)) {
            case CLASS_1, CLASS_2 -> plasticAllowed ? section.plasticY() : section.elasticY();
            case CLASS_3 -> section.elasticY();
            case CLASS_4 -> EffectiveSection.bending(section, my < 0 ? -1 : 1, 0, yield).modulusY();
        };
    }

    /** Modulus for bending about z by class: plastic, elastic or effective, m3. */
    public double modulusZ(double mz, boolean plasticAllowed) {
        return switch (bendingClassZ(mz)) {
            case CLASS_1, CLASS_2 -> plasticAllowed ? section.plasticZ() : section.elasticZ();
            case CLASS_3 -> section.elasticZ();
            case CLASS_4 -> EffectiveSection.bending(section, 0, mz < 0 ? -1 : 1, yield).modulusZ();
        };
    }

    /** Moment resistance about y without shear and axial force, 6.2.5, N*m. See {@link SteelFormulas#BENDING}. */
    public double bendingResistanceY(double my) {
        return modulusY(my, true) * yield / gamma;
    }

    /** Moment resistance about z without shear and axial force, 6.2.5, N*m. See {@link SteelFormulas#BENDING}. */
    public double bendingResistanceZ(double mz) {
        return modulusZ(mz, true) * yield / gamma;
    }

    /** Shear resistance along y, 6.2.6 with shear buckling, N. See {@link SteelFormulas#SHEAR}. */
    public double shearResistanceY() {
        return shearResistance(section.shearY().plastic(), false);
    }

    /** Shear resistance along z, 6.2.6 with shear buckling, N. See {@link SteelFormulas#SHEAR}. */
    public double shearResistanceZ() {
        return shearResistance(section.shearZ().plastic(), true);
    }

    private double shearResistance(double area, boolean alongZ) {
        double reduction = 1;
        for (Plate plate : section.plates()) {
            double run = alongZ ? plate.tip().z() - plate.root().z() : plate.tip().y() - plate.root().y();
            if (plate.kind() == Plate.Kind.INTERNAL && Math.abs(run) >= ALONG * plate.width()) {
                reduction = Math.min(reduction, PlateBuckling.shearReduction(plate, yield));
            }
        }
        return reduction * area * shearStrength();
    }

    private double shearStrength() {
        return yield / Math.sqrt(3) / gamma;
    }

    /** Torque at which the largest Saint-Venant shear stress reaches yield, N*m. See {@link SteelFormulas#TORSION}. */
    public double torsionResistance() {
        return section.torsion().modulus() * shearStrength();
    }

    /**
     * Share rho by which shear takes strength away: (2 V/V_pl - 1)2 above one half, EN 1993-1-1 6.2.8.
     *
     * @param shareOfShear V over its resistance, not below zero; values above 1 count as 1, the shear check fails there
     * @see SteelFormulas#SHEAR_REDUCTION
     */
    public static double shearReduction(double shareOfShear) {
        double share = Math.min(1, Require.notNegative(shareOfShear, "V over V_pl"));
        return share <= 0.5 ? 0 : (2 * share - 1) * (2 * share - 1);
    }

    /**
     * All checks for one set of forces: axial force, bending, shear (with the torsion added), torsion, linear sum, and, when
     * there is a torque, the yield criterion, which is then the only one that joins torsion with bending.
     *
     * @return in this order; checks without demand are included with ratio 0
     * @throws IllegalArgumentException for a tube of class 4 in compression or bending
     */
    public List<Utilisation> check(MemberForces forces) {
        Objects.requireNonNull(forces, "forces");
        double torsion = shearByTwist(forces) / shearStrength();
        double shearY = Math.abs(forces.vy()) / shearResistanceY() + (forces.vy() == 0 ? 0 : torsion);
        double shearZ = Math.abs(forces.vz()) / shearResistanceZ() + (forces.vz() == 0 ? 0 : torsion);
        boolean plastic = forces.n() >= 0 || compressionClass().compareTo(SectionClass.CLASS_2) <= 0;
        ShiftedMoments moments = shiftedMoments(forces);
        double strengthY = yield / gamma * (1 - Math.min(MOST_SHEAR_REDUCTION, shearReduction(shearZ)));
        double strengthZ = yield / gamma * (1 - Math.min(MOST_SHEAR_REDUCTION, shearReduction(shearY)));
        Utilisation axial = new Utilisation(SteelFormulas.AXIAL.id(), forces.n() < 0 ? "compression" : "tension",
                Math.abs(forces.n()), axialResistance(forces.n()), "N", "EN 1993-1-1 6.2.3, 6.2.4");
        Utilisation bendingY = new Utilisation(SteelFormulas.BENDING.id(), "bending about y", moments.y,
                weakerY(forces, plastic) * strengthY, "N*m", "EN 1993-1-1 6.2.5, 6.2.8");
        Utilisation bendingZ = new Utilisation(SteelFormulas.BENDING.id(), "bending about z", moments.z,
                weakerZ(forces, plastic) * strengthZ, "N*m", "EN 1993-1-1 6.2.5, 6.2.8");
        List<Utilisation> result = new ArrayList<>(List.of(axial, bendingY, bendingZ,
                shear("shear along y", shearY, shearResistanceY()), shear("shear along z", shearZ, shearResistanceZ()),
                new Utilisation(SteelFormulas.TORSION.id(), "torsion", torsion * torsionResistance(), torsionResistance(), "N*m",
                        "EN 1993-1-1 6.2.7"),
                new Utilisation(SteelFormulas.LINEAR_SUM.id(), "axial force and bending together",
                        axial.ratio() + bendingY.ratio() + bendingZ.ratio(), 1, "-", "EN 1993-1-1 6.2.1(7)")));
        if (forces.t() != 0 || forces.b() != 0) {
            result.add(yieldCriterion(forces));
        }
        return List.copyOf(result);
    }

    /** Largest shear stress of uniform torsion and of warping, added, Pa. */
    private double shearByTwist(MemberForces forces) {
        double uniform = Math.abs(forces.t()) / section.torsion().modulus();
        return forces.tw() == 0 ? uniform : uniform + Math.abs(forces.tw()) / warping(section.torsion().warpingShear());
    }

    /** Largest normal stress of restrained warping, Pa. See {@link SteelFormulas#WARPING_TORSION}. */
    private double normalByTwist(MemberForces forces) {
        return forces.b() == 0 ? 0 : Math.abs(forces.b()) / warping(section.torsion().warpingModulus());
    }

    private double warping(double modulus) {
        return Require.positive(modulus, "warping modulus of " + section.name() + ", on which a bimoment acts,");
    }

    private static Utilisation shear(String what, double share, double resistance) {
        return new Utilisation(SteelFormulas.SHEAR.id(), what, share * resistance, resistance, "N", "EN 1993-1-1 6.2.6, 6.2.7");
    }

    /** The check with the largest ratio. */
    public Utilisation governing(MemberForces forces) {
        Utilisation worst = null;
        for (Utilisation u : check(forces)) {
            worst = worst == null || u.ratio() > worst.ratio() ? u : worst;
        }
        return worst;
    }

    /**
     * Elastic yield criterion, 6.2.1(5), written as von Mises stress over design yield so that it is linear in the load: the
     * largest normal stress, that of warping added, joined with the sum of the largest shear stresses, also when they lie at
     * different points. In
     * class 4 the normal stress comes from the linear sum on effective sections.
     *
     * @see SteelFormulas#YIELD_CRITERION
     */
    public Utilisation yieldCriterion(MemberForces forces) {
        double normal = (slender(forces) ? effectiveNormal(forces) : largestNormal(forces)) + normalByTwist(forces);
        double shear = Math.abs(forces.vy()) / section.shearY().elastic() + Math.abs(forces.vz()) / section.shearZ().elastic()
                + shearByTwist(forces);
        return new Utilisation(SteelFormulas.YIELD_CRITERION.id(), "von Mises stress",
                YieldCriterion.vonMises(normal, 0, shear), yield / gamma, "Pa", "EN 1993-1-1 6.2.1(5)");
    }

    private boolean slender(MemberForces forces) {
        return slenderCompression(forces)
                || forces.my() != 0 && bendingClassY(forces.my()) == SectionClass.CLASS_4
                || forces.mz() != 0 && bendingClassZ(forces.mz()) == SectionClass.CLASS_4;
    }

    private double largestNormal(MemberForces forces) {
        double largest = 0;
        for (SectionPoint point : section.outline()) {
            largest = Math.max(largest, Math.abs(section.moments().stress(point, forces.n(), forces.my(), forces.mz())));
        }
        return largest;
    }

    private double effectiveNormal(MemberForces forces) {
        ShiftedMoments moments = shiftedMoments(forces);
        return Math.abs(forces.n()) / axialArea(forces.n()) + moments.y / weakerY(forces, false)
                + moments.z / weakerZ(forces, false);
    }

    private record ShiftedMoments(double y, double z) {
    }

    /** Sizes of the moments, with the shift of the centroid under compression added, 6.2.9.3; never taken as a relief. */
    private ShiftedMoments shiftedMoments(MemberForces forces) {
        if (!slenderCompression(forces)) {
            return new ShiftedMoments(Math.abs(forces.my()), Math.abs(forces.mz()));
        }
        EffectiveSection effective = EffectiveSection.compression(section, yield);
        return new ShiftedMoments(Math.abs(forces.my()) + Math.abs(forces.n() * effective.shiftZ()),
                Math.abs(forces.mz()) + Math.abs(forces.n() * effective.shiftY()));
    }

    private boolean slenderCompression(MemberForces forces) {
        return forces.n() < 0 && compressionClass() == SectionClass.CLASS_4;
    }

    /** Modulus about y; under a shift of the centroid the weaker of both signs, as the shift may decide the sign. */
    private double weakerY(MemberForces forces, boolean plastic) {
        return slenderCompression(forces) ? Math.min(modulusY(1, plastic), modulusY(-1, plastic))
                : modulusY(forces.my(), plastic);
    }

    private double weakerZ(MemberForces forces, boolean plastic) {
        return slenderCompression(forces) ? Math.min(modulusZ(1, plastic), modulusZ(-1, plastic))
                : modulusZ(forces.mz(), plastic);
    }
}
