package cradlewright.analysis.lookup;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.facts.WeighingFacts;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.LoadsKey;
import cradlewright.analysis.load.SituationsKey;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.analysis.standing.Support;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Every support and body mount of that name, of all cars: those held at a visit that is on today first, then body mounts that nothing
 * holds today.
 *
 * @param name what people call it, for example {@code 4L}; capital letters do not matter
 */
public record SupportCardsKey(String name) implements Key<List<SupportCard>> {

    /** Takes blanks around the name away. */
    public SupportCardsKey {
        name = name.strip();
    }

    /** Returns the names that can be asked for, in the order of the files. */
    public static List<String> names(Stream<CarFacts> cars) {
        return cars.flatMap(car -> Stream.concat(car.mounts().stream(), car.setups().stream()
                .flatMap(setup -> setup.contacts().stream()))).map(Fact::name).distinct().toList();
    }

    @Override
    public List<SupportCard> compute(Reader reader) {
        LocalDate today = reader.read(new TodayKey());
        List<SupportCard> held = new ArrayList<>();
        List<SupportCard> free = new ArrayList<>();
        for (String id : reader.read(new IdsKey<>(CarFacts.class))) {
            reader.read(new FactKey<>(CarFacts.class, id)).ifPresent(car -> {
                Set<String> seen = new HashSet<>();
                car.visitsOn(today).forEach(visit -> held.addAll(at(car, visit, seen, reader)));
                car.mounts().stream().filter(mount -> named(mount.name()) && !seen.contains(mount.id()))
                        .forEach(mount -> free.add(new SupportCard(car, mount.name(), Optional.of(mount), Optional.empty(), List.of(),
                                stock(Optional.of(mount), Optional.empty(), reader))));
            });
        }
        held.addAll(free);
        return List.copyOf(held);
    }

    private boolean named(String other) {
        return other.strip().equalsIgnoreCase(name);
    }

    private List<SupportCard> at(CarFacts car, VisitFacts visit, Set<String> seen, Reader reader) {
        Optional<Standing> standing = reader.read(new StandingKey(car.id(), visit.id()));
        List<Support> supports = standing.map(Standing::supports).orElse(List.of()).stream().filter(this::named).toList();
        if (supports.isEmpty()) {
            return List.of();
        }
        List<Loads> loads = reader.read(new SituationsKey(car.id(), visit.id())).stream()
                .map(situation -> reader.read(new LoadsKey(car.id(), visit.id(), situation, false))).toList();
        List<SupportCard> cards = new ArrayList<>();
        for (Support support : supports) {
            support.mount().ifPresent(mount -> seen.add(mount.id()));
            cards.add(card(standing.get(), support, loads, reader));
        }
        return cards;
    }

    private boolean named(Support support) {
        return named(support.name()) || support.mount().filter(mount -> named(mount.name())).isPresent()
                || support.liftPoint().filter(point -> named(point.name())).isPresent();
    }

    private static SupportCard card(Standing standing, Support support, List<Loads> loads, Reader reader) {
        CarFacts car = standing.car();
        List<WeighingFacts> weighings = car.weighings().stream()
                .filter(weighing -> weighing.stageId().filter(standing.stage().id()::equals).isPresent()).toList();
        return new SupportCard(car, support.name(), support.mount(), Optional.of(new SupportCard.Held(standing.visit(), support,
                carrier(standing), SupportLoads.of(support.contactId(), loads))), weighings,
                stock(support.mount(), Optional.of(support), reader));
    }

    private static String carrier(Standing standing) {
        return standing.dolly().map(Fact::name).or(() -> standing.lift().map(Fact::name)).or(() -> standing.hoist().map(Fact::name))
                .orElse("");
    }

    /** Returns the names of bolts and shims; the pad is part of the support. */
    private static Map<String, String> stock(Optional<MountFacts> mount, Optional<Support> support, Reader reader) {
        Stream<String> bolts = Stream.concat(mount.flatMap(MountFacts::boltId).stream(),
                support.flatMap(Support::fixture).flatMap(FixtureFacts::boltId).stream());
        Stream<String> shims = Stream.of(mount.flatMap(MountFacts::asFound), mount.flatMap(MountFacts::onDolly),
                mount.flatMap(MountFacts::asBuilt), support.flatMap(Support::shims)).flatMap(Optional::stream)
                .flatMap(stack -> stack.shims().stream()).flatMap(shim -> shim.stockId().stream());
        Map<String, String> names = new HashMap<>();
        Stream.concat(bolts, shims).forEach(id -> reader.read(new FactKey<>(StockFacts.class, id))
                .ifPresent(item -> names.put(id, item.name())));
        return names;
    }
}
