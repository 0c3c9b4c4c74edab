package cradlewright.analysis.importer;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.model.base.Shop;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.GearStore;
import cradlewright.model.floor.Floor;
import cradlewright.model.job.JobBook;
import cradlewright.model.stock.Stock;
import cradlewright.model.vehicle.Car;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;

/**
 * Turns the loaded shop into immutable records.
 *
 * <p>Everything is read on the thread that calls, which has to be the one that may touch the model; the records may then go
 * to any thread. Two imports of the same content give equal records. What nobody said stays empty, and so does a reference
 * to something that the shop does not have, except in lists and for what carries a contact: there the id stays, so that a
 * check can tell that something is missing. Records stand in the snapshot by themselves only when they are not part of
 * another one: mounts, parts, visits and the like are found in their car, nodes and castors in their dolly.
 * Only the readings of a car's openings stand beside it, so that a new one leaves what the car itself tells as it was.
 */
public final class ShopImporter {

    private static final String NAMELESS = "shop";

    private ShopImporter() {
    }

    /**
     * Reads the whole shop. Without a {@link Shop} among the roots common practice holds; of two roots of that kind, or two
     * records with one id, the first counts, as it does for the reader of the files.
     *
     * @param roots the top objects of the files, in file order
     * @param today the day the answers are for
     * @param number the number of the snapshot, above that of the one before
     * @throws IllegalArgumentException when a setting of the shop is out of range, naming it, or a root is none of a shop file
     */
    public static ShopSnapshot importShop(Collection<? extends EObject> roots, LocalDate today, long number) {
        return importShop(roots, today, today, number);
    }

    /**
     * Reads the whole shop as it is on another day than that of the clock; the rest as in {@link #importShop(Collection, LocalDate, long)}.
     *
     * @param asked the day the answers are for
     * @param clock the day on which they are asked for: which visit is said to be on now holds up to then
     */
    public static ShopSnapshot importShop(Collection<? extends EObject> roots, LocalDate asked, LocalDate clock, long number) {
        List<Fact> facts = roots.stream().flatMap(root -> importRoot(root).stream()).toList();
        Optional<Shop> shop = roots.stream().filter(Shop.class::isInstance).map(Shop.class::cast).findFirst();
        return snapshot(shop, facts, asked, clock, number);
    }

    /**
     * Puts a snapshot together from records that were read root by root, so that after an edit only the touched roots are read again.
     *
     * @param shop the root with the settings; common practice holds without it
     * @param facts what {@link #importRoot} gave for each root, in file order; of two with one id the first counts
     * @param today the day the answers are for
     * @param number the number of the snapshot, above that of the one before
     * @throws IllegalArgumentException when a setting of the shop is out of range, naming it
     */
    public static ShopSnapshot snapshot(Optional<Shop> shop, Collection<? extends Fact> facts, LocalDate today, long number) {
        return snapshot(shop, facts, today, today, number);
    }

    private static ShopSnapshot snapshot(Optional<Shop> shop, Collection<? extends Fact> facts, LocalDate asked, LocalDate clock,
            long number) {
        Map<String, Fact> byId = new LinkedHashMap<>();
        facts.forEach(fact -> byId.putIfAbsent(fact.id(), fact instanceof CarFacts car ? car.asked(asked, clock) : fact));
        return new ShopSnapshot(number, shop.map(Identity::name).orElse(NAMELESS),
                shop.map(ShopImporter::importSettings).orElseGet(SettingsFacts::commonPractice), asked, byId);
    }

    /**
     * Reads one root, in file order; a {@link Shop} has no records, see {@link #importSettings}.
     *
     * @throws IllegalArgumentException when the root is none of a shop file
     */
    public static List<Fact> importRoot(EObject root) {
        if (root instanceof Shop) {
            return List.of();
        }
        if (root instanceof Stock stock) {
            return stock.getItems().stream().map(StockImporter::item).flatMap(Optional::stream).map(Fact.class::cast).toList();
        }
        if (root instanceof Car car) {
            return Stream.<Fact>concat(Stream.of(CarImporter.car(car)), ApertureImporter.readings(car).stream()).toList();
        }
        if (root instanceof Dolly dolly) {
            return List.of(DollyImporter.dolly(dolly));
        }
        if (root instanceof GearStore gear) {
            return Identity.each(gear.getItems(), GearImporter::gear);
        }
        if (root instanceof Floor floor) {
            return Stream.<List<? extends Fact>>of(Identity.each(floor.getSlabs(), FloorImporter::slab),
                    Identity.each(floor.getPlaces(), FloorImporter::place),
                    Identity.each(floor.getPlacements(), FloorImporter::placement)).<Fact>flatMap(List::stream).toList();
        }
        if (root instanceof JobBook jobs) {
            return JobImporter.book(jobs);
        }
        throw new IllegalArgumentException("a file of a shop has no " + root.eClass().getName() + " at its top");
    }

    /**
     * Reads the settings of the shop; common practice stands in for each that is open.
     *
     * @throws IllegalArgumentException when a setting is out of range, naming it
     */
    public static SettingsFacts importSettings(Shop shop) {
        return SettingsImporter.settings(shop.getSettings());
    }

    /**
     * Returns the roots to read again after an edit in one of them: that one, and all cars after an edit in the stock, because
     * their records hold the thickness of shims from stock.
     *
     * @param touched the root with the edit
     * @param roots all roots of the shop
     */
    public static List<EObject> toReadAgain(EObject touched, Collection<? extends EObject> roots) {
        Stream<EObject> others = roots.stream().filter(root -> root != touched && touched instanceof Stock && root instanceof Car)
                .map(EObject.class::cast);
        return Stream.concat(Stream.of(touched), others).toList();
    }
}
