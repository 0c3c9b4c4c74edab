package cradlewright.analysis.testshop;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.EndRelease;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;

/**
 * A shell on a dolly whose forces follow from statics. Two rails of 2 m lie 1 m apart, tied by a member across at each end, on four
 * screw feet under the corners. The shell rests on each rail at 0.5 m from either end, its balance point in the middle: every support
 * carries a quarter of it, each rail bends between its feet like a beam on two supports, and between the supports of the shell its
 * moment is a quarter of the weight times 0.5 m.
 */
public final class FrameShop {

    /** Subject of the one visit. */
    public static final Subject VISIT = SupportShop.VISIT;
    /** Subject of the dolly. */
    public static final Subject DOLLY = new Subject(Scope.DOLLY, "dolly", Optional.empty(), "Dolly");
    /** Distance of a support of the shell from the nearer foot, m. */
    public static final double ARM = 0.5;

    private static final double HEIGHT = 0.5;
    private static final double[] ALONG = {0, 0.5, 1.5, 2};

    private final Map<String, Fact> stock = new LinkedHashMap<>();
    private final List<JointFacts> joints = new ArrayList<>();
    private final List<MemberFacts> more = new ArrayList<>();
    private Optional<String> section = Optional.empty();
    private Optional<String> steel = Optional.of("steel");
    private Optional<Value> mass = Optional.empty();
    private DollyFacts.Build build = DollyFacts.Build.OWN;
    private double leg;
    private UnaryOperator<MemberFacts> change = member -> member;

    /** Starts a shop whose dolly is made of that section and of steel with the given strengths, Pa. */
    public FrameShop(StockFacts.Section section, double fy, double fu) {
        has(section);
        this.section = Optional.of(section.id());
        has(new StockFacts.Steel("steel", "S235", Optional.of(measured(fy)), Optional.of(measured(fu))));
    }

    /** Returns a flat bar on edge, m. */
    public static StockFacts.Flat flat(String id, double height, double width) {
        return new StockFacts.Flat(id, id, Optional.of(measured(height)), Optional.of(measured(width)));
    }

    /** Returns a folded channel with its web upright on the left, outside measures, m. */
    public static StockFacts.Folded channel(String id, double height, double width, double thickness) {
        return new StockFacts.Folded(id, id, StockFacts.Shape.CHANNEL, Optional.of(measured(height)), Optional.of(measured(width)),
                Optional.empty(), Optional.of(measured(thickness)), Optional.of(measured(0)), List.of());
    }

    /** Returns a rectangular tube, m. */
    public static StockFacts.Hollow box(String id, double height, double width, double thickness) {
        return new StockFacts.Hollow(id, id, Optional.of(measured(height)), Optional.of(measured(width)), Optional.of(measured(thickness)));
    }

    /** Returns a measured value without give or take. */
    public static Value measured(double si) {
        return new Value(si, 0, Source.MEASURED);
    }

    /** Says what the shell weighs, kg. */
    public FrameShop weighs(double kilograms) {
        mass = Optional.of(measured(kilograms));
        return this;
    }

    /** Says that nobody knows what steel it is. */
    public FrameShop steelUnknown() {
        steel = Optional.empty();
        return this;
    }

    /** Says how the dolly came about. */
    public FrameShop built(DollyFacts.Build how) {
        build = how;
        return this;
    }

    /** Puts a leg of that length, m, under each corner: {@code leg-left0} to {@code leg-right3}; the feet are at their lower ends. */
    public FrameShop legs(double length) {
        leg = length;
        return this;
    }

    /** Adds gear or stock. */
    public FrameShop has(Fact fact) {
        stock.put(fact.id(), fact);
        return this;
    }

    /** Adds a joint of the dolly. */
    public FrameShop joint(JointFacts joint) {
        joints.add(joint);
        return this;
    }

    /** Changes the record of every member: {@code left-0} to {@code left-2}, {@code right-0} to {@code right-2}, front, rear. */
    public FrameShop members(UnaryOperator<MemberFacts> how) {
        change = how;
        return this;
    }

    /** Adds a member. */
    public FrameShop member(MemberFacts member) {
        more.add(member);
        return this;
    }

    /** Returns a member with joints at its ends. */
    public static MemberFacts joined(MemberFacts m, Optional<String> from, Optional<String> to) {
        return new MemberFacts(m.id(), m.name(), m.fromId(), m.toId(), m.sectionId(), m.steelId(), m.up(), m.releaseFrom(), m.releaseTo(),
                from, to,
                m.unbraced());
    }

    /** Asks a check about the visit. */
    public List<Finding> ask(Check check) {
        return ask(check, check.scope() == Scope.DOLLY ? DOLLY : VISIT);
    }

    private List<Finding> ask(Check check, Subject subject) {
        return new Asked(check, subject).in(snapshot());
    }

    /** Answers a key. */
    public <T> T read(Key<T> key) {
        Engine engine = new Engine();
        engine.update(snapshot());
        return engine.read(key, Progress.NONE);
    }

    private ShopSnapshot snapshot() {
        Map<String, Fact> facts = new LinkedHashMap<>(stock);
        PartFacts part = new PartFacts("body", "body", mass, Optional.of(new Spot(new Vec3(1, 0, 0.8), 0)), Optional.empty());
        PieceFacts shell = new PieceFacts("shell", "shell", PieceKind.SHELL, Optional.empty(), Optional.empty(), List.of(), List.of(part));
        StageFacts stage = new StageFacts("stage", "stage", List.of("body"), List.of());
        List<ContactFacts> contacts = new ArrayList<>();
        List<FixtureFacts> fixtures = new ArrayList<>();
        for (String side : List.of("left", "right")) {
            for (int i = 1; i <= 2; i++) {
                contacts.add(contact(side + i, at(side, i)));
                fixtures.add(new FixtureFacts("fixture-" + side + i, "fixture " + side + i, Optional.of(side + i), Optional.empty(),
                        Optional.empty(), Vec3.ZERO, Optional.empty(), Hold.RESTS, Optional.empty(), OptionalInt.empty(), Optional.empty(),
                        Optional.empty(), Optional.empty()));
            }
        }
        SetupFacts setup = new SetupFacts("setup", "setup", List.of("shell"), CarrierKind.DOLLY, Optional.of("dolly"), Optional.empty(),
                Optional.empty(),
                Vec3.ZERO, 0, contacts, Optional.empty(), SetupFacts.Weather.UNKNOWN);
        VisitFacts visit = new VisitFacts("visit", "visit", Optional.of("stage"), Optional.of("setup"), Optional.empty(), Optional.empty(),
                Optional.empty());
        facts.put("car", new CarFacts("car", "Car", true, List.of(shell), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(stage), List.of(setup), List.of(visit), List.of()));
        facts.put("dolly", dolly(fixtures));
        return new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), SupportShop.TODAY, facts);
    }

    private static ContactFacts contact(String id, Vec3 at) {
        return new ContactFacts(id, id, Optional.empty(), Optional.empty(), Optional.of(at), Optional.of("fixture-" + id),
                Optional.empty(), Vec3.UP,
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(measured(0)), Optional.of(measured(1e-7)),
                        Optional.empty(), Optional.empty());
    }

    private DollyFacts dolly(List<FixtureFacts> fixtures) {
        List<NodeFacts> nodes = new ArrayList<>();
        List<FootFacts> feet = new ArrayList<>();
        List<MemberFacts> members = new ArrayList<>();
        for (String side : List.of("left", "right")) {
            for (int i = 0; i < ALONG.length; i++) {
                nodes.add(new NodeFacts(side + i, side + i, Optional.of(at(side, i))));
                if (i > 0) {
                    members.add(member(side + "-" + (i - 1), side + (i - 1), side + i));
                }
            }
            for (String corner : List.of(side + 0, side + 3)) {
                String foot = leg > 0 ? "low-" + corner : corner;
                if (leg > 0) {
                    nodes.add(new NodeFacts(foot, foot, Optional.of(at(side, corner.endsWith("0") ? 0 : 3).minus(Vec3.UP.times(leg)))));
                    members.add(member("leg-" + corner, foot, corner));
                }
                feet.add(new FootFacts("foot-" + corner, "foot " + corner, Optional.of(foot), true, Optional.empty()));
            }
        }
        members.add(member("front", "left0", "right0"));
        members.add(member("rear", "left3", "right3"));
        members.replaceAll(change);
        members.addAll(more);
        return new DollyFacts("dolly", "dolly", build, Optional.of(measured(1)), Optional.of(new Vec3(1, 0, HEIGHT)), Optional.empty(),
                SupportShop.examined(), nodes, members, joints, List.of(), feet, fixtures, List.of(), Optional.empty());
    }

    private static Vec3 at(String side, int i) {
        return new Vec3(ALONG[i], side.equals("left") ? -0.5 : 0.5, HEIGHT);
    }

    private MemberFacts member(String id, String from, String to) {
        return new MemberFacts(id, id, Optional.of(from), Optional.of(to), section, steel, Optional.empty(), EndRelease.FIXED,
                EndRelease.FIXED, Optional.empty(),
                Optional.empty(), Optional.empty());
    }
}
