package cradlewright.analysis.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VisitLoadsTest {

    private static final Situation JOINT = new Situation("joint", Optional.empty(), "joint", Situation.Kind.JOINT, 1.4, Optional.empty(),
            Optional.empty(), 0);

    private static Loads loads(Situation situation, Carried... carried) {
        return new Loads(situation, Loads.Outcome.FOUND, "", List.of(carried), List.of(), List.of(), List.of());
    }

    private static Carried carried(String id, double force, double low, double high) {
        return new Carried(id, id, force, low, high, 0, 0, 0);
    }

    @Test
    void theHighEndGovernsAndContactsAdd() {
        VisitLoads loads = new VisitLoads(List.of(loads(Situation.atRest(), carried("A", 10, 1, 30), carried("B", 20, 15, 25)),
                loads(JOINT, carried("A", 20, 15, 25), carried("B", 24, 20, 29))));
        assertEquals("at rest", loads.most(List.of("A")).orElseThrow().situation().words());
        VisitLoads.Total both = loads.most(List.of("A", "B")).orElseThrow();
        assertEquals(new VisitLoads.Total(Situation.atRest(), 30, 16, 55), both);
        assertEquals(JOINT, loads.without(s -> s.equals(Situation.atRest())).most(List.of("A")).orElseThrow().situation());
        assertEquals(15, loads.meanAtRest(), 1e-12);
        assertTrue(loads.most(List.of("C")).isEmpty());
    }

    @Test
    void whatFallsIsNotUnanswered() {
        Loads falls = Loads.none(JOINT, Loads.Outcome.FALLS, "it falls over");
        Loads broke = Loads.none(JOINT, Loads.Outcome.BROKE_OFF, "did not come to an end");
        assertTrue(new VisitLoads(List.of(falls)).unanswered().isEmpty());
        assertEquals(broke, new VisitLoads(List.of(falls, broke)).unanswered().orElseThrow());
    }
}
