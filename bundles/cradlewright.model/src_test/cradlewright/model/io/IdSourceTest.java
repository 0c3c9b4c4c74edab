package cradlewright.model.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.model.vehicle.VehicleFactory;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Ids are long enough, made of characters that survive in files, and come from the given generator only. */
class IdSourceTest {

    @Test
    void holdsAtLeastSixtyRandomBits() {
        IdSource ids = new IdSource(new Random(1));
        Set<String> seen = new HashSet<>();
        int length = ids.next().length();
        Set<Set<Character>> used = new HashSet<>();
        for (int place = 0; place < length; place++) {
            Set<Character> here = new HashSet<>();
            for (int i = 0; i < 2_000; i++) {
                String id = ids.next();
                seen.add(id);
                here.add(id.charAt(place));
            }
            used.add(here);
        }
        assertEquals(2_000 * length, seen.size());
        double bits = length * Math.log(used.iterator().next().size()) / Math.log(2);
        assertTrue(used.size() == 1 && bits >= 60, "bits: " + bits);
    }

    @Test
    void sameGeneratorGivesSameIds() {
        IdSource one = new IdSource(new Random(7));
        IdSource twin = new IdSource(new Random(7));
        IdSource other = new IdSource(new Random(8));
        for (int i = 0; i < 10; i++) {
            String id = one.next();
            assertEquals(id, twin.next());
            assertNotEquals(id, other.next());
        }
    }

    @Test
    void nameHasNoPartInIt() {
        var one = VehicleFactory.eINSTANCE.createPart();
        one.setName("bonnet");
        var other = VehicleFactory.eINSTANCE.createPart();
        other.setName("boot lid");
        assertEquals(new IdSource(new Random(7)).give(one).getId(), new IdSource(new Random(7)).give(other).getId());
    }
}
