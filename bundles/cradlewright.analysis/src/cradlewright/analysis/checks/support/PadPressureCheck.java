package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.LoadedVisitCheck;
import cradlewright.analysis.checks.Swap;
import cradlewright.analysis.checks.VisitLoads;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactFormulas;
import cradlewright.mechanics.coupled.CoupledFormulas;
import cradlewright.mechanics.pad.PadFormulas;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Is a soft pad pressed too hard? */
public final class PadPressureCheck extends LoadedVisitCheck {

    /** Creates the check. */
    public PadPressureCheck() {
        super(new CheckInfo("support.pad", "Is a soft pad pressed too hard?",
                "limits of the pad; for cork common practice, no source",
                Cautions.SUPPORTS + " Soft pads settle over weeks: measure again.",
                        List.of("size, material and limits of each pad", "what each support carries"),
                List.of(PadFormulas.STRESS, PadFormulas.CORK, PadFormulas.RUBBER, PadFormulas.LIMITS, CoupledFormulas.ASSEMBLY,
                        ContactFormulas.ENERGY)));
    }

    @Override
    protected boolean arises(Standing standing) {
        return standing.supports().stream().anyMatch(support -> support.pad().isPresent());
    }

    @Override
    protected List<Finding> judge(Standing standing, VisitLoads loads, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (Support support : standing.supports()) {
            Optional<VisitLoads.Total> most = loads.most(List.of(support.contactId()));
            if (support.pad().isPresent() && most.isPresent()) {
                findings.add(judge(support, support.pad().get(), most.get(), standing, subject, reader));
            }
        }
        return findings;
    }

    private Finding judge(Support support, StockFacts.Pad pad, VisitLoads.Total most, Standing standing,
            Subject subject, Reader reader) {
        double carried = Math.max(0, most.high());
        FindingBuilder finding = finding(subject, support.objectId(), support.name()).situation(most.situation().words())
                .input("carries at most", Amount.force(carried), "19 times in 20, any stiffness the shell may have");
        PadPress press = PadPress.of(pad, carried);
        if (!press.missing().isEmpty()) {
            return finding.cantSay("How hard the pad " + pad.name() + " is pressed, or how hard it may be, is not known.",
                    press.missing());
        }
        press.stress().ifPresent(s -> finding.input("pressed by", Amount.stress(s), "load over area"));
        press.strain().ifPresent(s -> finding.input("pressed together, share of its thickness", Amount.ratio(s), "worked out"));
        finding.against(press.demand(), press.capacity(), press.ratedBy());
        double margin = settings(reader).tightMargin();
        Verdict verdict = press.verdict(margin);
        if (verdict == Verdict.STOP) {
            finding.remediesOr(others(support, pad, carried, standing, reader),
                    "Use a pad of a larger face, or two pads side by side under a stiff plate.");
        }
        return finding.say(verdict, verdict == Verdict.STOP ? "The pad " + pad.name() + " is crushed." : "The pad " + pad.name()
                + " takes it.");
    }

    /** Pads in stock that this load would not crush; the load itself changes with the give of the pad, so each is tried. */
    private static List<Remedy> others(Support support, StockFacts.Pad pad, double carried, Standing standing, Reader reader) {
        List<Remedy> remedies = new ArrayList<>();
        for (String id : reader.read(new IdsKey<>(StockFacts.Pad.class))) {
            reader.read(new FactKey<>(StockFacts.Pad.class, id)).filter(other -> !other.id().equals(pad.id()) && takes(other, carried,
                    reader))
                    .ifPresent(other -> remedies.add(Remedy.trial("Use the pad " + other.name() + " from stock instead.", "pad",
                            Trial.records(Swap.contacts(standing, contact -> contact.id().equals(support.contactId()),
                                    contact -> Swap.raised(contact.withPad(id), thickness(other) - thickness(pad)))))));
        }
        return remedies;
    }

    private static boolean takes(StockFacts.Pad pad, double carried, Reader reader) {
        PadPress press = PadPress.of(pad, carried);
        return press.missing().isEmpty() && press.verdict(settings(reader).tightMargin()) != Verdict.STOP;
    }

    private static double thickness(StockFacts.Pad pad) {
        return pad.thickness().map(Value::si).orElse(0.0);
    }
}
