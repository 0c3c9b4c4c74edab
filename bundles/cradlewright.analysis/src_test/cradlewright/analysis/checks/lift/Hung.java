package cradlewright.analysis.checks.lift;

import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.SupportShop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Shells held at three places, so that statics alone give the loads: A and B in front at x -1, C behind at x 1 with half the weight
 * when the balance point lies at x 0.
 */
final class Hung {

    static final double G = 9.80665;

    private Hung() {
    }

    static GearFacts.Strap strap(String id, Optional<Value> limit, GearFacts.Mode mode) {
        return new GearFacts.Strap(id, id, SupportShop.examined(), limit, Optional.empty(), mode, Optional.empty(), OptionalInt.empty());
    }

    /** Returns a strap of that length, m. */
    static GearFacts.Strap strap(String id, double limit, Value length, OptionalInt legs) {
        return new GearFacts.Strap(id, id, SupportShop.examined(), Optional.of(SupportShop.measured(limit)), Optional.of(length),
                GearFacts.Mode.STRAIGHT, Optional.empty(), legs);
    }

    static GearFacts.Hoist hoist() {
        return new GearFacts.Hoist("hoist", "hoist", SupportShop.examined(), Optional.of(SupportShop.measured(2000)), List.of());
    }

    /** Returns places 1 m up with a strap each, just so long that they meet in a hook at that height above the places. */
    static SupportShop onHook(double kilograms, double limit, double hookX, double height, double[][] places) {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(kilograms, 0).balance(hookX, 0, 0.5, 0).has(hoist());
        for (int i = 0; i < places.length; i++) {
            String id = String.valueOf((char) ('A' + i));
            double x = places[i][0] - hookX;
            double length = Math.sqrt(x * x + places[i][1] * places[i][1] + height * height);
            shop.support(id, places[i][0], places[i][1], 1).on("strap-" + id);
            shop.has(strap("strap-" + id, limit, SupportShop.measured(length), OptionalInt.empty()));
        }
        return shop;
    }

    static SupportShop inStraps(double kilograms, double limit, GearFacts.Mode mode) {
        SupportShop shop = new SupportShop(CarrierKind.STRAPS).weighs(kilograms, 0);
        places(shop, "strap-");
        for (String id : List.of("A", "B", "C")) {
            shop.has(strap("strap-" + id, Optional.of(SupportShop.measured(limit)), mode));
        }
        return shop;
    }

    static SupportShop onLift(double kilograms, Optional<Value> lift, Optional<Value> arm) {
        SupportShop shop = new SupportShop(CarrierKind.LIFT).weighs(kilograms, 0);
        places(shop, "arm-");
        List<GearFacts.ArmFacts> arms = new ArrayList<>();
        for (String id : List.of("A", "B", "C", "idle")) {
            arms.add(new GearFacts.ArmFacts("arm-" + id, "arm " + id, Optional.empty(), Optional.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty(),
                    arm, Optional.empty(), Optional.empty()));
        }
        return shop.has(new GearFacts.Lift("lift", "lift", SupportShop.examined(), lift, Optional.empty(), Optional.empty(),
                arms));
    }

    private static void places(SupportShop shop, String holder) {
        shop.support("A", -1, -0.5, 1).on(holder + "A");
        shop.support("B", -1, 0.5, 1).on(holder + "B");
        shop.support("C", 1, 0, 1).on(holder + "C");
    }
}
