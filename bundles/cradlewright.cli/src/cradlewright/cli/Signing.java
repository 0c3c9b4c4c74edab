package cradlewright.cli;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.PersonFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.job.VisitDigestKey;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import cradlewright.model.base.Shop;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.SaveOutcome;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.model.job.HoldPoint;
import cradlewright.model.job.JobFactory;
import cradlewright.model.job.SignOff;
import cradlewright.model.vehicle.Visit;
import cradlewright.report.FindingWords;
import cradlewright.report.text.Lines;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts one signature into the file of jobs of a shop. The shop is read once; when its file changes before it is written, nothing is. */
final class Signing {

    /** A hold point and the visit that is signed for. */
    record Wanted(HoldPointFinder.Found held, VisitFacts visit) {
    }

    /**
     * Somebody's name.
     *
     * @param by who signs
     * @param visitor who that is, when it is none of the people of the shop; null when nobody said
     * @param although why, although a check says STOP or CAN'T SAY; null when nobody said
     * @param version of the program
     */
    record Signature(String by, String visitor, String although, String version) {
    }

    private final ShopFolder folder;
    private final Clock clock;
    private final PrintWriter err;
    private final Engine engine = new Engine();
    private final LocalDateTime now;

    /** Reads a shop; throws BadInputException when it cannot be read without errors. */
    Signing(Path shop, Clock clock, PrintWriter err) {
        this.folder = OpenShop.folder(shop);
        this.clock = clock;
        this.err = err;
        this.now = LocalDateTime.now(clock.withZone(zone())).truncatedTo(ChronoUnit.MINUTES);
        engine.update(OpenShop.snapshot(folder, now.toLocalDate(), err));
    }

    /** Returns the zone of the shop, in which all its files tell the time; that of this machine when the shop names none that is known. */
    private ZoneId zone() {
        try {
            return folder.shop().map(Shop::getZone).map(ZoneId::of).orElse(clock.getZone());
        } catch (DateTimeException e) {
            return clock.getZone();
        }
    }

    /** Finds what is to be signed; throws BadInputException unless exactly one hold point and one visit fit and work is not done. */
    Wanted find(String holdPoint, String visit) {
        HoldPointFinder finder = new HoldPointFinder(engine);
        HoldPointFinder.Found held = finder.point(holdPoint);
        if (held.operation().done()) {
            throw new BadInputException(held.operation().name() + " of " + held.car().name()
                    + " is done: a signature now would say nothing about how it stood before");
        }
        VisitFacts found = finder.visit(held, visit);
        List<VisitFacts> about = finder.about(held);
        if (!about.isEmpty() && !about.contains(found)) {
            err.println("note: " + held.operation().name() + " is planned for another visit ("
                    + about.stream().map(VisitFacts::name).collect(Collectors.joining("; ")) + "); the checks are asked about "
                    + found.name());
        }
        return new Wanted(held, found);
    }

    /** Signs and returns what to tell; throws BadInputException when it is not signed. */
    String sign(Wanted wanted, Signature signature) {
        String by = named(signature);
        ShopAnswers answers = answers(wanted);
        if (answers.findings().isEmpty()) {
            throw new BadInputException("not signed, because no check has an answer about " + wanted.visit().name()
                    + ": name stage and setup of the visit first");
        }
        if (against(answers) && (signature.although() == null || signature.although().isBlank())) {
            throw new BadInputException("not signed, because a check says " + answers.worst().word() + ": "
                    + words(answers.findings(), answers.worst()) + "; mend it first, or say with --although why it may go on");
        }
        String digest = engine.read(new VisitDigestKey(wanted.held().car().id(), wanted.visit().id(), now), Progress.NONE)
                .orElseThrow(() -> new BadInputException(wanted.visit().name()
                        + " does not say which parts are on and what rests on what: name stage and setup of the visit first"));
        HoldPoint point = object(HoldPoint.class, wanted.held().point().id());
        ShopFile file = folder.fileOf(point).orElseThrow();
        ShopWriter writer = new ShopWriter(folder, clock);
        SignOff signOff = IdSource.secure().give(JobFactory.eINSTANCE.createSignOff());
        signOff.setBy(by);
        signOff.setAt(now);
        signOff.setDigest(digest);
        signOff.setVisit(object(Visit.class, wanted.visit().id()));
        signOff.setProgramVersion(signature.version());
        signOff.setFindingsText(findingsText(answers, signature));
        return save(wanted, point, signOff, file, writer);
    }

    private List<String> people() {
        return engine.snapshot().all(PersonFacts.class).stream().map(PersonFacts::name).toList();
    }

    /** Returns what was said of somebody who is none of the people of the shop. */
    private static Optional<String> visitor(Signature signature) {
        return Optional.ofNullable(signature.visitor()).map(String::strip).filter(who -> !who.isEmpty());
    }

    private String save(Wanted wanted, HoldPoint point, SignOff signOff, ShopFile file, ShopWriter writer) {
        SaveOutcome outcome;
        try {
            if (writer.laysOutAnew(file)) {
                err.println("note: " + file.path()
                        + " was laid out by hand or is of an older form; it is now laid out as the program does");
            }
            point.getSignOffs().add(signOff);
            outcome = writer.save(file);
        } catch (IOException e) {
            throw new BadInputException("not signed: " + file.path() + " cannot be written: " + e.getMessage()
                    + "; check rights and room on the disk");
        }
        if (outcome.kind() != SaveOutcome.Kind.SAVED) {
            throw new BadInputException("not signed: " + outcome.message());
        }
        return Lines.wrap("", wanted.held().point().name() + ": " + wanted.held().car().name() + ", before "
                + wanted.held().operation().name())
                + Lines.wrap("  asked for  ", wanted.held().point().text().orElse("nothing written down"))
                + Lines.wrap("  signed     ", "by " + signOff.getBy() + " at " + signOff.getAt().toString().replace('T', ' ') + " for "
                        + wanted.visit().name())
                + Lines.wrap("  checks     ", signOff.getFindingsText()) + Lines.wrap("  lapses     ",
                        "when parts, supports, shims, dolly, place or readings of that visit change")
                + Lines.wrap("  saved      ", outcome.message());
    }

    private String named(Signature signature) {
        String name = signature.by().strip();
        if (name.isEmpty()) {
            throw new BadInputException("--by is empty: write the name of whoever has looked at the car");
        }
        List<String> people = people();
        if (visitor(signature).isEmpty() && !people.isEmpty() && !people.contains(name)) {
            throw new BadInputException("not signed, because " + name + " is not among the people of the shop ("
                    + String.join(", ", people) + ")" + Near.hint(name, people) + "; write the name as it stands there, add a <people> with"
                    + " this name to the file of jobs, or say with --visitor who this is");
        }
        return name;
    }

    /** Asks the checks about the visit and about what the car stands or hangs on in it. */
    private ShopAnswers answers(Wanted wanted) {
        Set<String> carriers = wanted.visit().setupId().flatMap(wanted.held().car()::setup).map(SetupFacts::carrierIds).orElse(Set.of());
        return new ShopChecks(engine, BuiltInChecks.catalogue()).ask(subject -> subject.scope() == Scope.VISIT
                ? subject.visitId().equals(Optional.of(wanted.visit().id())) : carriers.contains(subject.ownerId()), Progress.NONE);
    }

    /** Tells whether the answers speak against a signature. */
    private static boolean against(ShopAnswers answers) {
        return answers.worst().compareTo(Verdict.CANT_SAY) >= 0;
    }

    private static String findingsText(ShopAnswers answers, Signature signature) {
        StringBuilder text = new StringBuilder(answers.worst().word());
        for (Verdict verdict : List.of(Verdict.STOP, Verdict.CANT_SAY, Verdict.TIGHT, Verdict.HOLDS)) {
            text.append(verdict == Verdict.STOP ? ": " : ", ").append(answers.counts().getOrDefault(verdict, 0L)).append(' ')
                    .append(verdict.word());
        }
        if (against(answers)) {
            text.append(". Signed although ").append(answers.worst() == Verdict.STOP ? "it stops" : "not all can be said")
                    .append(", because: ").append(signature.although().strip());
        }
        visitor(signature).ifPresent(who -> text.append(". Signed by a visitor: ").append(who));
        told(text, "What stops", Verdict.STOP, answers);
        told(text, "What cannot be said", Verdict.CANT_SAY, answers);
        return text.toString();
    }

    private static void told(StringBuilder text, String head, Verdict verdict, ShopAnswers answers) {
        String words = words(answers.findings(), verdict);
        if (!words.isEmpty()) {
            text.append(". ").append(head).append(": ").append(words);
        }
    }

    private static String words(List<Finding> findings, Verdict verdict) {
        return findings.stream().filter(finding -> finding.verdict() == verdict)
                .map(finding -> FindingWords.reason(finding) + " [" + finding.check() + "]").distinct().collect(Collectors.joining("; "));
    }

    private <T> T object(Class<T> type, String id) {
        return folder.find(id).filter(type::isInstance).map(type::cast).orElseThrow();
    }
}
