package cradlewright.ui.warnings;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.report.UnitSystem;
import cradlewright.ui.look.VerdictLook;
import cradlewright.ui.shop.WorstVerdicts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.osgi.util.NLS;

/**
 * Answers about one thing, or of one check, gravest first.
 *
 * @param id car, dolly, gear or check
 * @param title what people read above them
 * @param rows the answers, at least one
 */
record AnswerGroup(String id, String title, List<AnswerRow> rows) {

    AnswerGroup {
        rows = List.copyOf(rows);
    }

    /** Returns the gravest verdict among the rows. */
    Verdict worst() {
        return rows.get(0).finding().verdict();
    }

    /** Returns the answers. */
    List<Finding> findings() {
        return rows.stream().map(AnswerRow::finding).toList();
    }

    /**
     * Gathers answers: groups with the gravest answer first, else in the order of the shop and of the checks.
     *
     * @param wanted verdicts that are shown
     * @param day tells which visits are still to come
     */
    static List<AnswerGroup> gather(ShopAnswers answers, CheckCatalogue catalogue, Gathering gathering, Set<Verdict> wanted,
            WorstVerdicts day, UnitSystem units) {
        Map<String, List<AnswerRow>> rows = new LinkedHashMap<>();
        for (Finding finding : answers.findings()) {
            if (wanted.contains(finding.verdict())) {
                String id = gathering == Gathering.THING ? finding.subject().ownerId() : finding.check();
                List<AnswerRow> group = rows.computeIfAbsent(id, key -> new ArrayList<>());
                boolean planned = finding.subject().visitId().filter(day::planned).isPresent();
                group.add(AnswerRow.of(finding, gathering, thing(answers, finding.subject()), group, planned, units));
            }
        }
        List<AnswerGroup> groups = new ArrayList<>();
        rows.forEach((id, group) -> {
            group.sort(Comparator.comparing((AnswerRow row) -> row.finding().verdict()).reversed());
            Finding first = group.get(0).finding();
            groups.add(new AnswerGroup(id, gathering == Gathering.THING ? title(thing(answers, first.subject()), id, group, day)
                    : catalogue.find(id).map(check -> check.info().title()).orElse(id), group));
        });
        groups.sort(Comparator.comparing(AnswerGroup::worst).reversed());
        return List.copyOf(groups);
    }

    /** The tree and the start page have the word of the day; what is still to come and is counted here, too, is told apart. */
    private static String title(String thing, String id, List<AnswerRow> rows, WorstVerdicts day) {
        Optional<Verdict> later = rows.stream().map(AnswerRow::finding)
                .filter(finding -> finding.subject().visitId().filter(day::planned).isPresent()).map(Finding::verdict)
                .max(Comparator.naturalOrder());
        return later.isEmpty() || day.of(id).isEmpty() ? thing : NLS.bind(Messages.Warnings_days, new Object[] {thing,
            VerdictLook.word(day.of(id).get()), VerdictLook.word(later.get())});
    }

    /** Returns the name of the car, dolly or gear. */
    private static String thing(ShopAnswers answers, Subject subject) {
        return subject.scope() != Scope.VISIT ? subject.label() : answers.subjects().stream()
                .filter(other -> other.scope() == Scope.CAR && other.ownerId().equals(subject.ownerId())).map(Subject::label).findFirst()
                .orElse(subject.label());
    }
}
