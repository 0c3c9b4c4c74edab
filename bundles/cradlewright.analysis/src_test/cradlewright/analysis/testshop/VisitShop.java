package cradlewright.analysis.testshop;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.BraceFacts;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.CutZoneFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.TemporaryLoadFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.facts.WeighingFacts;
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

/** One car at one visit with every record open to the test. The car is "car", its visit "visit", its pieces "shell" and "chassis". */
public final class VisitShop {

    /** Subject of the visit. */
    public static final Subject VISIT = new Subject(Scope.VISIT, "car", Optional.of("visit"), "Car, visit");
    /** The day of the answers. */
    public static final LocalDate TODAY = LocalDate.of(2025, 3, 14);

    /** One contact of the setup as it is being described: it rests, upright, on nothing named, at a place of its own. */
    public static final class Touch {
        private final String id;
        private Optional<Vec3> point = Optional.empty();
        private Optional<String> mount = Optional.empty();
        private Optional<String> liftPoint = Optional.empty();
        private Optional<String> carrier = Optional.empty();
        private Optional<String> hole = Optional.empty();
        private Vec3 normal = Vec3.UP;
        private Optional<Hold> hold = Optional.empty();
        private Optional<String> pad = Optional.empty();
        private Optional<ShimStackFacts> shims = Optional.empty();
        private Optional<Value> gap = Optional.empty();
        private Optional<Value> compliance = Optional.empty();
        private Optional<Value> height = Optional.empty();

        private Touch(String id) {
            this.id = id;
        }

        /** Says where it is. */
        public Touch at(double x, double y, double z) {
            point = Optional.of(new Vec3(x, y, z));
            return this;
        }

        /** Says which mount rests there. */
        public Touch mount(String mountId) {
            mount = Optional.of(mountId);
            return this;
        }

        /** Says which lift point rests there. */
        public Touch liftPoint(String liftPointId) {
            liftPoint = Optional.of(liftPointId);
            return this;
        }

        /** Says on what it rests. */
        public Touch on(String carrierId) {
            carrier = Optional.of(carrierId);
            return this;
        }

        /** Says in which hole of the boom the hook is. */
        public Touch hole(String holeId) {
            hole = Optional.of(holeId);
            return this;
        }

        /** Says in what direction it pushes. */
        public Touch pushes(double x, double y, double z) {
            normal = new Vec3(x, y, z).unit();
            return this;
        }

        /** Says how it holds. */
        public Touch holds(Hold how) {
            hold = Optional.of(how);
            return this;
        }

        /** Says which pad lies there. */
        public Touch pad(String padId) {
            pad = Optional.of(padId);
            return this;
        }

        /** Says which shims lie there. */
        public Touch shims(ShimStackFacts stack) {
            shims = Optional.of(stack);
            return this;
        }

        /** Says by how much it is low, m. */
        public Touch low(double metres) {
            gap = Optional.of(measured(metres));
            return this;
        }

        /** Says by how much it is low and what that is off by, m. */
        public Touch low(double metres, double u) {
            gap = Optional.of(new Value(metres, u, Source.MEASURED));
            return this;
        }

        /** Says how stiff it is, N/m. */
        public Touch stiff(double newtonsPerMetre) {
            compliance = Optional.of(measured(1 / newtonsPerMetre));
            return this;
        }

        /** Says how high above the floor the stand or arm is set, m. */
        public Touch set(double metres) {
            height = Optional.of(measured(metres));
            return this;
        }

        private ContactFacts facts() {
            return new ContactFacts(id, id, mount, liftPoint, point, carrier, hole, normal, hold, pad, shims, gap, compliance,
                    Optional.empty(), height);
        }
    }

    public CarrierKind kind;
    public boolean separateChassis = true;
    public final List<PartFacts> shellParts = new ArrayList<>();
    public final List<PartFacts> chassisParts = new ArrayList<>();
    public final List<String> partsOn = new ArrayList<>();
    public final List<String> loadsOn = new ArrayList<>();
    public final List<String> carried = new ArrayList<>(List.of("shell"));
    public final List<MountFacts> mounts = new ArrayList<>();
    public final List<LiftPointFacts> liftPoints = new ArrayList<>();
    public final List<WorkPointFacts> workPoints = new ArrayList<>();
    public final List<CutZoneFacts> cuts = new ArrayList<>();
    public final List<TemporaryLoadFacts> loads = new ArrayList<>();
    public final List<BraceFacts> braces = new ArrayList<>();
    public final List<Touch> touches = new ArrayList<>();
    public final Map<String, Fact> others = new LinkedHashMap<>();
    public Optional<String> dolly = Optional.empty();
    public Optional<String> lift = Optional.empty();
    public Optional<String> hoist = Optional.empty();
    public Optional<String> stage = Optional.of("stage");
    public Optional<Value> torsion = Optional.empty();
    public Optional<SetupFacts.ShimTarget> shimTarget = Optional.empty();
    public SetupFacts.Weather weather = SetupFacts.Weather.UNKNOWN;
    public Vec3 shift = Vec3.ZERO;
    public double heading;
    public final List<WeighingFacts> weighings = new ArrayList<>();
    public SettingsFacts settings = SettingsFacts.commonPractice();

    /** Starts a shop whose car is carried that way. */
    public VisitShop(CarrierKind kind) {
        this.kind = kind;
    }

    /** Returns a measured value without give or take. */
    public static Value measured(double si) {
        return new Value(si, 0, Source.MEASURED);
    }

    /** Adds a part of the shell that is on. */
    public VisitShop part(String id, Value mass, Vec3 at, double u) {
        shellParts.add(new PartFacts(id, id, Optional.of(mass), Optional.of(new Spot(at, u)), Optional.empty()));
        partsOn.add(id);
        return this;
    }

    /** Adds a part of the shell that is on and of a mass without give or take, kg. */
    public VisitShop part(String id, double mass, double x, double y, double z) {
        return part(id, measured(mass), new Vec3(x, y, z), 0);
    }

    /** Adds a contact. */
    public Touch touch(String id) {
        Touch touch = new Touch(id);
        touches.add(touch);
        return touch;
    }

    /** Adds a body mount. */
    public VisitShop mount(String id, Vec3 at, Condition condition, Optional<Boolean> fast) {
        mounts.add(new MountFacts(id, id, Optional.of(new Spot(at, 0)), condition, Optional.empty(), Optional.empty(),
                OptionalInt.empty(), fast,
                Optional.empty(), Optional.empty(), Optional.empty()));
        return this;
    }

    /** Adds a record beside the car. */
    public VisitShop with(Fact fact) {
        others.put(fact.id(), fact);
        return this;
    }

    /** Returns the records. */
    public Map<String, Fact> facts() {
        PieceFacts shell = new PieceFacts("shell", "shell", PieceKind.SHELL, torsion, Optional.empty(), List.of(), shellParts);
        PieceFacts chassis = new PieceFacts("chassis", "chassis", PieceKind.CHASSIS, Optional.empty(), Optional.empty(),
                List.of(), chassisParts);
        SetupFacts setup = new SetupFacts("setup", "setup", carried, kind, dolly, lift, hoist, shift, heading,
                touches.stream().map(Touch::facts).toList(), shimTarget, weather);
        VisitFacts visit = new VisitFacts("visit", "visit", stage, Optional.of("setup"), Optional.empty(), Optional.empty(),
                Optional.empty());
        Map<String, Fact> facts = new LinkedHashMap<>(others);
        facts.put("car", new CarFacts("car", "Car", separateChassis, List.of(shell, chassis), mounts, liftPoints, workPoints,
                cuts, loads, braces,
                List.of(new StageFacts("stage", "stage", partsOn, loadsOn)), List.of(setup), List.of(visit), weighings));
        return facts;
    }

    /** Returns an engine that holds the shop. */
    public Engine engine() {
        Engine engine = new Engine();
        engine.update(snapshot());
        return engine;
    }

    private ShopSnapshot snapshot() {
        return new ShopSnapshot(1, "Shop", settings, TODAY, facts());
    }

    /** Answers a key. */
    public <T> T read(Key<T> key) {
        return engine().read(key, Progress.NONE);
    }

    /** Asks a check about the visit. */
    public List<Finding> ask(Check check) {
        return ask(check, VISIT);
    }

    /** Asks a check about a subject. */
    public List<Finding> ask(Check check, Subject subject) {
        return new Asked(check, subject).in(snapshot());
    }
}
