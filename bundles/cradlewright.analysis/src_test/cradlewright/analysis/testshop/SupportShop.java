package cradlewright.analysis.testshop;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.Basis;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StageFacts;
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

/** A small shop for tests: one shell of one part, held at places given one by one on a dolly, stands, straps or lift arms. */
public final class SupportShop {

    /** Subject of the one visit. */
    public static final Subject VISIT = new Subject(Scope.VISIT, "car", Optional.of("visit"), "Car, visit");
    /** The day of the answers. */
    public static final LocalDate TODAY = LocalDate.of(2024, 5, 1);

    /** One support as it is being described. */
    public static final class Place {
        private final String id;
        private final Vec3 at;
        private Vec3 normal = Vec3.UP;
        private Optional<Hold> hold = Optional.empty();
        private Optional<String> carrier = Optional.empty();
        private Optional<String> pad = Optional.empty();
        private Optional<Value> gap = Optional.of(measured(0));
        private Optional<Value> compliance = Optional.of(measured(1e-7));
        private Optional<Value> capacity = Optional.empty();
        private Optional<Basis> basis = Optional.empty();
        private Optional<ShimStackFacts> shims = Optional.empty();
        private boolean placed = true;
        private boolean liftPoint;

        private Place(String id, Vec3 at) {
            this.id = id;
            this.at = at;
        }

        /** Says what it can take, in N. */
        public Place takes(double newtons, Basis by) {
            capacity = Optional.of(new Value(newtons, 0, Source.DRAWING));
            basis = Optional.of(by);
            return this;
        }

        /** Says how it holds. */
        public Place holds(Hold how) {
            hold = Optional.of(how);
            return this;
        }

        /** Says on what it rests. */
        public Place on(String carrierId) {
            carrier = Optional.of(carrierId);
            return this;
        }

        /** Says which pad lies there. */
        public Place pad(String padId) {
            pad = Optional.of(padId);
            return this;
        }

        /** Says how much it is low, m. */
        public Place low(double metres) {
            gap = Optional.of(measured(metres));
            return this;
        }

        /** Says how much it is low, and its standard uncertainty, m. */
        public Place low(double metres, double u) {
            gap = Optional.of(new Value(metres, u, Source.MEASURED));
            return this;
        }

        /** Says that nobody measured how much it is low. */
        public Place gapUnknown() {
            gap = Optional.empty();
            return this;
        }

        /** Says how much it gives, m/N. */
        public Place gives(double metresPerNewton) {
            compliance = Optional.of(measured(metresPerNewton));
            return this;
        }

        /** Says that nobody knows how much it gives. */
        public Place giveUnknown() {
            compliance = Optional.empty();
            return this;
        }

        /** Says in what direction it pushes. */
        public Place pushes(Vec3 direction) {
            normal = direction.unit();
            return this;
        }

        /** Says that nobody wrote down where it is. */
        public Place nowhere() {
            placed = false;
            return this;
        }

        /** Says that a lift point of the car rests there; what it takes then is what the lift point takes. */
        public Place atLiftPoint() {
            liftPoint = true;
            return this;
        }

        /** Puts equal shims under it. */
        public Place shims(int count, double thickness) {
            shims = Optional.of(new ShimStackFacts(List.of(new ShimFacts(Optional.empty(), Optional.of(measured(thickness)),
                    OptionalInt.of(count)))));
            return this;
        }

        private ContactFacts contact(CarrierKind kind) {
            Optional<String> carriedBy = carrier.or(() -> kind == CarrierKind.DOLLY ? Optional.of("fixture-" + id)
                    : Optional.empty());
            Optional<Vec3> point = placed && !liftPoint ? Optional.of(at) : Optional.empty();
            return new ContactFacts(id, id, Optional.empty(), liftPoint ? Optional.of("point-" + id) : Optional.empty(), point,
                    carriedBy,
                    Optional.empty(), normal, hold, pad, shims, gap, compliance, Optional.empty(), Optional.empty());
        }

        private FixtureFacts fixture() {
            return new FixtureFacts("fixture-" + id, "fixture " + id, Optional.of("node-" + id), Optional.empty(), Optional.empty(),
                    Vec3.ZERO, Optional.empty(), Hold.RESTS, Optional.empty(), OptionalInt.empty(), capacity, basis, Optional.empty());
        }

        private LiftPointFacts point() {
            return new LiftPointFacts("point-" + id, "lift point " + id, Optional.of(new Spot(at, 0)), Condition.SOUND,
                    Optional.empty(), Optional.empty(),
                    capacity, basis);
        }
    }

    private final CarrierKind kind;
    private final List<Place> places = new ArrayList<>();
    private final List<WorkPointFacts> workPoints = new ArrayList<>();
    private final Map<String, Fact> gear = new LinkedHashMap<>();
    private Optional<Value> mass = Optional.empty();
    private Spot balance = new Spot(Vec3.ZERO, 0);
    private Optional<Value> torsion = Optional.empty();
    private final List<PartFacts> more = new ArrayList<>();
    private Optional<String> lift = Optional.empty();
    private Optional<String> hoist = Optional.empty();
    private SettingsFacts settings = SettingsFacts.commonPractice();

    /** Starts a shop whose shell is carried that way. */
    public SupportShop(CarrierKind kind) {
        this.kind = kind;
    }

    /** Returns a measured value without give or take. */
    public static Value measured(double si) {
        return new Value(si, 0, Source.MEASURED);
    }

    /** Says what the shell weighs, kg, with its standard uncertainty. */
    public SupportShop weighs(double kilograms, double u) {
        mass = Optional.of(new Value(kilograms, u, Source.WEIGHED));
        return this;
    }

    /** Says where its balance point lies, m, with the standard uncertainty of each coordinate. */
    public SupportShop balance(double x, double y, double z, double u) {
        balance = new Spot(new Vec3(x, y, z), u);
        return this;
    }

    /** Adds a further part with its mass, kg, and the standard uncertainty of that. */
    public SupportShop part(String id, double kilograms, double u, Vec3 at) {
        more.add(new PartFacts(id, id, Optional.of(new Value(kilograms, u, Source.WEIGHED)), Optional.of(new Spot(at, 0)),
                Optional.empty()));
        return this;
    }

    /** Says how stiff the shell is in torsion, N*m/rad. */
    public SupportShop torsion(double stiffness) {
        return torsion(stiffness, 0);
    }

    /** Says how stiff the shell is in torsion, N*m/rad, with its standard uncertainty. */
    public SupportShop torsion(double stiffness, double u) {
        torsion = Optional.of(new Value(stiffness, u, Source.MEASURED));
        return this;
    }

    /** Adds a support of the shell. */
    public Place support(String id, double x, double y, double z) {
        Place place = new Place(id, new Vec3(x, y, z));
        places.add(place);
        return place;
    }

    /** Adds a place where people lean, pull or stand. */
    public SupportShop work(String id, WorkPointFacts.Kind what, Vec3 at, Vec3 direction) {
        workPoints.add(new WorkPointFacts(id, id, Optional.of(new Spot(at, 0)), Optional.of(direction), Optional.of(what)));
        return this;
    }

    /** Says what friction the shop has settled for pads. */
    public SupportShop friction(double low, double high) {
        settings = settings.withFriction(new SettingsFacts.Friction(low, high));
        return this;
    }

    /** Adds gear or stock. */
    public SupportShop has(Fact fact) {
        gear.put(fact.id(), fact);
        if (fact instanceof GearFacts.Lift) {
            lift = Optional.of(fact.id());
        }
        if (fact instanceof GearFacts.Hoist) {
            hoist = Optional.of(fact.id());
        }
        return this;
    }

    /** Returns an examination without a flaw. */
    public static Examination examined() {
        return new Examination(Optional.of("7"), Optional.of(TODAY), Optional.of(TODAY.plusYears(1)));
    }

    /** Answers a key. */
    public <T> T read(Key<T> key) {
        Engine engine = new Engine();
        engine.update(snapshot());
        return engine.read(key, Progress.NONE);
    }

    /** Asks a check about the visit. */
    public List<Finding> ask(Check check) {
        return ask(check, VISIT);
    }

    /** Asks a check about a subject. */
    public List<Finding> ask(Check check, Subject subject) {
        return new Asked(check, subject).in(snapshot());
    }

    private ShopSnapshot snapshot() {
        Map<String, Fact> facts = new LinkedHashMap<>(gear);
        PartFacts part = new PartFacts("body", "body", mass, Optional.of(balance), Optional.empty());
        List<PartFacts> parts = new ArrayList<>(List.of(part));
        parts.addAll(more);
        PieceFacts shell = new PieceFacts("shell", "shell", PieceKind.SHELL, torsion, Optional.empty(), List.of(), parts);
        StageFacts stage = new StageFacts("stage", "stage", parts.stream().map(PartFacts::id).toList(), List.of());
        SetupFacts setup = new SetupFacts("setup", "setup", List.of("shell"), kind, kind == CarrierKind.DOLLY
                ? Optional.of("dolly") : Optional.empty(),
                lift, hoist, Vec3.ZERO, 0, places.stream().map(place -> place.contact(kind)).toList(), Optional.empty(),
                SetupFacts.Weather.UNKNOWN);
        VisitFacts visit = new VisitFacts("visit", "visit", Optional.of("stage"), Optional.of("setup"), Optional.empty(),
                Optional.empty(), Optional.empty());
        List<LiftPointFacts> points = places.stream().filter(place -> place.liftPoint).map(Place::point).toList();
        facts.put("car", new CarFacts("car", "Car", true, List.of(shell), List.of(), points, workPoints, List.of(), List.of(),
                List.of(),
                List.of(stage), List.of(setup), List.of(visit), List.of()));
        if (kind == CarrierKind.DOLLY) {
            facts.put("dolly", dolly());
        }
        return new ShopSnapshot(1, "Shop", settings, TODAY, facts);
    }

    /** A rigid dolly with a fixture under each support and a castor at each of four corners far out. */
    private DollyFacts dolly() {
        List<NodeFacts> nodes = new ArrayList<>();
        List<CastorFacts> castors = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            String node = "corner-" + corner;
            nodes.add(new NodeFacts(node, node, Optional.of(new Vec3(corner < 2 ? -3 : 3, corner % 2 == 0 ? -2 : 2, 0.2))));
            castors.add(new CastorFacts("castor-" + corner, "castor " + corner, Optional.of(node), Optional.empty(), true,
                    CastorFacts.Brake.WHEEL));
        }
        places.forEach(place -> nodes.add(new NodeFacts("node-" + place.id, place.id, Optional.of(new Vec3(place.at.x(),
                place.at.y(), 0.2)))));
        return new DollyFacts("dolly", "dolly", DollyFacts.Build.OWN, Optional.of(measured(100)), Optional.of(new Vec3(0, 0,
                0.2)), Optional.empty(), examined(),
                nodes, List.of(), List.of(), castors, List.of(), places.stream().map(Place::fixture).toList(), List.of(),
                Optional.empty());
    }
}
