package cradlewright.ui.shop;

import cradlewright.analysis.change.PartOffQuestion;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.run.ShopAnswers;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The gravest verdict about each thing, by its id, so that a tree or a diagram need not search the answers for every row. */
public final class WorstVerdicts {

    /** What is known before there are answers: nothing. */
    public static final WorstVerdicts NONE = new WorstVerdicts(Map.of(), Map.of(), Set.of());

    private final Map<String, Verdict> worst;
    private final Map<String, Verdict> later;
    private final Set<String> planned;

    private WorstVerdicts(Map<String, Verdict> worst, Map<String, Verdict> later, Set<String> planned) {
        this.worst = worst;
        this.later = later;
        this.planned = planned;
    }

    /**
     * Gathers them. A visit has the word of everything that was asked about it. A car, a dolly, gear and any other thing have that of the
     * day, as the start page has it: what is asked about them by themselves and in the visits that are on; a car without such a visit
     * reads CAN'T SAY.
     *
     * @param shop what the answers are for
     */
    public static WorstVerdicts of(ShopAnswers answers, ShopSnapshot shop) {
        Map<String, Verdict> worst = new HashMap<>();
        Map<String, Verdict> later = new HashMap<>();
        Set<String> on = new HashSet<>();
        Set<String> planned = new HashSet<>();
        for (CarFacts car : cars(shop)) {
            List<VisitFacts> present = PartOffQuestion.current(car, shop.today());
            present.forEach(visit -> on.add(visit.id()));
            car.visits().stream().filter(visit -> !present.contains(visit) && !car.over(visit, shop.today()))
                    .forEach(visit -> planned.add(visit.id()));
            worst.put(car.id(), present.isEmpty() ? Verdict.CANT_SAY : Verdict.HOLDS);
        }
        for (Subject subject : answers.subjects()) {
            worst.putIfAbsent(subject.visitId().orElse(subject.ownerId()), Verdict.HOLDS);
        }
        for (Finding finding : answers.findings()) {
            Optional<String> visit = finding.subject().visitId();
            visit.ifPresent(id -> worst.merge(id, finding.verdict(), Verdict::worse));
            visit.filter(planned::contains).ifPresent(id -> later.merge(finding.subject().ownerId(), finding.verdict(), Verdict::worse));
            if (visit.isEmpty() || on.contains(visit.get())) {
                worst.merge(finding.subject().ownerId(), finding.verdict(), Verdict::worse);
                worst.merge(finding.objectId(), finding.verdict(), Verdict::worse);
            }
        }
        return new WorstVerdicts(worst, later, planned);
    }

    /** Returns the gravest verdict about the visits of a car that are still to come; nothing when there is none, or nothing about it. */
    public Optional<Verdict> later(String carId) {
        return Optional.ofNullable(later.get(carId));
    }

    /** Tells whether the word of the day leaves out something graver that is still to come. */
    public boolean graverLater(String carId) {
        return later(carId).filter(word -> of(carId).filter(now -> now.compareTo(word) < 0).isPresent()).isPresent();
    }

    /** Tells whether a visit is still to come. */
    public boolean planned(String visitId) {
        return planned.contains(visitId);
    }

    private static List<CarFacts> cars(ShopSnapshot shop) {
        return shop.facts().values().stream().filter(CarFacts.class::isInstance).map(CarFacts.class::cast).toList();
    }

    /** Returns the gravest verdict about a thing; nothing when no check says anything about it. */
    public Optional<Verdict> of(String id) {
        return Optional.ofNullable(worst.get(id));
    }
}
