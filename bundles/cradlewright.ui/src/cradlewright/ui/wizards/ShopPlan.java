package cradlewright.ui.wizards;

import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.FileRoot;
import cradlewright.model.base.Named;
import cradlewright.model.base.Shop;
import cradlewright.model.base.Units;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.floor.Floor;
import cradlewright.model.floor.FloorFactory;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.SaveOutcome;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.job.JobBook;
import cradlewright.model.job.JobFactory;
import cradlewright.model.job.Person;
import cradlewright.model.stock.StockFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import org.eclipse.osgi.util.NLS;

/**
 * A shop that is to be: with empty stock, lifting gear and floor, and the people who work there.
 *
 * @param name what it is called
 * @param units in which its people think
 * @param zone whose clock it goes by
 * @param people their names
 */
record ShopPlan(String name, Units units, ZoneId zone, List<String> people) {

    ShopPlan {
        people = List.copyOf(people);
    }

    /**
     * Writes the files of the shop into a folder, which is made when it is not there.
     *
     * @throws IOException when there is a shop already, or the disk does not take it
     */
    void write(Path folder) throws IOException {
        if (Files.exists(folder.resolve(FileKind.SHOP.path("")))) {
            throw new IOException(NLS.bind(Messages.Shop_there, folder));
        }
        ShopFolder made = new ShopFolder(folder);
        ShopStack stack = new ShopStack(made, new ShopWriter(made, Clock.systemUTC()));
        IdSource ids = IdSource.secure();
        Shop shop = named(BaseFactory.eINSTANCE.createShop(), name, ids);
        shop.setUnits(units);
        shop.setZone(zone.getId());
        shop.setSettings(BaseFactory.eINSTANCE.createSettings());
        Floor floor = named(FloorFactory.eINSTANCE.createFloor(), NLS.bind(Messages.Shop_floor, name), ids);
        JobBook jobs = JobFactory.eINSTANCE.createJobBook();
        for (String person : people) {
            Person one = named(JobFactory.eINSTANCE.createPerson(), person, ids);
            jobs.getPeople().add(one);
        }
        save(stack, FileKind.STOCK, StockFactory.eINSTANCE.createStock());
        save(stack, FileKind.GEAR, FixtureFactory.eINSTANCE.createGearStore());
        save(stack, FileKind.FLOOR, floor);
        save(stack, FileKind.JOBS, jobs);
        // This file makes the folder a shop, so it comes last: a folder that the disk took only in part is none.
        save(stack, FileKind.SHOP, shop);
    }

    private static <T extends Named> T named(T object, String name, IdSource ids) {
        object.setName(name);
        return ids.give(object);
    }

    private static void save(ShopStack stack, FileKind kind, FileRoot root) throws IOException {
        SaveOutcome outcome = stack.save(stack.add(kind, "", root));
        if (outcome.kind() != SaveOutcome.Kind.SAVED) {
            throw new IOException(outcome.message());
        }
    }
}
