package cradlewright.report;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Harm;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.run.ShopAnswers;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Made-up answers with everything that a report must cope with. */
public final class Answers {

    /** The day of the answers. */
    public static final LocalDate DAY = LocalDate.of(2026, 3, 31);
    /** A name that would break a page that forgets to mask it. */
    public static final String NASTY = "red & <b>\"tired\"</b> 'coupe'";
    /** A visit with answers of every kind. */
    public static final Subject VISIT = new Subject(Scope.VISIT, "car", Optional.of("visit"), NASTY);
    /** A dolly that nothing is asked about. */
    public static final Subject DOLLY = new Subject(Scope.DOLLY, "dolly", Optional.empty(), "Dolly 1");

    private Answers() {
    }

    /** Returns what a check of that caution says about itself. */
    public static CheckInfo info(String caution) {
        return new CheckInfo("test.check", "Does it hold?", "common practice, no source", caution, List.of("mass"), List.of());
    }

    /** Starts a finding about a support of the visit. */
    public static FindingBuilder finding(String caution) {
        return new FindingBuilder(info(caution), VISIT, "1L", "1L");
    }

    /** Returns answers of every kind. */
    public static ShopAnswers all() {
        Finding stop = finding("Keep off. Stay away.").against(Amount.force(1003), Amount.force(1000), "plate").situation("at rest")
                .remedy(Remedy.advice("Prop it.")).remedy(Remedy.mends("Use the larger one.", Verdict.TIGHT))
                .remedy(Remedy.alone("Stand it on a plate.", Verdict.HOLDS))
                .remedy(Remedy.harms("Lay a shim.", Verdict.HOLDS, List.of(new Harm(VISIT, "2R", "test.check", Verdict.STOP,
                        "It lifts off."))))
                .input("mass <kg>", Amount.mass(100), "weighed").say(Verdict.STOP, "It gives way & falls.");
        Finding endless = finding("Keep off.").against(Amount.force(10), Amount.force(Double.POSITIVE_INFINITY), "no limit known")
                .say(Verdict.HOLDS, "It holds.");
        Finding open = finding("Stay away. Look twice.").cantSay("Nobody knows.", List.of("mass of the \"bench\""));
        Finding tight = finding("Keep off.").say(Verdict.TIGHT, "Close.");
        return new ShopAnswers(1, "Shed & yard", List.of(VISIT, DOLLY), List.of(endless, tight, open, stop));
    }

    /** Returns an engine over a shop of one car, whose only visit is that of the answers. */
    public static Engine engineWithCar() {
        VisitFacts visit = new VisitFacts("visit", "visit", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty());
        CarFacts car = new CarFacts("car", NASTY, false, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(visit), List.of());
        Engine engine = new Engine();
        engine.update(new ShopSnapshot(1, "Shed & yard", SettingsFacts.commonPractice(), DAY, Map.of("car", car)));
        return engine;
    }

    /** Returns an engine over an empty shop. */
    public static Engine engine() {
        Engine engine = new Engine();
        engine.update(new ShopSnapshot(1, "Shed & yard", SettingsFacts.commonPractice(), DAY, Map.of()));
        return engine;
    }
}
