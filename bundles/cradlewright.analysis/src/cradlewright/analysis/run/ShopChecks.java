package cradlewright.analysis.run;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.engine.AfterChange;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.Change;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Asks the checks of a catalogue about the subjects of a shop, working out only what an edit touched. */
public final class ShopChecks {

    private static final Remedy ANY = Remedy.advice("any remedy");

    private final Engine engine;
    private final CheckCatalogue catalogue;

    /** Uses an engine that holds a snapshot, and the checks in force. */
    public ShopChecks(Engine engine, CheckCatalogue catalogue) {
        this.engine = engine;
        this.catalogue = catalogue;
    }

    /**
     * Asks every check about every subject that {@code wanted} lets through.
     *
     * @throws cradlewright.analysis.engine.CancelledException when {@code progress} says so
     */
    public ShopAnswers ask(Predicate<Subject> wanted, Progress progress) {
        List<Subject> subjects = engine.read(new SubjectsKey(), progress).stream().filter(wanted).toList();
        progress.begin(subjects.size());
        List<Finding> findings = new ArrayList<>();
        for (Subject subject : subjects) {
            for (Check check : catalogue.of(subject.scope())) {
                findings.addAll(engine.read(new FindingsKey(check, subject), progress));
            }
            progress.step(subject.label());
        }
        return new ShopAnswers(engine.snapshot().number(), engine.snapshot().name(), subjects, findings);
    }

    /**
     * Tries what to do about the answers of a run on changed records, asking all checks of everybody whom a change touches: answers that
     * come out of this engine and these checks, of the same snapshot, in whole or in part.
     *
     * @return the same answers with their remedies tried
     * @throws cradlewright.analysis.engine.CancelledException when {@code progress} says so
     */
    public ShopAnswers prove(ShopAnswers answers, Progress progress) {
        List<Subject> open = answers.findings().stream().filter(ShopChecks::open).map(Finding::subject).distinct().toList();
        progress.begin(open.size());
        Map<Finding, List<Remedy>> remedies = new HashMap<>();
        for (Subject subject : open) {
            List<Finding> proven = engine.read(new ProvenKey(catalogue, subject), progress);
            proven.forEach(finding -> remedies.put(bare(finding), finding.remedies()));
            progress.step("what to do, " + subject.label());
        }
        List<Finding> findings = answers.findings().stream()
                .map(finding -> finding.withRemedies(remedies.getOrDefault(bare(finding), finding.remedies()))).toList();
        return new ShopAnswers(answers.snapshot(), answers.shop(), answers.subjects(), findings);
    }

    /**
     * Returns the changed records on which a remedy of these answers was tried, so that it can be entered as it was tried.
     *
     * @param finding an answer of {@link #prove} for the snapshot that the engine holds
     * @param remedy one of its remedies
     * @return nothing for advice, and for what the answers no longer offer because the shop is another one now
     */
    public Optional<Trial> trial(Finding finding, Remedy remedy, Progress progress) {
        return catalogue.find(finding.check()).stream()
                .flatMap(check -> engine.read(new FindingsKey(check, finding.subject()), progress).stream())
                .filter(asked -> bare(asked).equals(bare(finding)))
                .flatMap(asked -> asked.remedies().stream()).filter(offered -> offered.words().equals(remedy.words()))
                .flatMap(offered -> offered.trial().stream()).findFirst();
    }

    /**
     * Asks every check about every subject that there would be after a change and that {@code wanted} lets through. Nothing of the change
     * stays. What to do is not tried, and missing where it would have to be tried to be found.
     *
     * @return the answers as they would be, under the number of the snapshot that they start from
     * @throws cradlewright.analysis.engine.CancelledException when {@code progress} says so
     */
    public ShopAnswers foresee(Change change, Predicate<Subject> wanted, Progress progress) {
        List<Subject> subjects = engine.read(new AfterChange<>(new SubjectsKey(), change), progress).stream().filter(wanted).toList();
        progress.begin(subjects.size());
        List<Finding> findings = new ArrayList<>();
        for (Subject subject : subjects) {
            findings.addAll(engine.read(new AfterKey(catalogue, subject, change), progress));
            progress.step(subject.label());
        }
        return new ShopAnswers(engine.snapshot().number(), engine.snapshot().name(), subjects, findings);
    }

    /** Returns a finding that is equal for all remedies. Not one without any: a CAN'T SAY may have nothing else to tell. */
    private static Finding bare(Finding finding) {
        return finding.withRemedies(List.of(ANY));
    }

    private static boolean open(Finding finding) {
        return finding.remedies().stream().anyMatch(remedy -> remedy.trial().isPresent());
    }
}
