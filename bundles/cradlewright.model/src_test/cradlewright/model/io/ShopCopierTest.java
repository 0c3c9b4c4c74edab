package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.base.Identified;
import cradlewright.model.job.Operation;
import cradlewright.model.vehicle.Car;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Copies never share an id with what they were copied from, and nobody copies in another way. */
class ShopCopierTest {

    private static final Pattern OTHER_COPIES = Pattern.compile("EcoreUtil\\s*\\.\\s*copy"
            + "|EcoreUtil\\s*\\.\\s*Copier|new\\s+Copier\\b"
            + "|import static org\\.eclipse\\.emf\\.ecore\\.util\\.EcoreUtil");

    private final ShopFolder shop = SampleShop.build(Path.of("nowhere"));
    private final ShopCopier copier = new ShopCopier(new IdSource(new Random(99)));

    private static Set<String> ids(Car car) {
        Set<String> ids = new HashSet<>();
        Contents.walk(car, object -> {
            if (object instanceof Identified identified) {
                assertTrue(ids.add(identified.getId()), "twice: " + identified.getId());
            }
        });
        return ids;
    }

    @Test
    void everyCopyHasAnIdOfItsOwn() {
        Car car = shop.cars().get(0);
        Set<String> before = ids(car);
        Set<String> all = new HashSet<>(before);
        Set<String> copied = ids(copier.copy(car));
        all.addAll(copied);
        assertEquals(before.size(), copied.size());
        assertEquals(2 * before.size(), all.size());
        assertEquals(before, ids(car));
    }

    @Test
    void referencesInsidePointToTheCopyAndThoseOutsideStay() {
        Car car = shop.cars().get(0);
        Car copy = copier.copy(car);
        assertSame(copy.getPieces().get(0).getParts().get(0), copy.getStages().get(0).getOn().get(1));
        assertSame(car.getSetups().get(0).getDolly(), copy.getSetups().get(0).getDolly());
        assertNull(copy.eResource());
    }

    @Test
    void objectsCopiedTogetherReferToEachOther() {
        List<Operation> operations = shop.jobs().orElseThrow().getJobs().get(0).getOperations();
        List<Operation> copies = copier.copyAll(operations);
        assertSame(copies.get(0), copies.get(1).getAfter().get(0));
        assertNotEquals(operations.get(0).getId(), copies.get(0).getId());
    }

    private static boolean isWrittenByHandAndShipped(Path file) {
        String path = file.toString().replace('\\', '/');
        return path.endsWith(".java") && path.contains("/src/");
    }

    @Test
    void nobodyElseCopiesObjects() throws IOException {
        int sources = 0;
        try (Stream<Path> files = Files.walk(Path.of("").toAbsolutePath().getParent())) {
            for (Path file : files.filter(ShopCopierTest::isWrittenByHandAndShipped).toList()) {
                String name = file.getFileName().toString();
                sources++;
                if (!name.equals("ShopCopier.java")) {
                    assertTrue(!OTHER_COPIES.matcher(Files.readString(file)).find(), file + " copies objects past ShopCopier");
                }
            }
        }
        assertTrue(sources > 50, "looked in the wrong folder");
    }
}
