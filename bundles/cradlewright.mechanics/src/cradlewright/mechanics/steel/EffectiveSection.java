package cradlewright.mechanics.steel;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.section.AreaMoments;
import cradlewright.mechanics.section.Plate;
import cradlewright.mechanics.section.SectionPoint;
import cradlewright.mechanics.section.SectionProperties;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What remains of a class 4 section when the buckled strips of its flat parts are left out. Stress ratios follow the
 * effective section, repeated until nothing changes; the worst edge of every part is taken at yield, the safe side.
 *
 * @param gross the whole section
 * @param moments area, centroid and second moments of the effective section
 * @param strips what was left out
 * @see SteelFormulas#EFFECTIVE_WIDTH
 */
public record EffectiveSection(SectionProperties gross, AreaMoments moments, List<Strip> strips) {

    private static final int ROUNDS = 200;
    private static final double STILL = 1e-11;

    /**
     * A strip that is left out.
     *
     * @param from one end of the strip on the midline
     * @param to the other end
     * @param thickness m
     */
    public record Strip(SectionPoint from, SectionPoint to, double thickness) {
    }

    /** Copies the strips. */
    public EffectiveSection {
        strips = List.copyOf(strips);
    }

    /**
     * Effective section under uniform compression.
     *
     * @throws IllegalArgumentException for a tube of class 4, which EN 1993-1-1 does not cover
     */
    public static EffectiveSection compression(SectionProperties section, double yield) {
        List<Strip> strips = new ArrayList<>();
        for (Plate plate : section.plates()) {
            strip(plate, PlateStress.uniform(), yield).ifPresent(strips::add);
        }
        return new EffectiveSection(section, without(section.moments(), strips), strips);
    }

    /**
     * Effective section in bending.
     *
     * @param section gross section
     * @param my share and sign of the moment about y
     * @param mz share and sign of the moment about z
     * @param yield Pa
     * @throws IllegalArgumentException for a tube of class 4, or no moment at all
     * @throws IllegalStateException when the rounds do not settle
     */
    public static EffectiveSection bending(SectionProperties section, double my, double mz, double yield) {
        Require.positive(Math.hypot(my, mz), "moment that bends the section");
        AreaMoments moments = section.moments();
        for (int round = 0; round < ROUNDS; round++) {
            List<Strip> strips = new ArrayList<>();
            for (Plate plate : section.plates()) {
                PlateStress stress = plate.kind() == Plate.Kind.TUBE ? PlateStress.uniform()
                        : new PlateStress(-moments.stress(plate.root(), 0, my, mz), -moments.stress(plate.tip(), 0, my, mz));
                strip(plate, stress, yield).ifPresent(strips::add);
            }
            AreaMoments next = without(section.moments(), strips);
            double change = Math.abs(next.iy() - moments.iy()) / section.iy() + Math.abs(next.iz() - moments.iz()) / section.iz();
            if (change < STILL) {
                return new EffectiveSection(section, next, strips);
            }
            moments = next;
        }
        throw new IllegalStateException("effective widths of " + section.name() + " do not settle after " + ROUNDS + " rounds");
    }

    /** Shift of the centroid along y against the gross section, m. */
    public double shiftY() {
        return moments.centroidY() - gross.moments().centroidY();
    }

    /** Shift of the centroid along z against the gross section, m. */
    public double shiftZ() {
        return moments.centroidZ() - gross.moments().centroidZ();
    }

    /** Effective modulus for a moment about y: moment over the largest stress at the outline, m3. */
    public double modulusY() {
        return SectionProperties.elasticModulus(moments, gross.outline(), 1, 0);
    }

    /** Effective modulus for a moment about z, m3. */
    public double modulusZ() {
        return SectionProperties.elasticModulus(moments, gross.outline(), 0, 1);
    }

    private static Optional<Strip> strip(Plate plate, PlateStress stress, double yield) {
        if (plate.kind() == Plate.Kind.TUBE) {
            if (SectionClass.of(plate, stress, yield) == SectionClass.CLASS_4) {
                throw new IllegalArgumentException(
                        "tube wall with d/t " + plate.slenderness() + " is class 4: shells of EN 1993-1-6 are not covered");
            }
            return Optional.empty();
        }
        double rho = PlateBuckling.reduction(plate, stress, yield);
        if (rho >= 1) {
            return Optional.empty();
        }
        double psi = stress.psi();
        double zone = psi < 0 ? 1 / (1 - psi) : 1;
        double kept = rho * zone;
        // shares of the width, counted from the more compressed end
        double from;
        double to;
        if (plate.kind() == Plate.Kind.INTERNAL) {
            double first = psi < 0 ? 0.4 : 2 / (5 - psi);
            from = first * kept;
            to = zone - (1 - first) * kept;
        } else if (stress.tipLeads()) {
            from = 0;
            to = zone - kept;
        } else {
            from = kept;
            to = zone;
        }
        boolean fromTip = stress.tipLeads();
        return Optional.of(new Strip(plate.at(fromTip ? 1 - from : from), plate.at(fromTip ? 1 - to : to), plate.thickness()));
    }

    private static AreaMoments without(AreaMoments gross, List<Strip> strips) {
        double area = gross.area();
        double firstY = 0;
        double firstZ = 0;
        double iy = gross.iy();
        double iz = gross.iz();
        double iyz = gross.iyz();
        for (Strip strip : strips) {
            double length = strip.from().distance(strip.to());
            double dy = (strip.to().y() - strip.from().y()) / length;
            double dz = (strip.to().z() - strip.from().z()) / length;
            double y = (strip.from().y() + strip.to().y()) / 2 - gross.centroidY();
            double z = (strip.from().z() + strip.to().z()) / 2 - gross.centroidZ();
            double a = length * strip.thickness();
            double along = a * length * length / 12;
            double across = a * strip.thickness() * strip.thickness() / 12;
            area -= a;
            firstY -= a * y;
            firstZ -= a * z;
            iy -= along * dz * dz + across * dy * dy + a * z * z;
            iz -= along * dy * dy + across * dz * dz + a * y * y;
            iyz -= (along - across) * dy * dz + a * y * z;
        }
        double shiftY = firstY / area;
        double shiftZ = firstZ / area;
        return new AreaMoments(area, gross.centroidY() + shiftY, gross.centroidZ() + shiftZ, iy - area * shiftZ * shiftZ,
                iz - area * shiftY * shiftY, iyz - area * shiftY * shiftZ);
    }
}
