package cradlewright.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.mechanics.mass.MassFormulas;
import cradlewright.report.Answers;
import cradlewright.report.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sheet about an answer leaves nothing of it out. */
class FindingSheetTest {

    private static Finding stop() {
        return Answers.all().findings().stream().filter(finding -> finding.verdict() == Verdict.STOP).findFirst().orElseThrow();
    }

    private static Sheet sheet(Finding finding) {
        return new FindingSheet(new CheckCatalogue(List.of()), UnitSystem.METRIC).write(finding);
    }

    private static List<String> rows(Sheet sheet, String head) {
        return sheet.lines().stream().filter(line -> line instanceof Sheet.Row row && row.head().equals(head)).map(Sheet.Line::text)
                .toList();
    }

    @Test
    void tellsReasonNumbersAndWhatToDoWithItsProof() {
        Sheet sheet = sheet(stop());
        assertEquals(new Sheet.Title(Answers.NASTY), sheet.lines().get(0));
        assertEquals(new Sheet.Sentence("STOP. 1L: It gives way & falls."), sheet.lines().get(1));
        assertEquals(List.of("asked 1003 N, can give 1000 N (100.3 %)"), rows(sheet, "numbers"));
        assertEquals(List.of("at rest"), rows(sheet, "when"));
        assertEquals(List.of("Prop it.", "Use the larger one. (then TIGHT, and nothing else gets worse)",
                "Stand it on a plate. (then HOLDS by this check alone; the others were not asked again)"), rows(sheet, "to do"));
        assertEquals(1, rows(sheet, "but then").size());
        assertEquals(List.of("100 kg, weighed"), rows(sheet, "mass <kg>"));
        assertEquals(List.of("plate; common practice, no source [test.check]"), rows(sheet, "rests on"));
    }

    @Test
    void tellsFormulasWithTheirSources() {
        Finding stop = stop();
        Finding with = new Finding(stop.check(), stop.subject(), stop.objectId(), stop.objectName(), stop.verdict(), stop.words(),
                stop.situation(), stop.demand(), stop.capacity(), stop.atLeast(), stop.ratedBy(), stop.clause(), stop.caution(),
                stop.missing(), stop.remedies(), stop.inputs(), List.of(MassFormulas.BALANCE));
        Sheet sheet = sheet(with);
        assertTrue(sheet.lines().contains(new Sheet.Title(MassFormulas.BALANCE.title())));
        assertTrue(sheet.lines().contains(new Sheet.Sentence(MassFormulas.BALANCE.expression())));
        assertEquals(List.of(MassFormulas.BALANCE.source()), rows(sheet, "source"));
        assertEquals(List.of(MassFormulas.BALANCE.limits()), rows(sheet, "limits"));
    }

    @Test
    void tellsWhatTheCheckAsksWhenItIsInForce() {
        assertEquals(List.of(), rows(sheet(stop()), "asks"));
        CheckCatalogue all = BuiltInChecks.catalogue();
        Finding stop = stop();
        Finding known = new Finding("lift.total", stop.subject(), stop.objectId(), stop.objectName(), stop.verdict(), stop.words(), "",
                stop.demand(), stop.capacity(), false, "", stop.clause(), stop.caution(), List.of(), List.of(), List.of(), List.of());
        assertEquals(List.of("Is the lift or hoist rated for all that is on it?"),
                rows(new FindingSheet(all, UnitSystem.METRIC).write(known), "asks"));
    }

    @Test
    void endsWithTheCautions() {
        List<Sheet.Line> lines = sheet(stop()).lines();
        int at = lines.indexOf(new Sheet.Title("Cautions"));
        assertEquals(List.of(new Sheet.Point("Keep off. Stay away.")), lines.subList(at + 1, at + 2));
    }
}
