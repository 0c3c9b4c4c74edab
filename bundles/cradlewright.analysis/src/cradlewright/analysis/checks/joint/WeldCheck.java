package cradlewright.analysis.checks.joint;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.dolly.FrameCheck;
import cradlewright.analysis.checks.dolly.LoadedMember;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.joint.BoltResistance;
import cradlewright.mechanics.joint.FilletWeld;
import cradlewright.mechanics.joint.GroupLoad;
import cradlewright.mechanics.joint.JointFormulas;
import cradlewright.mechanics.joint.PlanePoint;
import cradlewright.mechanics.joint.WeldGroup;
import cradlewright.mechanics.joint.WeldSteel;
import cradlewright.quantity.Dimension;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Are the welds of each joint strong enough? Fillets run along the height of the member, across its end, and carry the forces of
 * that end; the ends of each run do not count.
 */
public final class WeldCheck extends FrameCheck {

    private static final int OPEN_ENDS = 2;
    private static final int MOST_RUNS = 100;
    private static final double[] FACTORS = {1.25, 1.5, 2};
    private static final List<String> THICKER = List.of("a throat a quarter thicker", "a throat one and a half times as thick",
            "a throat twice as thick");

    private record Weld(FilletWeld fillet, double runLength, double spacing, int runs) {

        private WeldGroup group() {
            double length = fillet.effectiveLength(runLength, OPEN_ENDS);
            List<WeldGroup.Run> lines = new ArrayList<>();
            for (int i = 0; i < runs; i++) {
                double u = (i - (runs - 1) / 2.0) * spacing;
                lines.add(new WeldGroup.Run(new PlanePoint(u, -length / 2), new PlanePoint(u, length / 2)));
            }
            return new WeldGroup(lines);
        }

        private boolean counts() {
            return fillet.resistancePerLength() > 0 && fillet.effectiveLength(runLength, OPEN_ENDS) > 0;
        }

        private Weld thicker(double throat) {
            return new Weld(new FilletWeld(throat, fillet.ultimateStrength(), fillet.steel(), fillet.gammaM2()), runLength, spacing, runs);
        }
    }

    /** Creates the check. */
    public WeldCheck() {
        super(new CheckInfo("joint.weld", "Are the welds of each joint strong enough?", "EN 1993-1-8 4.5.3.3, simple method",
                Cautions.JOINTS,
                List.of("throat, length, distance and number of the welds", "steel beside them", "what stands on the dolly"),
                List.of(JointFormulas.WELD, JointFormulas.WELD_LENGTH, JointFormulas.WELD_GROUP)));
    }

    @Override
    protected boolean arises(DollyFacts dolly, Reader reader) {
        return dolly.joints().stream().anyMatch(JointFacts.Welded.class::isInstance);
    }

    @Override
    protected List<Finding> judge(Standing standing, List<LoadedMember> members, Subject subject, Reader reader) {
        List<Finding> findings = new ArrayList<>();
        for (JointFacts joint : standing.dolly().orElseThrow().joints()) {
            List<JointEnd> ends = JointEnd.of(joint.id(), members);
            if (joint instanceof JointFacts.Welded welded && !ends.isEmpty()) {
                findings.add(judge(welded, ends, standing.dolly().orElseThrow(), subject, reader));
            }
        }
        return findings;
    }

    private Finding judge(JointFacts.Welded joint, List<JointEnd> ends, DollyFacts dolly, Subject subject, Reader reader) {
        FindingBuilder finding = finding(subject, joint.id(), joint.name());
        Optional<StockFacts.Steel> steel = joint.steelId().flatMap(id -> reader.read(new FactKey<>(StockFacts.Steel.class, id)));
        List<String> missing = missing(joint, steel, ends);
        if (!missing.isEmpty()) {
            return finding.cantSay("The welds of this joint are not fully described.", missing);
        }
        Optional<JointEnd> thin = ends.stream().filter(end -> thickness(end) < thinnest(end, reader) * (1 - 1e-9)).findFirst();
        if (thin.isPresent()) {
            return finding.atLeast(Amount.length(thinnest(thin.get(), reader)), Amount.length(thickness(thin.get())),
                    "thinnest wall that the rules for fillet welds cover, EN 1993-1-8 4.1")
                    .remedy(Remedy.advice("Take a thicker wall there, bolt the joint, or weld a sample and load it until it breaks."))
                    .say(Verdict.CANT_SAY, "The rules for fillet welds do not reach down to the wall of "
                            + thin.get().member().facts().name() + ": what such a weld holds is not known.");
        }
        FilletWeld fillet = new FilletWeld(Bolts.positive(joint.throat()).orElseThrow(),
                steel.flatMap(s -> Bolts.positive(s.fu())).orElseThrow(),
                weldSteel(steel.orElseThrow().name()), BoltResistance.GAMMA_M2);
        Weld weld = new Weld(fillet, Bolts.positive(joint.runLength()).orElseThrow(), Bolts.positive(joint.runSpacing()).orElse(0.0),
                joint.runs());
        if (!weld.counts()) {
            return finding.remedy(Remedy.advice("Weld thicker and longer runs.")).say(Verdict.STOP,
                    "These welds are too thin or too short to count (EN 1993-1-8 4.5.1 and 4.5.2).");
        }
        try {
            return answer(joint, weld, ends, dolly, settings(reader).tightMargin(), finding);
        } catch (IllegalArgumentException e) {
            // One straight run cannot hold a moment about its own line: there is no number then.
            return finding.cantSay("One straight weld cannot hold the turn that the member puts on it.",
                    List.of("at least two runs of weld in " + joint.name() + ", with their distance"));
        }
    }

    private static List<String> missing(JointFacts.Welded joint, Optional<StockFacts.Steel> steel, List<JointEnd> ends) {
        List<String> missing = new ArrayList<>();
        note(missing, Bolts.positive(joint.throat()).isEmpty(), "throat of the welds of " + joint.name());
        note(missing, joint.runs() < 1 || joint.runs() > MOST_RUNS, "runs of weld in " + joint.name());
        note(missing, Bolts.positive(joint.runLength()).isEmpty(), "length of each weld of " + joint.name());
        note(missing, joint.runs() > 1 && Bolts.positive(joint.runSpacing()).isEmpty(), "distance between the welds of " + joint.name());
        note(missing, steel.flatMap(s -> Bolts.positive(s.fu())).isEmpty(), "tensile strength of the steel beside the welds of "
                + joint.name());
        for (JointEnd end : ends) {
            note(missing, end.member().shape().filter(shape -> !shape.timber()).isEmpty(), "section of " + end.member().facts().name()
                    + ", of steel, with all its measures");
        }
        return missing;
    }

    private static double thickness(JointEnd end) {
        return end.member().shape().map(SectionShape::thickness).orElseThrow();
    }

    private static double thinnest(JointEnd end, Reader reader) {
        boolean hollow = end.member().facts().sectionId().flatMap(id -> reader.read(new FactKey<>(StockFacts.Section.class, id)))
                .filter(section -> section instanceof StockFacts.Hollow || section instanceof StockFacts.Tube).isPresent();
        return hollow ? FilletWeld.THINNEST_HOLLOW : FilletWeld.THINNEST_PLATE;
    }

    private static void note(List<String> missing, boolean lacks, String what) {
        if (lacks) {
            missing.add(what);
        }
    }

    /** Steel that the table does not name gets the least favourable factor. */
    private static WeldSteel weldSteel(String name) {
        for (WeldSteel steel : List.of(WeldSteel.S235, WeldSteel.S275, WeldSteel.S355)) {
            if (name.toUpperCase(Locale.ROOT).contains(steel.name())) {
                return steel;
            }
        }
        return WeldSteel.S420_AND_OTHERS;
    }

    private static Finding answer(JointFacts.Welded joint, Weld weld, List<JointEnd> ends, DollyFacts dolly, double margin,
            FindingBuilder finding) {
        JointUse worst = worst(weld, ends);
        Verdict verdict = verdict(worst, margin);
        finding.situation(worst.situation().words()).against(new Amount(worst.demand(), worst.dimension()),
                new Amount(worst.capacity(), worst.dimension()), "design shear strength in the throat, " + worst.clause()
                        + ", loads factored");
        finding.input("length of each run that counts", Amount.length(weld.fillet.effectiveLength(weld.runLength, OPEN_ENDS)),
                "EN 1993-1-8 4.5.1: one throat less at each end");
        if (verdict == Verdict.STOP) {
            finding.remediesOr(thicker(joint, weld, ends, dolly, margin),
                    "Weld longer runs, set them farther apart, or carry the weld round the member.");
        }
        return finding.say(verdict, switch (verdict) {
            case HOLDS -> "The welds are strong enough.";
            case TIGHT -> "The welds are only just strong enough.";
            default -> "The welds are not strong enough.";
        });
    }

    private static List<Remedy> thicker(JointFacts.Welded joint, Weld weld, List<JointEnd> ends, DollyFacts dolly, double margin) {
        List<Remedy> remedies = new ArrayList<>();
        for (int i = 0; i < FACTORS.length; i++) {
            Weld next = weld.thicker(weld.fillet.throat() * FACTORS[i]);
            if (next.counts() && verdict(worst(next, ends), margin).compareTo(Verdict.STOP) < 0) {
                Value throat = joint.throat().orElseThrow();
                remedies.add(Remedy.trial("Make " + THICKER.get(i) + ".", "throat", Trial.records(Change.of(
                        dolly.with(joint.withThroat(new Value(FACTORS[i] * throat.si(), FACTORS[i] * throat.u(), throat.source())))))));
            }
        }
        return remedies;
    }

    private static Verdict verdict(JointUse use, double margin) {
        return Verdict.of(use.demand(), use.capacity(), margin);
    }

    private static JointUse worst(Weld weld, List<JointEnd> ends) {
        WeldGroup group = weld.group();
        return ends.stream().flatMap(end -> end.actions().stream()).map(action -> new JointUse("the weld",
                group.worst(load(action.action())).resultant() / weld.fillet.throat(), weld.fillet.shearStrength(), Dimension.STRESS,
                "EN 1993-1-8 4.5.3.3", action.situation())).max(Comparator.comparingDouble(JointUse::ratio)).orElseThrow();
    }

    /** The welds lie square to the member: u over its width, v over its height. */
    private static GroupLoad load(ForceMoment action) {
        return new GroupLoad(new PlanePoint(0, 0), action.force().y(), action.force().z(), action.force().x(), action.moment().y(),
                action.moment().z(), action.moment().x());
    }
}
