package cradlewright.analysis.checks.gear;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** Is the examination of lifting gear in date? */
public final class ExaminationCheck implements Check {

    /** How many days before the due date the answer turns to TIGHT: common practice, no source. */
    private static final int NOTICE_DAYS = 30;

    private static final CheckInfo INFO = new CheckInfo("gear.examination", "Is its examination in date?",
            "thorough examination as the local law asks, in most places every six or twelve months", Cautions.LIFTING,
            List.of("due date of the examination"), List.of());

    @Override
    public CheckInfo info() {
        return INFO;
    }

    @Override
    public Scope scope() {
        return Scope.GEAR;
    }

    @Override
    public List<Finding> examine(Subject subject, Reader reader) {
        return reader.read(new FactKey<>(GearFacts.class, subject.ownerId()))
                .map(gear -> List.of(examine(gear, subject, reader.read(new TodayKey())))).orElse(List.of());
    }

    private static Finding examine(GearFacts gear, Subject subject, LocalDate today) {
        FindingBuilder finding = new FindingBuilder(INFO, subject, gear.id(), gear.name());
        Examination examination = gear.examination();
        if (examination.due().isEmpty()) {
            return finding.cantSay("Nobody wrote down when " + gear.name() + " is to be examined.",
                    List.of("due date of the examination: read it off the tag or the last report"));
        }
        long days = ChronoUnit.DAYS.between(today, examination.due().get());
        if (days < 0) {
            return finding.remedy(Remedy.advice("Take " + gear.name() + " out of use until it has been examined."))
                    .say(Verdict.STOP, "The examination of " + gear.name() + " was due on " + examination.due().get() + ", " + -days
                            + (days == -1 ? " day ago." : " days ago."));
        }
        if (days <= NOTICE_DAYS) {
            return finding.say(Verdict.TIGHT, "The examination of " + gear.name() + " is due on " + examination.due().get() + ", in " + days
                    + (days == 1 ? " day." : " days."));
        }
        return finding.say(Verdict.HOLDS, "Examined; next due on " + examination.due().get() + ".");
    }
}
