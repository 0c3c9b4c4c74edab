package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.dolly.TimberGrade;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.Standing;
import cradlewright.mechanics.steel.MemberForces;
import cradlewright.mechanics.timber.LoadDuration;
import cradlewright.mechanics.timber.ServiceClass;
import cradlewright.mechanics.timber.TimberClass;
import cradlewright.mechanics.timber.TimberFormulas;
import cradlewright.mechanics.timber.TimberRail;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Are timber rails strong enough in bending and shear? What stands for months counts as lasting, everything else as short. */
public final class TimberRailCheck extends FrameCheck {

    /** Share of the bending strength up to which push or pull along a rail is left out: common practice, no source. */
    private static final double NEGLIGIBLE = 0.05;

    private record Timber(TimberClass grade, double width, double depth) {
    }

    private record Use(String what, double ratio, Situation situation) {
    }

    /** Creates the check. */
    public TimberRailCheck() {
        super(new CheckInfo("dolly.timber", "Are the timber rails strong enough?", "EN 1995-1-1 6.1.6 and 6.1.7, EN 338",
                Cautions.STRUCTURE,
                List.of("height, width and strength class of each timber rail", "what stands on the dolly",
                        "whether the place is under a roof"),
                List.of(TimberFormulas.BENDING, TimberFormulas.SHEAR, TimberFormulas.K_MOD, TimberFormulas.DEPTH_FACTOR)));
    }

    @Override
    protected boolean arises(DollyFacts dolly, Reader reader) {
        return dolly.members().stream().flatMap(member -> member.sectionId().stream())
                .anyMatch(id -> reader.read(new FactKey<>(StockFacts.TimberRail.class, id)).isPresent());
    }

    @Override
    protected List<Finding> judge(Standing standing, List<LoadedMember> members, Subject subject, Reader reader) {
        double margin = settings(reader).tightMargin();
        // Nobody said where it stands: taken as under a roof, as nearly every shop is.
        ServiceClass damp = standing.place().map(PlaceFacts::outdoors).orElse(false) ? ServiceClass.OUTDOORS : ServiceClass.COVERED;
        return members.stream().filter(LoadedMember::timber).map(member -> judge(member, damp, margin, subject, reader)).toList();
    }

    private Finding judge(LoadedMember member, ServiceClass damp, double margin, Subject subject, Reader reader) {
        FindingBuilder finding = finding(subject, member.facts().id(), member.facts().name());
        Optional<Timber> timber = timber(member, reader);
        if (timber.isEmpty()) {
            return finding.cantSay("Nobody said how strong this timber is.",
                    List.of("strength class of " + member.facts().name() + ": C16, C18 or C24, read off the stamp"));
        }
        if (alongMatters(member, timber.get(), damp)) {
            return finding.remedy(Remedy.advice("Take a steel member in this place, or arrange it so that the timber only bends."))
                    .say(Verdict.CANT_SAY, "This timber is pressed or pulled along its length, and only bending is worked out for timber.");
        }
        Use most = worst(member, timber.get(), damp);
        Verdict verdict = Verdict.of(most.ratio, 1, margin);
        finding.situation(most.situation.words()).against(Amount.ratio(most.ratio), Amount.ratio(1), "design strength of "
                + timber.get().grade + ", EN 1995-1-1, loads factored");
        finding.input("share of strength for duration and damp", Amount.ratio(damp.modification(duration(most.situation))),
                (damp == ServiceClass.OUTDOORS ? "out of doors" : "under a roof, assumed unless the place is out of doors")
                        + (duration(most.situation) == LoadDuration.LONG ? "; stands for months, assumed"
                                : "; lasts less than a week, assumed"));
        if (verdict == Verdict.STOP) {
            finding.remedy(deeper(member, timber.get(), damp, margin));
        }
        return finding.say(verdict, switch (verdict) {
            case HOLDS -> "Strong enough; what uses it most is " + most.what + ".";
            case TIGHT -> "Only just strong enough in " + most.what + ".";
            default -> "Not strong enough in " + most.what + ".";
        });
    }

    private static Remedy deeper(LoadedMember member, Timber timber, ServiceClass damp, double margin) {
        Timber twice = new Timber(timber.grade, 2 * timber.width, timber.depth);
        Verdict after = Verdict.of(worst(member, twice, damp).ratio, 1, margin);
        return after == Verdict.STOP ? Remedy.advice("Take a deeper rail or steel.")
                : Remedy.alone("Bolt a second rail of the same timber beside it.", after);
    }

    private static Optional<Timber> timber(LoadedMember member, Reader reader) {
        Optional<StockFacts.TimberRail> rail = member.facts().sectionId()
                .flatMap(id -> reader.read(new FactKey<>(StockFacts.TimberRail.class, id)));
        Optional<TimberClass> grade = rail.flatMap(StockFacts.TimberRail::timberId)
                .flatMap(id -> reader.read(new FactKey<>(StockFacts.Timber.class, id))).flatMap(TimberGrade::of);
        Optional<Double> width = rail.flatMap(StockFacts.TimberRail::width).map(Value::low).filter(w -> w > 0);
        Optional<Double> depth = rail.flatMap(StockFacts.TimberRail::height).map(Value::low).filter(h -> h > 0);
        return grade.flatMap(g -> width.flatMap(w -> depth.map(d -> new Timber(g, w, d))));
    }

    private static LoadDuration duration(Situation situation) {
        return situation.kind() == Situation.Kind.AT_REST ? LoadDuration.LONG : LoadDuration.SHORT;
    }

    private static TimberRail rail(Timber timber, ServiceClass damp, Situation situation) {
        return new TimberRail(timber.grade, timber.width, timber.depth, damp, duration(situation), TimberRail.GAMMA_M);
    }

    private static boolean alongMatters(LoadedMember member, Timber timber, ServiceClass damp) {
        return member.taken().stream().anyMatch(taken -> taken.forces().stream()
                .anyMatch(forces -> Math.abs(forces.n()) / (timber.width * timber.depth)
                > NEGLIGIBLE * rail(timber, damp, taken.situation()).bendingStrength()));
    }

    private static Use worst(LoadedMember member, Timber timber, ServiceClass damp) {
        List<Use> uses = new ArrayList<>();
        for (LoadedMember.Taken taken : member.taken()) {
            TimberRail rail = rail(timber, damp, taken.situation());
            for (MemberForces forces : taken.forces()) {
                uses.add(new Use("bending", rail.bendingUse(forces.my(), forces.mz()), taken.situation()));
                uses.add(new Use("shear", rail.shearUse(Math.hypot(forces.vy(), forces.vz())), taken.situation()));
            }
        }
        return uses.stream().max(Comparator.comparingDouble(Use::ratio)).orElseThrow();
    }
}
