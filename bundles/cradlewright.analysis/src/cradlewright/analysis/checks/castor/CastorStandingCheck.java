package cradlewright.analysis.checks.castor;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.DollyLoad;
import cradlewright.analysis.checks.FeetDown;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.StockFacts.Tread;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.castor.CastorFormulas;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Do the treads flatten while it stands stored? */
public final class CastorStandingCheck extends VisitCheck {

    /** Days up to which standing is no storing: common practice, no source. */
    private static final int SHORT = 30;

    /** Creates the check. */
    public CastorStandingCheck() {
        super(new CheckInfo("castor.standing", "Do the treads flatten while it stands stored?", "common practice, no source",
                Cautions.CASTORS,
                List.of("tread of each castor type", "where it stands and for how long"), List.of(CastorFormulas.NORM_TEST)));
    }

    private static boolean stored(Standing standing) {
        boolean storage = standing.place().map(PlaceFacts::kind)
                .filter(kind -> kind == PlaceFacts.Kind.RACK || kind == PlaceFacts.Kind.YARD).isPresent();
        VisitFacts visit = standing.visit();
        boolean brief = visit.from().isPresent() && visit.to().isPresent()
                && ChronoUnit.DAYS.between(visit.from().get(), visit.to().get()) <= SHORT;
        return storage && !brief;
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Optional<DollyFacts> dolly = standing.dolly().filter(found -> !found.castors().isEmpty() && !DollyLoad.onFeet(found));
        if (dolly.isEmpty() || !stored(standing)) {
            return List.of();
        }
        List<String> missing = new ArrayList<>();
        boolean flattens = false;
        for (CastorFacts castor : dolly.get().castors()) {
            Optional<Tread> tread = castor.typeId().flatMap(id -> reader.read(new FactKey<>(CastorType.class, id)))
                    .flatMap(CastorType::tread);
            flattens |= tread.filter(Tread.POLYURETHANE::equals).isPresent();
            if (tread.isEmpty()) {
                missing.add("what the wheel of castor " + castor.name() + " runs on");
            }
        }
        FindingBuilder finding = finding(subject, dolly.get().id(), dolly.get().name()).situation("stored on its castors");
        if (flattens) {
            finding.remedy(FeetDown.remedy("Put the feet down while it is stored.", standing)
                    .orElseGet(() -> Remedy.advice("Jack it up on blocks beside the castors while it is stored.")));
            return List.of(finding.say(Verdict.TIGHT,
                    "Polyurethane treads get flats when they stand loaded for months, and roll hard then."));
        }
        return List.of(missing.isEmpty() ? finding.say(Verdict.HOLDS, "These treads are not known to get flats.")
                : finding.cantSay("Whether the treads get flats is not known.", missing));
    }
}
