package cradlewright.analysis.load;

import cradlewright.mechanics.coupled.Condensed;
import cradlewright.mechanics.coupled.Flexibility;
import cradlewright.mechanics.coupled.UnitAction;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Map;

/**
 * A dolly whose fixtures were measured while it stood empty on its castors or feet. What it sags by itself is in those heights already,
 * so its movement counts from there wherever something stands on it; on the floor nothing changes. Its loads, and so the forces in its
 * members, stay whole. Own derivation, checked by the closed form of two rails.
 *
 * @param dolly the dolly under the loads that are asked about
 * @param empty the same under its own weight
 * @param onFloor what each castor or foot carries then, N by contact
 */
record MeasuredStanding(Flexibility dolly, Flexibility empty, Map<String, Double> onFloor) implements Flexibility {

    /** Copies the map. */
    MeasuredStanding {
        onFloor = Map.copyOf(onFloor);
    }

    @Override
    public Condensed condense(List<UnitAction> actions) {
        Condensed loaded = dolly.condense(actions);
        double[][] compliance = loaded.compliance();
        double[] sag = loaded.sag();
        double[] sagOfEmpty = empty.condense(actions).sag();
        for (int i = 0; i < sag.length; i++) {
            if (!onFloor.containsKey(actions.get(i).contact())) {
                double there = sagOfEmpty[i];
                for (int j = 0; j < sag.length; j++) {
                    there += compliance[i][j] * fromFloor(actions.get(j));
                }
                sag[i] -= there;
            }
        }
        return new Condensed(compliance, sag);
    }

    private double fromFloor(UnitAction action) {
        return action.direction().equals(Vec3.UP) ? onFloor.getOrDefault(action.contact(), 0.0) : 0;
    }

    @Override
    public ForceMoment loads() {
        return dolly.loads();
    }
}
