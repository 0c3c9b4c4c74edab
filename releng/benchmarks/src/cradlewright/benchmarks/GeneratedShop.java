package cradlewright.benchmarks;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.EndRelease;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A shop of cars that are alike, each with three stages and as many visits, on a dolly of its own: 60 members, eight soft pads,
 * four castors. People lean, pull and stand at 54 places of each car; with the car at rest, each castor in a hole and the dolly
 * over a joint in the floor that makes 60 situations a visit.
 */
final class GeneratedShop {

    static final int MEMBERS = 60;
    static final double BODY = 300;
    /** At rest, four castors in a hole and the joint in the floor come on top of the places where people work. */
    static final int OTHER_SITUATIONS = 6;

    private static final LocalDate TODAY = LocalDate.of(2025, 3, 14);
    private static final int ALONG = 9;
    private static final int ACROSS = 4;
    private static final double TOP = 0.3;

    private Map<String, Fact> facts = new LinkedHashMap<>();
    private final int placesEach;
    private long number;

    GeneratedShop(int cars, int situations) {
        placesEach = situations - OTHER_SITUATIONS;
        facts.put("box", new StockFacts.Hollow("box", "box", value(0.06), value(0.04), value(0.003)));
        facts.put("steel", new StockFacts.Steel("steel", "S235", value(235e6), value(360e6)));
        facts.put("castor", new StockFacts.CastorType("castor", "castor", value(450), value(0.16), value(0.05),
                Optional.of(StockFacts.Tread.POLYURETHANE), value(2e6), value(2e-4), Optional.empty(), value(3)));
        facts.put("pad", new StockFacts.Pad("pad", "pad", StockFacts.Material.RUBBER, value(0.06), value(0.06), value(0.02),
                value(5e6), value(1e6), value(2e6), value(0.2), value(80)));
        facts.put("bay", new PlaceFacts("bay", "bay", PlaceFacts.Kind.BAY, Optional.empty(), false, value(0.005), value(18),
                value(0.003)));
        for (int car = 0; car < cars; car++) {
            put(car(car, BODY));
            put(dolly(car));
            for (int visit = 0; visit < 3; visit++) {
                String id = id("placement", car, visit);
                put(new PlacementFacts(id, id, Optional.of(id("visit", car, visit)), Optional.of("bay")));
            }
        }
    }

    private void put(Fact fact) {
        facts.put(fact.id(), fact);
    }

    /** Weighs the body of one car anew, kg. */
    void weigh(int car, double body) {
        facts = new LinkedHashMap<>(facts);
        put(car(car, body));
    }

    ShopSnapshot snapshot() {
        return new ShopSnapshot(++number, "generated", SettingsFacts.commonPractice(), TODAY, facts);
    }

    private static String id(String what, int car, int which) {
        return what + "-" + car + "-" + which;
    }

    private static Optional<Value> value(double si) {
        return Optional.of(new Value(si, 0, Source.MEASURED));
    }

    private static PartFacts part(int car, int which, double mass, double x, double z) {
        String id = id("part", car, which);
        return new PartFacts(id, id, Optional.of(new Value(mass, mass / 50, Source.WEIGHED)),
                Optional.of(new Spot(new Vec3(x, 0.01, z), 0.01)), Optional.empty());
    }

    private CarFacts car(int car, double body) {
        List<PartFacts> parts = List.of(part(car, 0, body, 1.1, 0.8), part(car, 1, 40, 0.6, 0.9), part(car, 2, 60, 1.7, 0.8),
                part(car, 3, 25, 1.2, 1.2));
        List<String> ids = parts.stream().map(PartFacts::id).toList();
        String shell = id("shell", car, 0);
        PieceFacts piece = new PieceFacts(shell, shell, PieceKind.SHELL, value(4e5), Optional.empty(), List.of(), parts);
        List<StageFacts> stages = new ArrayList<>();
        List<SetupFacts> setups = new ArrayList<>();
        List<VisitFacts> visits = new ArrayList<>();
        List<MountFacts> mounts = new ArrayList<>();
        List<ContactFacts> contacts = new ArrayList<>();
        for (int pad = 0; pad < 8; pad++) {
            Vec3 at = padAt(pad).plus(Vec3.UP.times(0.12));
            String mount = id("mount", car, pad);
            mounts.add(new MountFacts(mount, mount, Optional.of(new Spot(at, 0.001)), Condition.SOUND, value(0.0012),
                    Optional.empty(),
                    OptionalInt.empty(), Optional.of(false), Optional.empty(), Optional.empty(), Optional.empty()));
            contacts.add(new ContactFacts(id("contact", car, pad), id("contact", car, pad), Optional.of(mount), Optional.empty(),
                    Optional.of(at), Optional.of(id("fixture", car, pad)), Optional.empty(), Vec3.UP, Optional.empty(),
                            Optional.of("pad"),
                    Optional.empty(), value(0.0002 * (pad % 3)), Optional.empty(), Optional.empty(), Optional.empty()));
        }
        for (int visit = 0; visit < 3; visit++) {
            String stage = id("stage", car, visit);
            String setup = id("setup", car, visit);
            stages.add(new StageFacts(stage, stage, ids.subList(0, ids.size() - visit), List.of()));
            setups.add(new SetupFacts(setup, setup, List.of(shell), CarrierKind.DOLLY, Optional.of(id("dolly", car, 0)),
                    Optional.empty(),
                    Optional.empty(), Vec3.ZERO, 0, contacts, Optional.empty(), SetupFacts.Weather.UNKNOWN));
            visits.add(new VisitFacts(id("visit", car, visit), id("visit", car, visit), Optional.of(stage), Optional.of(setup),
                    Optional.of(TODAY.plusMonths(visit)), Optional.of(TODAY.plusMonths(visit + 1)), Optional.empty()));
        }
        String name = id("car", car, 0);
        return new CarFacts(name, name, false, List.of(piece), mounts, List.of(), workPoints(car), List.of(), List.of(),
                List.of(), stages,
                setups, visits, List.of());
    }

    private List<WorkPointFacts> workPoints(int car) {
        List<WorkPointFacts> points = new ArrayList<>();
        WorkPointFacts.Kind[] kinds = WorkPointFacts.Kind.values();
        while (points.size() < placesEach) {
            int which = points.size();
            String id = id("work", car, which);
            WorkPointFacts.Kind kind = kinds[which % kinds.length];
            boolean stands = kind == WorkPointFacts.Kind.STAND_ON;
            double side = which % 2 == 0 ? 1 : -1;
            Vec3 place = new Vec3(0.3 + 1.7 * which / placesEach, stands ? 0.3 * side : 0.6 * side, 0.8);
            points.add(new WorkPointFacts(id, id, Optional.of(new Spot(place, 0)),
                    Optional.of(stands ? Vec3.UP.times(-1) : new Vec3(0, side, 0)), Optional.of(kind)));
        }
        return points;
    }

    private static Vec3 at(int i, int j) {
        return new Vec3(0.275 * i, 0.4 * (j - 1.5), TOP);
    }

    private static Vec3 padAt(int pad) {
        return at(1 + 2 * (pad % 4), pad < 4 ? 0 : ACROSS - 1);
    }

    private static DollyFacts dolly(int car) {
        List<NodeFacts> nodes = new ArrayList<>();
        List<MemberFacts> members = new ArrayList<>();
        for (int i = 0; i < ALONG; i++) {
            for (int j = 0; j < ACROSS; j++) {
                String node = node(car, i, j);
                nodes.add(new NodeFacts(node, node, Optional.of(at(i, j))));
                if (i > 0) {
                    members.add(member(car, members.size(), node(car, i - 1, j), node));
                }
                if (j > 0) {
                    members.add(member(car, members.size(), node(car, i, j - 1), node));
                }
            }
        }
        members.add(member(car, members.size(), node(car, 4, 1), node(car, 5, 2)));
        if (members.size() != MEMBERS) {
            throw new IllegalStateException("found " + members.size() + " members");
        }
        List<CastorFacts> castors = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            String id = id("wheel", car, corner);
            castors.add(new CastorFacts(id, id, Optional.of(node(car, corner < 2 ? 0 : ALONG - 1,
                    corner % 2 == 0 ? 0 : ACROSS - 1)),
                    Optional.of("castor"), true, CastorFacts.Brake.WHEEL));
        }
        List<FixtureFacts> fixtures = new ArrayList<>();
        for (int pad = 0; pad < 8; pad++) {
            String id = id("fixture", car, pad);
            fixtures.add(new FixtureFacts(id, id, Optional.of(node(car, 1 + 2 * (pad % 4), pad < 4 ? 0 : ACROSS - 1)),
                    Optional.empty(), value(0.1), Vec3.ZERO, Optional.of("pad"), Hold.RESTS, Optional.empty(), OptionalInt.empty(),
                    Optional.empty(), Optional.empty(), Optional.empty()));
        }
        String name = id("dolly", car, 0);
        return new DollyFacts(name, name, DollyFacts.Build.OWN, Optional.empty(), Optional.empty(), Optional.empty(),
                new Examination(Optional.empty(), Optional.empty(), Optional.empty()), nodes, members, List.of(), castors,
                        List.of(),
                fixtures, List.of(), Optional.empty());
    }

    private static String node(int car, int i, int j) {
        return id("node", car, i * ACROSS + j);
    }

    private static MemberFacts member(int car, int which, String from, String to) {
        String id = id("member", car, which);
        return new MemberFacts(id, id, Optional.of(from), Optional.of(to), Optional.of("box"), Optional.of("steel"),
                Optional.empty(), EndRelease.FIXED, EndRelease.FIXED, Optional.empty(), Optional.empty(), Optional.empty());
    }
}
