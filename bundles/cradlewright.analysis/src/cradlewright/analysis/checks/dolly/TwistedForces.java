package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.load.MemberLoad;
import cradlewright.mechanics.frame.InternalForces;
import cradlewright.mechanics.frame.StationForces;
import cradlewright.mechanics.section.TorsionProperties;
import cradlewright.mechanics.steel.MemberForces;
import cradlewright.mechanics.steel.Steel;
import cradlewright.mechanics.steel.TorquePoint;
import cradlewright.mechanics.steel.TwistShares;
import cradlewright.mechanics.steel.WarpingTorsion;
import java.util.ArrayList;
import java.util.List;

/** What a member of an open section carries at its cuts, with its torque split into twist and warping. */
final class TwistedForces {

    /** Parts into which the length between two critical cuts is divided, so that a twist that peaks in between is seen. */
    private static final int PARTS = 4;

    private TwistedForces() {
    }

    /**
     * Returns the forces at the cuts of a member.
     *
     * @param line what the members in line with it carry, in their order, itself among them
     * @param place of the member in that line
     * @param section of all of them; one that warps
     */
    static List<MemberForces> of(List<MemberLoad> line, int place, TorsionProperties section) {
        List<List<StationForces>> cuts = line.stream().map(load -> refined(load.stations())).toList();
        WarpingTorsion.Member member = WarpingTorsion.of(section, Steel.E, Steel.G, cuts.stream().map(TwistedForces::torques).toList())
                .get(place);
        List<MemberForces> plain = cuts.get(place).stream().map(cut -> plain(cut.forces())).toList();
        List<MemberForces> result = new ArrayList<>();
        for (int i = 0; i < plain.size(); i++) {
            TwistShares at = member.at().get(i);
            result.add(plain.get(i).twisted(at));
            if (i < member.between().size() && member.between().get(i) > 0) {
                // A bimoment that peaks between two cuts is joined with the other forces of both.
                TwistShares next = member.at().get(i + 1);
                double peak = member.between().get(i);
                result.add(plain.get(i).twisted(new TwistShares(at.uniform(), at.warping(), peak)));
                result.add(plain.get(i + 1).twisted(new TwistShares(next.uniform(), next.warping(), peak)));
            }
        }
        return result;
    }

    static MemberForces plain(InternalForces f) {
        return new MemberForces(f.n(), f.vy(), f.vz(), f.t(), f.my(), f.mz());
    }

    private static List<TorquePoint> torques(List<StationForces> cuts) {
        return cuts.stream().map(cut -> new TorquePoint(cut.distance(), cut.forces().t())).toList();
    }

    /** Adds cuts between the critical ones, where forces and torque run straight and moments follow from the shear. */
    private static List<StationForces> refined(List<StationForces> critical) {
        List<StationForces> result = new ArrayList<>();
        for (int i = 0; i < critical.size(); i++) {
            result.add(critical.get(i));
            if (i + 1 < critical.size() && critical.get(i + 1).distance() > critical.get(i).distance()) {
                for (int part = 1; part < PARTS; part++) {
                    result.add(between(critical.get(i), critical.get(i + 1), (double) part / PARTS));
                }
            }
        }
        return result;
    }

    private static StationForces between(StationForces from, StationForces to, double share) {
        InternalForces a = from.forces();
        InternalForces b = to.forces();
        double length = to.distance() - from.distance();
        double x = share * length;
        double vy = mix(a.vy(), b.vy(), share);
        double vz = mix(a.vz(), b.vz(), share);
        return new StationForces(from.distance() + x, new InternalForces(mix(a.n(), b.n(), share), vy, vz, mix(a.t(), b.t(), share),
                a.my() + (a.vz() + vz) / 2 * x, a.mz() - (a.vy() + vy) / 2 * x));
    }

    private static double mix(double a, double b, double share) {
        return a + share * (b - a);
    }
}
