package cradlewright.analysis.checks.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.testshop.VisitShop;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Overdue gear stops the car that stands on it, and only gear in use is asked about. */
class GearInUseCheckTest {

    private static List<Finding> ask(Optional<LocalDate> due, String used) {
        Examination examination = new Examination(Optional.empty(), Optional.empty(), due);
        VisitShop shop = new VisitShop(CarrierKind.STANDS).with(new GearFacts.Trestle("trestle", "trestle", examination, Optional.empty()))
                .with(new GearFacts.Trestle("spare", "spare trestle", new Examination(Optional.empty(), Optional.empty(),
                        Optional.of(VisitShop.TODAY.minusYears(1))), Optional.empty()));
        shop.touch("1L").at(0, 0, 0).on(used);
        return shop.ask(new GearInUseCheck(), VisitShop.VISIT);
    }

    @Test
    void holdsUpToTheDayItself() {
        List<Finding> findings = ask(Optional.of(VisitShop.TODAY), "trestle");
        assertEquals(List.of(Verdict.HOLDS), findings.stream().map(Finding::verdict).toList());
    }

    @Test
    void stopsTheDayAfter() {
        List<Finding> findings = ask(Optional.of(VisitShop.TODAY.minusDays(1)), "trestle");
        assertEquals(List.of(Verdict.STOP), findings.stream().map(Finding::verdict).toList());
        assertTrue(findings.get(0).words().contains("2025-03-13"), findings.get(0).words());
    }

    @Test
    void leavesMissingDatesToTheGearItself() {
        assertEquals(List.of(), ask(Optional.empty(), "trestle"));
    }
}
