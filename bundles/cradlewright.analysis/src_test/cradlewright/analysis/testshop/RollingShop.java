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
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.StockFacts.CastorType;
import cradlewright.analysis.facts.StockFacts.Tread;
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
 * A shell on three supports of a rigid dolly with four castors of one type: front left, front right, rear left, rear right, at
 * 0.8 m in
 * front of and behind its middle and 0.4 m to either side. The dolly weighs 140 kg, its balance point in its middle at the
 * height asked for.
 */
public final class RollingShop {

    /** Subject of the one visit. */
    public static final Subject VISIT = SupportShop.VISIT;
    /** Subject of the dolly. */
    public static final Subject DOLLY = new Subject(Scope.DOLLY, "dolly", Optional.empty(), "Dolly");
    /** Own mass of the dolly, kg. */
    public static final double OWN = 140;

    private static final String[] CORNERS = {"front left", "front right", "rear left", "rear right"};

    private final Map<String, Fact> more = new LinkedHashMap<>();
    private final List<WorkPointFacts> workPoints = new ArrayList<>();
    private Optional<Value> mass = Optional.empty();
    private Spot balance = new Spot(Vec3.ZERO, 0);
    private double ownHeight;
    private int castors = CORNERS.length;
    private boolean swivel = true;
    private double halfWidth = 0.4;
    private List<Integer> braked = List.of();
    private final List<PropFacts> props = new ArrayList<>();
    private Optional<Double> feet = Optional.empty();
    private boolean feetDown;
    private Optional<String> place = Optional.empty();
    private Optional<LocalDate> until = Optional.empty();
    private Optional<Value> plate = Optional.empty();
    private DollyFacts.Build build = DollyFacts.Build.OWN;
    private Optional<Value> rated = Optional.of(measured(1000));
    private Optional<Value> diameter = Optional.of(measured(0.125));
    private Optional<Value> lead = Optional.of(measured(0.05));
    private Optional<Tread> tread = Optional.of(Tread.POLYURETHANE);
    private Optional<Value> stiffness = Optional.empty();
    private Optional<Value> area = Optional.empty();

    /** Returns a measured value without give or take. */
    public static Value measured(double si) {
        return new Value(si, 0, Source.MEASURED);
    }

    /** Returns a castor type that only states its rated load, kg, and wheel diameter, m. */
    public static CastorType type(String id, double rated, double diameter) {
        return new CastorType(id, id, Optional.of(measured(rated)), Optional.of(measured(diameter)), Optional.empty(),
                Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Says what the shell weighs, kg, with its standard uncertainty. */
    public RollingShop weighs(double kilograms, double u) {
        mass = Optional.of(new Value(kilograms, u, Source.WEIGHED));
        return this;
    }

    /** Says where the common balance point of shell and dolly lies, m, both at one height; after the mass. */
    public RollingShop commonBalance(double x, double y, double z) {
        double share = (mass.orElseThrow().si() + OWN) / mass.orElseThrow().si();
        balance = new Spot(new Vec3(x * share, y * share, z), 0);
        ownHeight = z;
        return this;
    }

    /** Says how far off each coordinate of the balance point of the shell may be, its standard uncertainty, m. */
    public RollingShop balanceOff(double u) {
        balance = new Spot(balance.at(), u);
        return this;
    }

    /** Says how many castors there are. */
    public RollingShop castors(int count) {
        castors = count;
        return this;
    }

    /** Sets the castors that far to either side, m. */
    public RollingShop halfWidth(double metres) {
        halfWidth = metres;
        return this;
    }

    /** Says that no castor turns. */
    public RollingShop fixed() {
        swivel = false;
        return this;
    }

    /** Says which castors have brakes, by number from zero. */
    public RollingShop braked(Integer... which) {
        braked = List.of(which);
        return this;
    }

    /** Gives the dolly screw feet at that distance to either side, m. */
    public RollingShop feet(double toTheSide, boolean down) {
        feet = Optional.of(toTheSide);
        feetDown = down;
        return this;
    }

    /** Fits an end prop between shell and floor, rated for 20 kN. */
    public RollingShop propped(String id, Vec3 at) {
        props.add(new PropFacts(id, id, Optional.of(at), true, Optional.of(measured(20_000)), Optional.of(Basis.RATED_LOAD),
                Optional.empty()));
        return this;
    }

    /** Says what its castors are rated for, kg. */
    public RollingShop rated(Optional<Value> kilograms) {
        rated = kilograms;
        return this;
    }

    /** Says how large its wheels are, m. */
    public RollingShop diameter(Optional<Value> metres) {
        diameter = metres;
        return this;
    }

    /** Says how far its wheels trail, m. */
    public RollingShop lead(Optional<Value> metres) {
        lead = metres;
        return this;
    }

    /** Says what its wheels are made of. */
    public RollingShop tread(Optional<Tread> what) {
        tread = what;
        return this;
    }

    /** Says how stiff its castors are, N/m. */
    public RollingShop stiffness(double newtonsPerMetre) {
        stiffness = Optional.of(measured(newtonsPerMetre));
        return this;
    }

    /** Says how large the contact of a wheel is, m2. */
    public RollingShop contact(double squareMetres) {
        area = Optional.of(measured(squareMetres));
        return this;
    }

    /** Says how it was made and what its plate allows, kg. */
    public RollingShop bought(Optional<Value> kilograms) {
        build = DollyFacts.Build.BOUGHT;
        plate = kilograms;
        return this;
    }

    /** Puts it somewhere. */
    public RollingShop at(PlaceFacts where) {
        place = Optional.of(where.id());
        return has(where);
    }

    /** Puts it on a floor with that fall, m/m, indoors. */
    public RollingShop onFall(double fall) {
        return at(new PlaceFacts("place", "place", PlaceFacts.Kind.BAY, Optional.empty(), false, Optional.of(measured(fall)),
                Optional.empty(),
                Optional.empty()));
    }

    /** Puts it on a slab. */
    public RollingShop on(SlabFacts slab) {
        at(new PlaceFacts("place", "place", PlaceFacts.Kind.BAY, Optional.of(slab.id()), false, Optional.empty(),
                Optional.empty(),
                Optional.empty()));
        return has(slab);
    }

    /** Says how long it stays, from the day of the answers on. */
    public RollingShop staysUntil(LocalDate day) {
        until = Optional.of(day);
        return this;
    }

    /** Adds a place where people lean, pull or stand. */
    public RollingShop work(String id, WorkPointFacts.Kind what, Vec3 at, Vec3 direction) {
        workPoints.add(new WorkPointFacts(id, id, Optional.of(new Spot(at, 0)), Optional.of(direction), Optional.of(what)));
        return this;
    }

    /** Adds gear or stock. */
    public RollingShop has(Fact fact) {
        more.put(fact.id(), fact);
        return this;
    }

    /** Asks a check. */
    public List<Finding> ask(Check check) {
        return new Asked(check, check.scope() == Scope.DOLLY ? DOLLY : VISIT).in(snapshot());
    }

    /** Answers a key. */
    public <T> T read(Key<T> key) {
        Engine engine = new Engine();
        engine.update(snapshot());
        return engine.read(key, Progress.NONE);
    }

    private ShopSnapshot snapshot() {
        Map<String, Fact> facts = new LinkedHashMap<>(more);
        facts.put("type", new CastorType("type", "type", rated, diameter, lead, tread, stiffness, area, Optional.empty(),
                Optional.empty()));
        PartFacts part = new PartFacts("body", "body", mass, Optional.of(balance), Optional.empty());
        PieceFacts shell = new PieceFacts("shell", "shell", PieceKind.SHELL, Optional.empty(), Optional.empty(), List.of(),
                List.of(part));
        StageFacts stage = new StageFacts("stage", "stage", List.of("body"), List.of());
        SetupFacts setup = new SetupFacts("setup", "setup", List.of("shell"), CarrierKind.DOLLY, Optional.of("dolly"),
                Optional.empty(),
                Optional.empty(), Vec3.ZERO, 0, List.of(contact("A", -0.7, -0.4), contact("B", -0.7, 0.4), contact("C", 0.7, 0)),
                Optional.empty(), SetupFacts.Weather.UNKNOWN);
        VisitFacts visit = new VisitFacts("visit", "visit", Optional.of("stage"), Optional.of("setup"),
                Optional.of(SupportShop.TODAY), until, Optional.empty());
        facts.put("car", new CarFacts("car", "Car", true, List.of(shell), List.of(), List.of(), workPoints, List.of(),
                List.of(), List.of(),
                List.of(stage), List.of(setup), List.of(visit), List.of()));
        facts.put("dolly", dolly());
        place.ifPresent(id -> facts.put("placement", new PlacementFacts("placement", "placement", Optional.of("visit"),
                Optional.of(id))));
        return new ShopSnapshot(1, "Shop", SettingsFacts.commonPractice(), SupportShop.TODAY, facts);
    }

    private static ContactFacts contact(String id, double x, double y) {
        return new ContactFacts(id, id, Optional.empty(), Optional.empty(), Optional.of(new Vec3(x, y, 0.3)),
                Optional.of("fixture-" + id),
                Optional.empty(), Vec3.UP, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(measured(0)),
                Optional.of(measured(1e-7)), Optional.empty(), Optional.empty());
    }

    private DollyFacts dolly() {
        List<NodeFacts> nodes = new ArrayList<>();
        List<CastorFacts> wheels = new ArrayList<>();
        List<FootFacts> down = new ArrayList<>();
        List<FixtureFacts> fixtures = new ArrayList<>();
        for (int i = 0; i < CORNERS.length; i++) {
            String corner = CORNERS[i];
            double x = i < 2 ? -0.8 : 0.8;
            double side = i % 2 == 0 ? -1 : 1;
            nodes.add(new NodeFacts(corner, corner, Optional.of(new Vec3(x, side * halfWidth, 0.2))));
            if (i < castors) {
                wheels.add(new CastorFacts("castor-" + i, corner, Optional.of(corner), Optional.of("type"), swivel,
                        braked.contains(i) ? CastorFacts.Brake.WHEEL : CastorFacts.Brake.NONE));
            }
            feet.ifPresent(wide -> {
                nodes.add(new NodeFacts("foot " + corner, corner, Optional.of(new Vec3(x, side * wide, 0.2))));
                down.add(new FootFacts("foot-" + corner, "foot " + corner, Optional.of("foot " + corner), feetDown, Optional.empty()));
            });
        }
        for (String id : List.of("A", "B", "C")) {
            double x = id.equals("C") ? 0.7 : -0.7;
            double y = id.equals("A") ? -0.4 : id.equals("B") ? 0.4 : 0;
            nodes.add(new NodeFacts("node-" + id, id, Optional.of(new Vec3(x, y, 0.2))));
            fixtures.add(new FixtureFacts("fixture-" + id, "fixture " + id, Optional.of("node-" + id), Optional.empty(),
                    Optional.empty(), Vec3.ZERO, Optional.empty(), Hold.RESTS, Optional.empty(), OptionalInt.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty()));
        }
        return new DollyFacts("dolly", "dolly", build, Optional.of(measured(OWN)), Optional.of(new Vec3(0, 0, ownHeight)), plate,
                SupportShop.examined(), nodes, List.of(), List.of(), wheels, down, fixtures, props, Optional.empty());
    }
}
