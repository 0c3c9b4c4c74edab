package cradlewright.analysis.checks.castor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.checks.Fall;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.testshop.RollingShop;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.mechanics.castor.Brake;
import cradlewright.mechanics.castor.CastorStates;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.Balance;
import cradlewright.mechanics.mass.EstimatedBalance;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Against a search over the whole give or take: points drawn in the ellipsoid, every state on three castors, every direction. */
class WorstBrakesTest {

    private static final long SEED = 20261125L;
    private static final double G = 9.80665;
    private static final double FRICTION = 0.4;
    private static final double[][] CORNERS = {{-0.8, -0.4}, {-0.8, 0.4}, {0.8, -0.5}, {0.8, 0.5}};
    private static final DollyFacts DOLLY = new DollyFacts("d", "d", DollyFacts.Build.OWN, Optional.empty(), Optional.empty(),
            Optional.empty(), SupportShop.examined(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
            Optional.empty());

    private static DollyLoad load(double x, double y, double[] standard, double rated) {
        double[][] covariance = new double[4][4];
        for (int i = 0; i < 4; i++) {
            covariance[i][i] = standard[i] * standard[i];
        }
        EstimatedBalance both = new EstimatedBalance(new Balance(900, new Vec3(x, y, 0.7)), covariance);
        List<DollyLoad.Wheel> wheels = List.of(0, 1, 2, 3).stream().map(i -> new DollyLoad.Wheel(new CastorFacts("c" + i, "c" + i,
                Optional.empty(), Optional.empty(), true, CastorFacts.Brake.WHEEL), new Vec3(CORNERS[i][0], CORNERS[i][1], 0),
                Optional.of(RollingShop.type("t", rated, 0.125)))).toList();
        return new DollyLoad(DOLLY, wheels, both, both);
    }

    private static double ratio(DollyLoad load, double slope, Set<Integer> braked, double rated, double mass, Vec3 at) {
        double angle = Math.atan(slope);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 16; i++) {
            double way = Math.PI * i / 8;
            Vec3 below = at.plus(new Vec3(Math.cos(way), Math.sin(way), 0).times(slope * at.z()));
            for (CastorStates.State state : CastorStates.of(load.castors(), below, mass * G * Math.cos(angle)).states()) {
                double held = braked.stream().mapToDouble(c -> Math.min(FRICTION * state.loads().get(c), 0.2 * rated * G)).sum();
                least = Math.min(least, held / (mass * G * Math.sin(angle)));
            }
        }
        return least;
    }

    @Test
    void nothingWithinTheGiveOrTakeHoldsLess() {
        System.out.println("seed " + SEED);
        Random random = new Random(SEED);
        double slope = 0.03;
        for (int run = 0; run < 12; run++) {
            double x = 0.4 * (random.nextDouble() - 0.5);
            double y = 0.2 * (random.nextDouble() - 0.5);
            double[] standard = {run % 3 == 0 ? 0 : 15, 0.03 * random.nextDouble(), 0.03 * random.nextDouble(), 0.02};
            double rated = run % 2 == 0 ? 1000 : 500;
            Set<Integer> braked = run % 4 == 3 ? Set.of(1, 2, 3) : Set.of(2, 3);
            DollyLoad load = load(x, y, standard, rated);
            double ours = WorstBrakes.of(load, new Fall(slope, true), braked, FRICTION).map(Brake::ratio).orElseThrow();
            double searched = ratio(load, slope, braked, rated, 900, load.balance());
            for (int n = 0; n < 1500; n++) {
                double[] way = random.doubles(4, -1, 1).toArray();
                double far = Math.sqrt(way[0] * way[0] + way[1] * way[1] + way[2] * way[2] + way[3] * way[3]);
                double reach = 2 / far * (n % 4 == 0 ? random.nextDouble() : 1);
                Vec3 at = load.balance().plus(new Vec3(way[1] * standard[1], way[2] * standard[2], way[3] * standard[3]).times(reach));
                searched = Math.min(searched, ratio(load, slope, braked, rated, 900 + way[0] * standard[0] * reach, at));
            }
            // The search ends a little short of the worst, the gradient is that of the middle.
            assertEquals(searched, ours, 0.01 * searched, "run " + run + ", seed " + SEED);
        }
    }

    @Test
    void aLoadThatStandsNowhereHasNoAnswer() {
        assertEquals(Optional.empty(), WorstBrakes.of(load(2, 0, new double[4], 1000), new Fall(0.03, true), Set.of(2, 3), FRICTION));
    }
}
