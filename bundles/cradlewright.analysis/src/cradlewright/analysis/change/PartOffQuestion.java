package cradlewright.analysis.change;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingChange;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.StandingKey;
import cradlewright.analysis.standing.Weight;
import cradlewright.analysis.standing.WeightKey;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * May a part come off the car as it stands today? Asked of every visit that is on today, has the part on and carries its piece. Not
 * looked at: how the part is taken away, and how stiff the shell is without it.
 */
public final class PartOffQuestion {

    private final ShopSnapshot shop;
    private final CarFacts car;
    private final PartFacts part;
    private final CheckCatalogue catalogue;

    /** Asks about a part of a car of that shop with these checks. */
    public PartOffQuestion(ShopSnapshot shop, CarFacts car, PartFacts part, CheckCatalogue catalogue) {
        this.shop = shop;
        this.car = car;
        this.part = part;
        this.catalogue = catalogue;
    }

    /** Returns the visits of the car that are on at the day of the shop, by what somebody said, else by their days. */
    public static List<VisitFacts> current(CarFacts car, LocalDate day) {
        return car.visitsOn(day);
    }

    /** Tells whether all visits on the day say that the part is off already. */
    public boolean alreadyOff() {
        List<VisitFacts> present = current(car, shop.today());
        return !present.isEmpty() && present.stream().allMatch(visit -> stage(visit).isPresent() && !on(visit));
    }

    /** Returns why the program has nothing to say, with how to mend it; empty when there is something to work out. */
    public Optional<String> whyNot() {
        List<VisitFacts> present = current(car, shop.today());
        if (present.isEmpty()) {
            return Optional.of("where " + car.name() + " stands on this day: " + covered());
        }
        Optional<VisitFacts> silent = present.stream().filter(visit -> stage(visit).isEmpty() || setup(visit).isEmpty()).findFirst();
        if (silent.isPresent()) {
            return Optional.of("stage and setup of " + silent.get().name() + ": choose both in the car's file");
        }
        if (asked().isEmpty()) {
            return Optional.of(part.name() + " is on nothing that stands there on this day: " + present.stream().map(VisitFacts::name)
                    .collect(Collectors.joining(", ")) + ". If it is on, tick it in the stage of that visit, and " + piece().name()
                    + " in its setup");
        }
        return asked().stream().filter(visit -> setup(visit).map(SetupFacts::kind).filter(CarrierKind.AWAY::equals).isPresent()).findFirst()
                .map(visit -> "what it stands on: " + visit.name() + " is away from the shop, ask there");
    }

    private String covered() {
        if (car.visits().isEmpty()) {
            return "enter a visit with its dates";
        }
        return "its visits cover " + car.visits().stream().map(visit -> visit.days() + " (" + visit.name() + ")")
                .collect(Collectors.joining(", ")) + "; ask for one of these days, or enter a visit that covers this one";
    }

    /** Works out the answers, visit by visit. */
    public List<PartOffAnswer> ask(Progress progress) {
        Engine engine = new Engine();
        List<PartOffAnswer> answers = new ArrayList<>();
        for (VisitFacts visit : asked()) {
            answers.add(ask(engine, visit, progress));
        }
        return List.copyOf(answers);
    }

    private PartOffAnswer ask(Engine engine, VisitFacts visit, Progress progress) {
        engine.update(shop);
        ShopAnswers now = answers(engine, visit, progress);
        Weight weightNow = engine.read(new WeightKey(car.id(), visit.id()), progress);
        Standing standing = engine.read(new StandingKey(car.id(), visit.id()), progress).orElseThrow();
        engine.update(PartOff.at(shop, car.id(), visit.id(), Set.of(part.id())));
        ShopAnswers then = new ShopChecks(engine, catalogue).prove(answers(engine, visit, progress), progress);
        Weight weightThen = engine.read(new WeightKey(car.id(), visit.id()), progress);
        Subject subject = now.subjects().get(0);
        return new PartOffAnswer(subject, standing, weightNow, weightThen, now.about(subject), then.about(subject),
                FindingChange.between(notEnding(now.about(subject)), notEnding(then.about(subject))));
    }

    private ShopAnswers answers(Engine engine, VisitFacts visit, Progress progress) {
        return new ShopChecks(engine, catalogue).ask(subject -> subject.scope() == Scope.VISIT && subject.ownerId().equals(car.id())
                && subject.visitId().filter(visit.id()::equals).isPresent(), progress);
    }

    /**
     * Leaves out what ends with the part: answers about itself, and that scales which weighed it with the rest agree with the list. They
     * spoke for the masses that are taken now, and nobody weighs anew for every part.
     */
    private List<Finding> notEnding(List<Finding> findings) {
        return findings.stream().filter(finding -> !finding.objectId().equals(part.id()) && !agreed(finding)).toList();
    }

    private boolean agreed(Finding finding) {
        return finding.verdict() == Verdict.HOLDS && CarFacts.find(car.weighings(), finding.objectId()).isPresent();
    }

    private List<VisitFacts> asked() {
        String piece = piece().id();
        return current(car, shop.today()).stream().filter(this::on)
                .filter(visit -> setup(visit).map(SetupFacts::pieceIds).orElse(List.of()).contains(piece)).toList();
    }

    private boolean on(VisitFacts visit) {
        return stage(visit).map(StageFacts::partIds).orElse(List.of()).contains(part.id());
    }

    private Optional<StageFacts> stage(VisitFacts visit) {
        return visit.stageId().flatMap(car::stage);
    }

    private Optional<SetupFacts> setup(VisitFacts visit) {
        return visit.setupId().flatMap(car::setup);
    }

    private PieceFacts piece() {
        return car.pieces().stream().filter(piece -> piece.parts().contains(part)).findFirst().orElseThrow();
    }
}
