package cradlewright.analysis.run;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingChange;
import cradlewright.analysis.check.Harm;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Reader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Tries the remedies of one subject on changed records: the check that wants the remedy first and, when that answer becomes milder, every
 * check of everybody whom the change touches. A remedy mends when its own answer becomes HOLDS or at least TIGHT and no other answer gets
 * graver; one that helps here and harms elsewhere is kept with what it harms; one that does not help is left out.
 */
final class RemedyProof {

    /** Changes that are tried for one subject; the same change for several findings counts once. Bounds the time, no other reason. */
    static final int MOST_TRIALS = 16;

    /** The findings of a subject as things are and after a change; those whose question ends with the change stand apart. */
    private record Answers(List<Finding> before, List<Finding> after, List<Finding> ended) {

        List<Harm> harms() {
            List<Harm> harms = new ArrayList<>();
            for (FindingChange change : FindingChange.between(before, after)) {
                switch (change.kind()) {
                    case APPEARS -> change.after().filter(finding -> !onlyElsewhere(finding) && !instead(finding)).map(Harm::of)
                            .ifPresent(harms::add);
                    case WORSE -> harms.add(Harm.of(change.after().orElseThrow()));
                    case UNANSWERED -> change.before().filter(finding -> of(finding.check(), after).isEmpty()).map(Harm::unanswered)
                            .ifPresent(harms::add);
                    case CLOSER -> change.after().filter(finding -> finding.verdict() == Verdict.STOP).map(Harm::of).ifPresent(harms::add);
                    case BETTER -> { }
                }
            }
            return harms;
        }

        /** A check that names only the worst object may name another one now; that alone is no harm. */
        private boolean onlyElsewhere(Finding finding) {
            List<Finding> earlier = of(finding.check(), before);
            return earlier.size() == 1 && of(finding.check(), after).size() == 1
                    && earlier.get(0).verdict().compareTo(finding.verdict()) >= 0;
        }

        /** What takes the place of something that goes is no worse than that was. */
        private boolean instead(Finding finding) {
            return of(finding.check(), ended).stream().anyMatch(gone -> gone.verdict().compareTo(finding.verdict()) >= 0);
        }

        private static List<Finding> of(String check, List<Finding> findings) {
            return findings.stream().filter(finding -> finding.check().equals(check)).toList();
        }
    }

    private final CheckCatalogue catalogue;
    private final Subject subject;
    private final Reader reader;
    private final Set<Trial> tried = new HashSet<>();
    private final Map<Trial, List<Harm>> harms = new HashMap<>();

    RemedyProof(CheckCatalogue catalogue, Subject subject, Reader reader) {
        this.catalogue = catalogue;
        this.subject = subject;
        this.reader = reader;
    }

    /** Returns the finding with its remedies tried. */
    Finding of(Finding finding) {
        boolean open = finding.remedies().stream().anyMatch(remedy -> remedy.proof() == Remedy.Proof.UNTRIED);
        boolean asked = finding.verdict() == Verdict.STOP || finding.verdict() == Verdict.TIGHT;
        return open && asked ? finding.withRemedies(new Sorting(finding).sorted()) : finding;
    }

    /** The remedies of one finding as they are tried, in the order in which they are to be read. */
    private final class Sorting {

        private final Finding finding;
        private final List<Remedy> kept = new ArrayList<>();
        private final Map<String, Remedy> second = new LinkedHashMap<>();
        private final Set<String> settled = new HashSet<>();
        private boolean mended;
        private boolean harmed;
        private boolean failed;

        Sorting(Finding finding) {
            this.finding = finding;
        }

        List<Remedy> sorted() {
            finding.remedies().forEach(this::take);
            List<Remedy> sorted = new ArrayList<>(kept);
            second.forEach((group, remedy) -> {
                if (!settled.contains(group)) {
                    sorted.add(remedy);
                    mended |= remedy.proof() == Remedy.Proof.MENDS;
                }
            });
            if (!mended && failed) {
                sorted.add(Remedy.none(harmed ? "Nothing that was tried mends this without harm elsewhere."
                        : "Nothing that was tried is enough."));
            }
            return sorted;
        }

        private void take(Remedy remedy) {
            if (remedy.trial().isEmpty()) {
                kept.add(remedy);
                mended |= remedy.proof() == Remedy.Proof.ALONE;
            } else if (!settled.contains(remedy.group()) || remedy.group().isEmpty()) {
                if (mayTry(remedy.trial().get())) {
                    attempt(remedy, remedy.trial().get());
                } else {
                    kept.add(remedy);
                    settle(remedy);
                }
            }
        }

        private void attempt(Remedy remedy, Trial trial) {
            Optional<Verdict> after = own(trial);
            if (after.isEmpty()) {
                failed = true;
                return;
            }
            List<Harm> worse = harms(trial);
            if (!worse.isEmpty()) {
                failed = true;
                harmed = true;
                keepAsSecond(remedy, Remedy.harms(remedy.words(), after.get(), worse));
            } else if (after.get() == Verdict.HOLDS || remedy.group().isEmpty()) {
                mended = true;
                kept.add(Remedy.mends(remedy.words(), after.get()));
                settle(remedy);
            } else {
                keepAsSecond(remedy, Remedy.mends(remedy.words(), after.get()));
            }
        }

        private void keepAsSecond(Remedy remedy, Remedy result) {
            String key = remedy.group().isEmpty() ? remedy.words() : remedy.group();
            Remedy old = second.get(key);
            if (old == null || old.proof() == Remedy.Proof.HARMS && result.proof() == Remedy.Proof.MENDS) {
                second.put(key, result);
            }
        }

        private void settle(Remedy remedy) {
            if (!remedy.group().isEmpty()) {
                settled.add(remedy.group());
            }
        }

        /** Returns the check's own answer afterwards, if that is better and known. */
        private Optional<Verdict> own(Trial trial) {
            Check check = catalogue.find(finding.check()).orElseThrow();
            List<Finding> same = left(reader.read(new OneAfterKey(check, subject, trial.change())), trial);
            List<Finding> here = same.stream().filter(after -> after.objectId().equals(finding.objectId())).toList();
            if (here.isEmpty()) {
                // The object is another one now, or the question does not arise any more.
                Set<String> known = new HashSet<>();
                left(reader.read(new FindingsKey(check, subject)), trial).forEach(before -> known.add(before.objectId()));
                here = same.stream().filter(after -> !known.contains(after.objectId())).toList();
            }
            Verdict after = Verdict.worst(here.stream().map(Finding::verdict).toList());
            return after.compareTo(Verdict.CANT_SAY) < 0 && after.compareTo(finding.verdict()) < 0 ? Optional.of(after) : Optional.empty();
        }
    }

    /** Tells whether a change was tried before or one more may be. */
    private boolean mayTry(Trial trial) {
        return tried.contains(trial) || tried.size() < MOST_TRIALS && tried.add(trial);
    }

    /** Returns what a change makes worse for anybody whom it touches. */
    private List<Harm> harms(Trial trial) {
        return harms.computeIfAbsent(trial, t -> Touched.by(t, subject, reader).stream().flatMap(touched -> answers(t, touched).harms()
                .stream()).distinct().toList());
    }

    private Answers answers(Trial trial, Subject touched) {
        List<Finding> before = AfterKey.ask(catalogue, touched, reader);
        List<Finding> after = reader.read(new AfterKey(catalogue, touched, trial.change()));
        return new Answers(left(before, trial), left(after, trial), before.stream().filter(trial::ends).toList());
    }

    private static List<Finding> left(List<Finding> findings, Trial trial) {
        return findings.stream().filter(finding -> !trial.ends(finding)).toList();
    }
}
