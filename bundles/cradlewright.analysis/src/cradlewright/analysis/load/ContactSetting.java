package cradlewright.analysis.load;

import cradlewright.analysis.dolly.DollyBody;
import cradlewright.analysis.dolly.DollyBodyKey;
import cradlewright.analysis.dolly.RockingEnd;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Compliances;
import cradlewright.analysis.standing.GapFrom;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.analysis.standing.Weight;
import cradlewright.mechanics.contact.ContactSolution;
import cradlewright.mechanics.contact.ContactSolver;
import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.coupled.Body;
import cradlewright.mechanics.coupled.Contact;
import cradlewright.mechanics.coupled.CoupledProblem;
import cradlewright.mechanics.coupled.CoupledSolution;
import cradlewright.mechanics.coupled.Flexibility;
import cradlewright.mechanics.coupled.FrameFlexibility;
import cradlewright.mechanics.coupled.Hold;
import cradlewright.mechanics.coupled.Pivot;
import cradlewright.mechanics.coupled.UnitAction;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.frame.FramePoint;
import cradlewright.mechanics.frame.FrameResult;
import cradlewright.mechanics.frame.FrameStructure;
import cradlewright.mechanics.frame.LoadCase;
import cradlewright.mechanics.frame.ShellSpine;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.Balance;
import cradlewright.mechanics.mass.EstimatedBalance;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * One standing as bodies and contacts, in the axes of its carrier: the carried piece, the dolly under it if there is one, and the
 * ground. Makes the coupled problem for each situation.
 *
 * <p>Supports push along their stated direction; compliance and gap lie along it. Straps are the exception: their upright share is
 * worked out, and the check of the straps adds what leaning costs. An end prop that is in place pushes straight up where it touches; it
 * is set by hand until it just touches while everything is at rest, so it carries nothing then and whatever comes on after. Where the
 * piece would fall without it, it carries from the start.
 */
final class ContactSetting {

    /** Body id of the carried piece. */
    static final String SHELL = "shell";
    /** Body id of the dolly. */
    static final String DOLLY = "dolly";
    /** Sideways give of a pad or castor over its give along the push: softer, as rubber and forks are. Common practice, no source. */
    private static final double SIDEWAYS = 3;
    /** Torsional stiffness below which no shell is taken, N*m/rad: 200 N*m/deg, an estimate to be measured. */
    static final double SOFTEST_SHELL = 200 * 180 / Math.PI;
    /** Torsional stiffness beyond which a shell counts as rigid, N*m/rad: 40 000 N*m/deg, stiffest of lists by the press. */
    static final double STIFFEST_SHELL = 40_000 * 180 / Math.PI;
    /** Distance along the car between first and last supports below which a twist is not looked at, m. */
    private static final double SHORTEST_SPINE = 0.1;
    /** Bending stiffness of a shell when nobody knows it, N*m2: an estimate. */
    private static final double SHELL_BENDING = 2e6;
    /** Bending stiffness below which no shell is taken, N*m2: less than two thin rails; an estimate. */
    private static final double SOFTEST_BENDING = 1e5;
    /** Bending stiffness that counts as rigid, N*m2: a hundred times the estimate. */
    private static final double STIFFEST_BENDING = 100 * SHELL_BENDING;
    /** The way along a car in its own axes: the length about which its shell twists. */
    private static final Vec3 REARWARD = new Vec3(1, 0, 0);
    /** How far an end prop is let down to see where the piece comes to rest without it, m. */
    private static final double OFF = 0.1;

    /**
     * How stiff the carried piece is as a whole.
     *
     * @param torsion N*m/rad
     * @param bending N*m2
     */
    record Stiffness(double torsion, double bending) {
    }

    /** The carried piece as a spine of one stiffness, condensed once for all situations. */
    private record ElasticShell(ShellSpine spine, FrameFlexibility flexibility) {
    }

    private final Standing standing;
    private final EstimatedBalance carried;
    private final Optional<DollyBody> dolly;
    private final List<Support> supports;
    private final Map<String, String> names = new LinkedHashMap<>();
    private final List<Contact> contacts = new ArrayList<>();
    private final Map<String, FramePoint> onDolly = new LinkedHashMap<>();
    private final List<String> missing = new ArrayList<>();
    private final List<PropFacts> props;
    private final SettingKey key;
    /** The dolly under its own weight. */
    private final Optional<FrameFlexibility> frame;
    private final Map<Stiffness, ElasticShell> shells = new ConcurrentHashMap<>();
    private final Optional<Map<String, Double>> emptyOnFloor;

    ContactSetting(Reader reader, Standing standing, Weight weight, EstimatedBalance carried, SettingKey key) {
        this.standing = standing;
        this.carried = Carriers.toCarrier(carried, standing.setup());
        this.key = key;
        this.props = standing.fittedProps();
        this.supports = standing.supports();
        this.dolly = standing.dolly().map(d -> reader.read(new DollyBodyKey(d.id())));
        if (supports.isEmpty()) {
            missing.add("supports: nothing says what it rests on");
        }
        addUnsaid();
        supports.forEach(this::addSupport);
        standing.dolly().ifPresent(d -> addFeetOrCastors(d, reader));
        props.forEach(this::addProp);
        dolly.ifPresent(body -> missing.addAll(body.missing()));
        dolly.map(DollyBody::loose).filter(loose -> !loose.isEmpty())
                .ifPresent(loose -> missing.add("a dolly that holds together: these members hang loose: " + String.join(", ", loose)));
        frame = dolly.flatMap(body -> body.frame().map(structure -> FrameFlexibility.of(structure, ownWeight(body, structure),
                this::place)));
        missing.addAll(weight.missing());
        emptyOnFloor = missing.isEmpty() ? emptyOnFloor() : Optional.empty();
    }

    /**
     * Returns what each castor or foot carries under the empty dolly, N; nothing when what the dolly sags by itself is not in the
     * numbers that the files give. Feelers are laid while it stands, so it always is in gaps that were measured.
     */
    private Optional<Map<String, Double>> emptyOnFloor() {
        boolean measured = supports.stream().anyMatch(support -> support.gapFrom() == GapFrom.MEASURED);
        if (frame.isEmpty() || !measured && !standing.dolly().orElseThrow().measuredStanding()) {
            return Optional.empty();
        }
        List<Contact> floor = contacts.stream().filter(contact -> contact.above().equals(DOLLY)).toList();
        CoupledSolution empty = new CoupledProblem(List.of(Body.elastic(DOLLY, frame.get())), floor).solve();
        // A dolly that falls over empty has never stood there to be measured.
        return empty.status() == SolveStatus.OK
                ? Optional.of(floor.stream().collect(Collectors.toMap(Contact::id, contact -> empty.force(contact.id()))))
                : Optional.empty();
    }

    /** Returns what must be known before anything can be worked out; empty when all is. */
    List<String> missing() {
        return missing;
    }

    boolean hasDolly() {
        return dolly.isPresent();
    }

    Optional<FrameFlexibility> frame() {
        return frame;
    }

    /** Returns movements and internal forces of the dolly in a solution. */
    FrameResult dollyResult(CoupledSolution solution, Situation situation, double ownFactor) {
        return frame.orElseThrow().times(ownFactor * situation.weightFactor()).result(solution, DOLLY);
    }

    /** Returns mass and balance point of what is carried, in the axes of the carrier. */
    EstimatedBalance carried() {
        return carried;
    }

    List<Support> supports() {
        return supports;
    }

    /** Returns the ids of the contacts between dolly and floor. */
    List<String> floorContacts() {
        return contacts.stream().filter(contact -> contact.above().equals(DOLLY)).map(Contact::id).toList();
    }

    /** Returns the nodes of the dolly over its castors or feet. */
    List<String> floorNodes() {
        return floorContacts().stream().map(onDolly::get).map(FramePoint::owner).toList();
    }

    /** Returns the pins about which a part of the dolly turns freely. */
    List<Pivot> pivots() {
        return dolly.flatMap(DollyBody::rocking).map(end -> List.of(new Pivot(end.pin(), end.axis(), beyond(end, floorContacts()),
                Vec3.UP.times(-end.mass() * Constants.GRAVITY), end.centre()))).orElse(List.of());
    }

    /** Tells whether the carried piece rests beyond a pin: its share there cannot be told from statics alone. */
    boolean restsBeyondAPin() {
        return dolly.flatMap(DollyBody::rocking).filter(end -> !beyond(end, contacts.stream()
                .filter(contact -> contact.above().equals(SHELL))
                .map(Contact::id).toList()).isEmpty()).isPresent();
    }

    private Set<String> beyond(RockingEnd end, List<String> contactIds) {
        return contactIds.stream().filter(onDolly::containsKey).filter(id -> nodes(onDolly.get(id)).anyMatch(end.nodeIds()::contains))
                .collect(Collectors.toSet());
    }

    private Stream<String> nodes(FramePoint point) {
        if (!point.onMember()) {
            return Stream.of(point.owner());
        }
        return standing.dolly().stream().flatMap(d -> d.members().stream()).filter(member -> member.id().equals(point.owner()))
                .flatMap(member -> Stream.concat(member.fromId().stream(), member.toId().stream()));
    }

    /** Returns what people call a contact. */
    String name(String contactId) {
        return names.getOrDefault(contactId, contactId);
    }

    /** Returns where the balance point of what is carried lies, in the axes of the carrier. */
    Vec3 balance() {
        return carried.balance().point();
    }

    /**
     * Returns where a support holds, all at the height of the lowest: sideways holds at unlike heights would else form couples that
     * keep anything from tipping. The lowest is the unfavourable one for pushes from above; upright pushes do not care, and one that
     * leans is moved along its own line, which changes neither its forces nor its give. A stop at the side stays where it is.
     */
    private Vec3 level(Support support, Vec3 normal) {
        double lowest = supports.stream().filter(Support::holdsUp).mapToDouble(s -> s.inCarrier().z()).min().orElse(0);
        Vec3 at = support.inCarrier();
        return support.holdsUp() ? at.plus(normal.times((lowest - at.z()) / normal.z())) : at;
    }

    /** Returns the direction in which a support pushes here. */
    private Vec3 normal(Support support) {
        boolean upright = support.holder() instanceof Holder.InStrap || key.sideways() == SettingKey.Sideways.TIPPING && support.holdsUp();
        return upright ? Vec3.UP : support.normal();
    }

    /** Notes what would take a share of the load that nobody can work out. */
    private void addUnsaid() {
        Set<String> placed = supports.stream().map(Support::contactId).collect(Collectors.toSet());
        standing.setup().contacts().stream().filter(contact -> !placed.contains(contact.id()))
                .forEach(contact -> missing.add(contact.name()
                + ": where on the car it holds (measure the mount or lift point from the marks)"));
        if (standing.carrier() == CarrierKind.DOLLY && dolly.isEmpty()) {
            missing.add(standing.setup().name() + ": the dolly it stands on");
        }
        supports.stream().filter(support -> dolly.isPresent() && support.holder() instanceof Holder.Unknown)
                .forEach(support -> missing.add(support.name() + ": what it rests on, a fixture of the dolly or a stand"));
    }

    private void addSupport(Support support) {
        Vec3 normal = normal(support);
        Vec3 at = level(support, normal);
        names.put(support.contactId(), support.name());
        boolean fixture = support.holder() instanceof Holder.OnFixture && dolly.isPresent();
        Contact contact = new Contact(support.contactId(), SHELL, fixture ? DOLLY : Contact.GROUND, at, normal, Hold.RESTS,
                support.compliance(), support.gap(), 0, List.of(), 0);
        double sidewaysGive = SIDEWAYS * support.compliance();
        contacts.add(switch (support.hold()) {
            case RESTS -> gripped(support) ? contact.pinned(sidewaysGive) : contact;
            case PINNED -> contact.pinned(sidewaysGive);
            case BOLTED -> pulls(support) ? contact.bolted(support.pull().map(Value::si).orElse(0.0), sidewaysGive)
                    : contact.pinned(sidewaysGive);
        });
        if (fixture) {
            standOnDolly(support, ((Holder.OnFixture) support.holder()).fixture(), at);
        }
    }

    /** Tells whether friction holds a support that only rests; a stop at the side may come away, so nothing rests on its friction. */
    private boolean gripped(Support support) {
        return key.sideways() != SettingKey.Sideways.FREE && support.holdsUp();
    }

    private boolean pulls(Support support) {
        return key.boltsPull() || support.pull().isPresent();
    }

    private void standOnDolly(Support support, FixtureFacts fixture, Vec3 at) {
        Optional<Vec3> base = standing.dolly().flatMap(d -> d.base(fixture));
        if (fixture.nodeId().isPresent() || fixture.on().isEmpty()) {
            placeOnDolly(support.contactId(), fixture.nodeId(), at, support.name());
        } else if (base.isEmpty()) {
            missing.add(support.name() + ": where along its member the fixture stands, between the ends of the member");
        } else {
            FixtureFacts.Station on = fixture.on().orElseThrow();
            onDolly.put(support.contactId(), FramePoint.member(on.memberId(), on.distance().orElseThrow().si(), at.minus(base.get())));
        }
    }

    private void addProp(PropFacts prop) {
        names.put(prop.id(), prop.name());
        if (prop.at().isEmpty()) {
            missing.add(prop.name() + ": where it touches");
            return;
        }
        boolean bolted = prop.nodeId().isPresent();
        contacts.add(Contact.rests(prop.id(), SHELL, bolted ? DOLLY : Contact.GROUND, prop.at().get(), Compliances.UNKNOWN_PAD));
        if (bolted) {
            placeOnDolly(prop.id(), prop.nodeId(), prop.at().get(), prop.name());
        }
    }

    private void placeOnDolly(String contactId, Optional<String> nodeId, Vec3 point, String name) {
        Optional<Vec3> node = nodeId.flatMap(id -> standing.dolly().flatMap(d -> d.node(id))).flatMap(NodeFacts::at);
        if (node.isEmpty()) {
            missing.add(name + ": the node of the dolly it stands on, with its place");
            return;
        }
        onDolly.put(contactId, FramePoint.node(nodeId.orElseThrow(), point.minus(node.get())));
    }

    private void addFeetOrCastors(DollyFacts facts, Reader source) {
        List<FootFacts> down = facts.feet().stream().filter(FootFacts::down).toList();
        for (FootFacts foot : down) {
            addFloorContact(foot.id(), foot.name(), foot.nodeId(), foot.stiffness().map(k -> 1 / k.si()).orElse(Compliances.BARE_STEEL));
        }
        if (down.isEmpty()) {
            for (CastorFacts castor : facts.castors()) {
                Optional<StockFacts.CastorType> type = castor.typeId()
                        .flatMap(id -> source.read(new FactKey<>(StockFacts.CastorType.class, id)));
                double give = type.flatMap(StockFacts.CastorType::stiffness).map(k -> 1 / k.si()).orElse(Compliances.UNKNOWN_CASTOR);
                addFloorContact(castor.id(), castor.name(), castor.nodeId(), give);
            }
        }
        if (floorContacts().isEmpty()) {
            missing.add(facts.name() + ": castors or feet, each at a node of the dolly");
        }
    }

    private void addFloorContact(String id, String name, Optional<String> nodeId, double give) {
        Optional<Vec3> node = nodeId.flatMap(n -> standing.dolly().flatMap(d -> d.node(n))).flatMap(NodeFacts::at);
        if (node.isEmpty()) {
            missing.add(name + ": the node of the dolly it is bolted to, with its place");
            return;
        }
        names.put(id, name);
        Vec3 floor = new Vec3(node.get().x(), node.get().y(), 0);
        Contact contact = Contact.rests(id, DOLLY, Contact.GROUND, floor, give);
        contacts.add(key.sideways() == SettingKey.Sideways.FREE ? contact : contact.pinned(SIDEWAYS * give));
        placeOnDolly(id, nodeId, floor, name);
    }

    private FramePoint place(UnitAction action) {
        return onDolly.get(action.contact());
    }

    /** Returns the problem with a rigid carried piece and the masses as listed. */
    CoupledProblem problem(Situation situation) {
        return problem(situation, Optional.empty());
    }

    /**
     * Returns the problem under factored actions: own weight of the dolly and what it carries, where the k = 2 ellipsoid of mass and
     * balance point is heaviest. What else the balance point may be off is left to the factors.
     */
    CoupledProblem factored(Situation situation, double ownFactor, double carriedFactor) {
        Body shell = Body.rigid(SHELL, carriedLoads(situation, carried.worst(1, Vec3.ZERO), carriedFactor));
        return new CoupledProblem(bodies(shell, situation, ownFactor), contacts(situation, s -> rigid(s, carried.balance())));
    }

    /** Returns the problem with an elastic carried piece of a torsional stiffness in N*m/rad. */
    CoupledProblem elastic(Situation situation, double torsionalStiffness) {
        return problem(situation, Optional.of(new Stiffness(torsionalStiffness, bending())));
    }

    /** Returns the problem with everything as listed: the carried piece as stiff as is stated, rigid where nobody stated it. */
    CoupledProblem listed(Situation situation) {
        return problem(situation, known().map(Known::listed));
    }

    /** Returns the problem with a carried piece of one stiffness, rigid when there is none. */
    CoupledProblem problem(Situation situation, Optional<Stiffness> stiffness) {
        Function<Situation, Body> shell = s -> shell(s, stiffness, carried.balance());
        return new CoupledProblem(bodies(shell.apply(situation), situation, 1), contacts(situation, shell));
    }

    /** Returns a problem with other mass or balance point of what is carried; what it rests on, and each end prop, stay as they were. */
    CoupledProblem carrying(CoupledProblem problem, Situation situation, Optional<Stiffness> stiffness, Balance load) {
        return new CoupledProblem(bodies(shell(situation, stiffness, load), situation, 1), problem.contacts());
    }

    /** Returns the supports whose gap somebody called doubtful: what stands lower or higher than the files say. */
    List<Support> doubtful() {
        return supports.stream().filter(support -> support.gapU() > 0).toList();
    }

    /**
     * Returns by how much the gap of each end prop opens when each doubtful support is low by its standard uncertainty, m. A prop is set
     * until it just touches, wherever the piece has come to rest, so it follows what the supports really are like.
     */
    Map<String, double[]> propsFollow(List<Support> doubtful, Optional<Stiffness> stiffness) {
        if (props.isEmpty() || doubtful.isEmpty()) {
            return Map.of();
        }
        CoupledProblem off = withoutProps(s -> shell(s, stiffness, carried.balance()));
        ContactSolution rest = ContactSolver.solve(off.matrices());
        Map<String, double[]> follow = new HashMap<>();
        for (int a = 0; rest.isOk() && a < doubtful.size(); a++) {
            double[] gap = off.matrices().gap();
            gap[off.indexOf(doubtful.get(a).contactId())] += doubtful.get(a).gapU();
            ContactSolution low = ContactSolver.solve(off.matrices().withGap(gap));
            for (PropFacts prop : props) {
                int at = off.indexOf(prop.id());
                follow.computeIfAbsent(prop.id(), id -> new double[doubtful.size()])[a] = low.isOk() ? rest.gap(at) - low.gap(at) : 0;
            }
        }
        return follow;
    }

    private Body shell(Situation situation, Optional<Stiffness> stiffness, Balance load) {
        return stiffness.map(elastic -> elasticShell(situation, elastic, load)).orElseGet(() -> rigid(situation, load));
    }

    private Body rigid(Situation situation, Balance load) {
        return Body.rigid(SHELL, carriedLoads(situation, load, 1));
    }

    private Body elasticShell(Situation situation, Stiffness stiffness, Balance load) {
        ElasticShell shell = shells.computeIfAbsent(stiffness, this::shell);
        ShellSpine spine = shell.spine;
        LoadCase.Builder loads = LoadCase.on(spine.model());
        loads.force(spine.pointAt(load.point()), Vec3.UP.times(-weight(situation, load.mass())));
        situation.push().ifPresent(push -> loads.force(spine.pointAt(push.at()), push.force()));
        return Body.elastic(SHELL, shell.flexibility.withLoads(loads.build()));
    }

    private ElasticShell shell(Stiffness stiffness) {
        Vec3 rearward = Carriers.turn(REARWARD, standing.setup());
        double front = alongCar().min().orElseThrow() - balance().dot(rearward);
        double span = span();
        Vec3 start = balance().plus(rearward.times(front));
        ShellSpine spine = ShellSpine.of(start, start.plus(rearward.times(span)), span, stiffness.torsion(), stiffness.bending());
        return new ElasticShell(spine, FrameFlexibility.of(spine, LoadCase.none(spine.model())));
    }

    /** Tells whether a twist of the shell matters: more than three supports along its length, and a shell that is not known as rigid. */
    boolean twistMatters() {
        return supports.size() > 3 && span() > SHORTEST_SPINE && softest() < STIFFEST_SHELL;
    }

    /** Returns the distance along the car from the first to the last support, m. */
    private double span() {
        return alongCar().max().orElse(0) - alongCar().min().orElse(0);
    }

    /** Returns how far rearward on the car each support is, m, counted from the origin of the carrier. */
    private DoubleStream alongCar() {
        Vec3 rearward = Carriers.turn(REARWARD, standing.setup());
        return supports.stream().mapToDouble(support -> support.inCarrier().dot(rearward));
    }

    /** Returns the torsional stiffness of the carried shell at its low end, or the softest that is taken when nobody knows it. */
    double softest() {
        return piece().flatMap(PieceFacts::torsionalStiffness).map(k -> Math.max(k.low(), SOFTEST_SHELL)).orElse(SOFTEST_SHELL);
    }

    /**
     * How stiff what is carried is, as far as it is known.
     *
     * @param low at the low ends: the stiffest of the pieces alone, for nothing says how firmly they hold together
     * @param listed as stated: all pieces together; rigid in bending where nobody stated that
     * @param high at the high ends: all pieces together; rigid in bending where nobody stated that
     */
    record Known(Stiffness low, Stiffness listed, Stiffness high) {

        /** Returns each stiffness that loads are worked out at, without repeats. */
        List<Stiffness> range() {
            return Stream.of(listed, low, high, new Stiffness(low.torsion, high.bending),
                    new Stiffness(high.torsion, low.bending)).distinct().toList();
        }
    }

    /**
     * Returns how stiff what is carried is. Nothing when the torsional stiffness of one of its pieces is not known, or a twist does not
     * matter, or it is beyond what this takes: then it counts as rigid.
     */
    Optional<Known> known() {
        List<PieceFacts> pieces = standing.car().pieces().stream().filter(piece -> standing.setup().pieceIds().contains(piece.id()))
                .toList();
        List<Value> torsions = pieces.stream().flatMap(piece -> piece.torsionalStiffness().stream()).toList();
        double high = torsions.stream().mapToDouble(Value::high).sum();
        if (!twistMatters() || torsions.size() < pieces.size() || high < SOFTEST_SHELL || high >= STIFFEST_SHELL) {
            return Optional.empty();
        }
        List<Value> bendings = pieces.stream().flatMap(piece -> piece.bendingStiffness().stream()).toList();
        boolean bends = bendings.size() == pieces.size();
        double softest = bendings.stream().mapToDouble(Value::low).max().orElse(SHELL_BENDING);
        double low = torsions.stream().mapToDouble(Value::low).max().orElseThrow();
        return Optional.of(new Known(new Stiffness(Math.max(SOFTEST_SHELL, low), Math.max(SOFTEST_BENDING, softest)),
                together(torsions, bends, bendings, Value::si), together(torsions, bends, bendings, Value::high)));
    }

    /** Returns the stiffness of all pieces together. */
    private static Stiffness together(List<Value> torsions, boolean bends, List<Value> bendings, ToDoubleFunction<Value> end) {
        return new Stiffness(Math.max(SOFTEST_SHELL, torsions.stream().mapToDouble(end).sum()),
                bends ? Math.max(SOFTEST_BENDING, bendings.stream().mapToDouble(end).sum()) : STIFFEST_BENDING);
    }

    private double bending() {
        return piece().flatMap(PieceFacts::bendingStiffness).map(Value::si).orElse(SHELL_BENDING);
    }

    private Optional<PieceFacts> piece() {
        return standing.car().pieces().stream().filter(piece -> standing.setup().pieceIds().contains(piece.id()))
                .filter(piece -> piece.torsionalStiffness().isPresent()).findFirst();
    }

    private List<Body> bodies(Body shell, Situation situation, double ownFactor) {
        List<Body> bodies = new ArrayList<>();
        bodies.add(shell);
        dolly.ifPresent(body -> bodies.add(dollyBody(body, situation, ownFactor)));
        return bodies;
    }

    private Body dollyBody(DollyBody body, Situation situation, double ownFactor) {
        double factor = ownFactor * situation.weightFactor();
        if (frame.isPresent()) {
            FrameFlexibility loaded = frame.get().times(factor);
            return Body.elastic(DOLLY, emptyOnFloor.<Flexibility>map(forces -> new MeasuredStanding(loaded, frame.get(), forces))
                    .orElse(loaded));
        }
        Vec3 centre = body.centre().orElse(balance());
        return Body.rigid(DOLLY, Body.weight(body.mass(), centre).times(factor));
    }

    /** Own weight of the members, scaled to the mass of the dolly when that was weighed, so that castors and joints count. */
    private static LoadCase ownWeight(DollyBody body, FrameStructure structure) {
        LoadCase members = LoadCase.on(structure.model()).selfWeight().build();
        double own = -members.resultant().force().z();
        double wanted = body.mass() * Constants.GRAVITY;
        return members.times(own > 0 ? wanted / own : 0);
    }

    private double weight(Situation situation, double mass) {
        return situation.weightFactor() * mass * Constants.GRAVITY;
    }

    private ForceMoment carriedLoads(Situation situation, Balance load, double factor) {
        ForceMoment loads = Body.force(load.point(), Vec3.UP.times(-weight(situation, load.mass())));
        Optional<ForceMoment> push = situation.push().map(p -> Body.force(p.at(), p.force()));
        return push.map(loads::plus).orElse(loads).times(factor);
    }

    private List<Contact> contacts(Situation situation, Function<Situation, Body> shell) {
        List<Contact> there = props.isEmpty() ? contacts : propped(shell);
        if (situation.loweredCastor().isEmpty()) {
            return there;
        }
        String lowered = situation.loweredCastor().get();
        return there.stream().map(contact -> contact.id().equals(lowered) ? contact.withGap(situation.lowered()) : contact).toList();
    }

    /** Returns the contacts with each end prop just touching at rest; as high as the supports where the piece falls without props. */
    private List<Contact> propped(Function<Situation, Body> shell) {
        CoupledSolution rest = withoutProps(shell).solve();
        if (rest.status() != SolveStatus.OK) {
            return contacts;
        }
        return contacts.stream().map(contact -> isProp(contact) ? contact.withGap(OFF - rest.gap(contact.id())) : contact).toList();
    }

    /** Returns the piece at rest with each end prop let down out of its reach. */
    private CoupledProblem withoutProps(Function<Situation, Body> shell) {
        List<Contact> off = contacts.stream().map(contact -> isProp(contact) ? contact.withGap(OFF) : contact).toList();
        return new CoupledProblem(bodies(shell.apply(Situation.atRest()), Situation.atRest(), 1), off);
    }

    private boolean isProp(Contact contact) {
        return props.stream().anyMatch(prop -> prop.id().equals(contact.id()));
    }

    /** Returns the end props that are in place. */
    List<PropFacts> props() {
        return props;
    }
}
