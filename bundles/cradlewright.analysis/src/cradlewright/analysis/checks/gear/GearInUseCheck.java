package cradlewright.analysis.checks.gear;

import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Does the car hang in or stand on gear whose examination is overdue? Said at the car, since that is where people look. */
public final class GearInUseCheck extends VisitCheck {

    /** Creates the check. */
    public GearInUseCheck() {
        super(new CheckInfo("gear.in-use", "Is the examination of everything that carries it in date?",
                "thorough examination as the local law asks, in most places every six or twelve months", Cautions.LIFTING,
                List.of("due date of the examination of each lift, hoist, strap, stand and dolly in use"), List.of()));
    }

    private record Tagged(String name, Examination examination) {
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        LocalDate today = reader.read(new TodayKey());
        Map<String, Tagged> inUse = new LinkedHashMap<>();
        standing.lift().ifPresent(lift -> add(inUse, lift));
        standing.hoist().ifPresent(hoist -> add(inUse, hoist));
        for (Support support : standing.supports()) {
            if (support.holder() instanceof Holder.InStrap in) {
                add(inUse, in.strap());
            } else if (support.holder() instanceof Holder.OnStand on) {
                add(inUse, on.stand());
            }
        }
        standing.dolly().ifPresent(dolly -> add(inUse, dolly));
        return inUse.entrySet().stream().filter(entry -> entry.getValue().examination().due().isPresent())
                .map(entry -> judge(entry.getKey(), entry.getValue(), today, subject)).toList();
    }

    private static void add(Map<String, Tagged> inUse, GearFacts gear) {
        inUse.put(gear.id(), new Tagged(gear.name(), gear.examination()));
    }

    private static void add(Map<String, Tagged> inUse, DollyFacts dolly) {
        inUse.put(dolly.id(), new Tagged(dolly.name(), dolly.examination()));
    }

    private Finding judge(String id, Tagged tagged, LocalDate today, Subject subject) {
        if (tagged.examination().overdue(today)) {
            return finding(subject, id, tagged.name())
                    .remedy(Remedy.advice("Set the car down and take " + tagged.name() + " out of use until it has been examined."))
                    .say(Verdict.STOP, "In use here, but its examination was due on " + tagged.examination().due().orElseThrow() + ".");
        }
        return finding(subject, id, tagged.name()).say(Verdict.HOLDS,
                "Examined; next due on " + tagged.examination().due().orElseThrow() + ".");
    }
}
