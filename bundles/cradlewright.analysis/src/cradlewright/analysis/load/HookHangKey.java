package cradlewright.analysis.load;

import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.analysis.standing.Support;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.quantity.Source;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * How a visit hangs whose straps meet in one hook; nothing where they do not. The length of each leg settles where the hook is. Where a
 * length is not known, a direction of pull does: the hook is above the balance point, so one direction gives its height, and of several
 * the lowest counts, for flat legs pull hardest. More than four legs, two hooks, and supports beside the hook are not worked out.
 *
 * @param carId the car
 * @param visitId the visit
 */
public record HookHangKey(String carId, String visitId) implements Key<Optional<HookHang>> {

    /** Least rise of a direction that still counts as upright: 1 degree, common practice, no source. */
    private static final double UPRIGHT = Math.cos(Math.toRadians(1));
    private static final int MOST_LEGS = 4;

    @Override
    public Optional<HookHang> compute(Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(carId, visitId));
        List<Support> shared = standing.map(HookHangKey::shared).orElse(List.of());
        if (shared.isEmpty()) {
            return Optional.empty();
        }
        Optional<EstimatedBalance> weight = Optional.of(reader.read(new WeightKey(carId, visitId))).flatMap(Weight::estimate);
        boolean oneHook = shared.stream().map(support -> hook(support, standing.get())).distinct().count() == 1;
        if (!oneHook || shared.size() > MOST_LEGS || shared.size() < standing.get().supports().size() || weight.isEmpty()) {
            return Optional.of(HookHang.unknown(slack(shared, standing.get()), directions(shared)));
        }
        List<Optional<Value>> lengths = shared.stream().map(support -> length(support, shared)).toList();
        if (lengths.stream().allMatch(Optional::isPresent)) {
            return Optional.of(new HookSling(weight.get(), shared, lengths.stream().flatMap(Optional::stream).toList()).hang());
        }
        OptionalDouble height = shared.stream().flatMapToDouble(support -> height(support, standing.get().setup(), weight.get()).stream())
                .min();
        if (height.isEmpty()) {
            return Optional.of(HookHang.unknown(slack(shared, standing.get()), lengths(shared, lengths)));
        }
        Vec3 balance = weight.get().balance().point();
        Vec3 hook = new Vec3(balance.x(), balance.y(), height.getAsDouble());
        return Optional.of(new HookSling(weight.get(), shared, shared.stream()
                .map(support -> new Value(hook.minus(support.onCar()).norm(), 0, Source.MEASURED)).toList()).hang());
    }

    /** Returns the question for a standing. */
    public static HookHangKey of(Standing standing) {
        return new HookHangKey(standing.car().id(), standing.visit().id());
    }

    /** Tells whether more than three straps meet in one hook: no more are needed to hold it. */
    private static boolean slack(List<Support> shared, Standing standing) {
        return shared.stream().collect(Collectors.groupingBy(support -> hook(support, standing), Collectors.counting())).values().stream()
                .anyMatch(count -> count > HookSling.HOLD);
    }

    /** Returns the supports whose straps share a hook with another place on the car. */
    private static List<Support> shared(Standing standing) {
        return standing.supports().stream().filter(support -> hook(support, standing).isPresent()
                && standing.supports().stream().filter(other -> hook(other, standing).equals(hook(support, standing))).map(Support::onCar)
                        .distinct().count() > 1).toList();
    }

    /** Returns in which hook the strap at a support hangs: that of a hole of a boom, or the only one of the hoist. */
    private static Optional<String> hook(Support support, Standing standing) {
        SetupFacts setup = standing.setup();
        Optional<String> hole = CarFacts.find(setup.contacts(), support.contactId()).flatMap(ContactFacts::holeId);
        boolean strap = support.holder() instanceof Holder.InStrap;
        // Beside a lift, straps without a hole hang from its arms, each from its own.
        return strap ? hole.or(() -> setup.liftId().isEmpty() ? setup.hoistId() : Optional.empty()) : Optional.empty();
    }

    /** Returns the length of the leg at a support. A choked strap or a basket is shorter than it is long, and so is one at more places. */
    private static Optional<Value> length(Support support, List<Support> shared) {
        if (!(support.holder() instanceof Holder.InStrap in) || in.strap().mode() != GearFacts.Mode.STRAIGHT) {
            return Optional.empty();
        }
        long places = shared.stream().filter(other -> other.holder().equals(support.holder())).count();
        return places <= in.strap().legs().orElse(1) ? in.strap().length().filter(length -> length.low() > 0) : Optional.empty();
    }

    /** Returns at what height the pull at a support passes closest by the upright through the balance point, m, in the axes of the car. */
    private static OptionalDouble height(Support support, SetupFacts setup, EstimatedBalance weight) {
        Vec3 pull = CarFacts.find(setup.contacts(), support.contactId()).map(ContactFacts::normal).orElse(Vec3.UP);
        Vec3 across = weight.balance().point().minus(support.onCar());
        double run = (across.x() * pull.x() + across.y() * pull.y()) / (pull.x() * pull.x() + pull.y() * pull.y());
        return pull.z() > 0 && pull.z() < UPRIGHT && run > 0 ? OptionalDouble.of(support.onCar().z() + run * pull.z())
                : OptionalDouble.empty();
    }

    private static Map<String, List<String>> directions(List<Support> shared) {
        Map<String, List<String>> missing = new HashMap<>();
        for (Support support : shared) {
            if (support.normal().z() >= UPRIGHT) {
                missing.put(support.contactId(), List.of("how far the strap at " + support.name() + " leans: straps that meet in one hook"
                        + " are never upright; enter the direction of its pull, from there to the hook"));
            }
        }
        return missing;
    }

    private static Map<String, List<String>> lengths(List<Support> shared, List<Optional<Value>> lengths) {
        List<String> wanted = new ArrayList<>();
        for (int i = 0; i < shared.size(); i++) {
            Support support = shared.get(i);
            if (lengths.get(i).isEmpty()) {
                boolean straight = support.holder() instanceof Holder.InStrap in && in.strap().mode() == GearFacts.Mode.STRAIGHT
                        && in.strap().length().isEmpty();
                wanted.add(straight ? "length of " + support.holder().name() + ", from the hook to " + support.name()
                        + "; or the direction of one pull, from the lift point to the hook"
                        : "direction of the pull at " + support.name() + ", from there to the hook: as " + support.holder().name()
                        + " is slung, its length does not tell");
            }
        }
        Map<String, List<String>> missing = new HashMap<>();
        shared.forEach(support -> missing.put(support.contactId(), wanted));
        return missing;
    }
}
