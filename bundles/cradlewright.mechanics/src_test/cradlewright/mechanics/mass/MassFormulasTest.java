package cradlewright.mechanics.mass;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MassFormulasTest {

    @Test
    void formulasAreNamedOnce() {
        Set<String> ids = new HashSet<>();
        MassFormulas.all().forEach(f -> assertTrue(ids.add(f.id()) && f.id().startsWith("mass."), f.id()));
    }
}
