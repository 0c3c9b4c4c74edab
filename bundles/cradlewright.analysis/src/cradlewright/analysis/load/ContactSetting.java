package cradlewright.analysis.load;

import cradlewright.analysis.dolly.DollyBody;
import cradlewright.analysis.dolly.DollyBodyKey;
import cradlewright.analysis.dolly.RockingEnd;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Carriers;
import cradlewright.analysis.standing.Compliances;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.analysis.standing.Weight;
import cradlewright.mechanics.coupled.Body;
import cradlewright.mechanics.coupled.Contact;
import cradlewright.mechanics.coupled.CoupledProblem;
import cradlewright.mechanics.coupled.CoupledSolution;
import cradlewright.mechanics.coupled.FrameFlexibility;
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
import cradlewright.mechanics.mass.EstimatedBalance;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One standing as bodies and contacts, in the axes of its carrier: the carried piece, the dolly under it if there is one, and the
 * ground. Makes the coupled problem for each situation.
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

    private final Standing standing;
    private final EstimatedBalance carried;
    private final Optional<DollyBody> dolly;
    private final List<Support> supports;
    private final Map<String, String> names = new LinkedHashMap<>();
    private final List<Contact> contacts = new ArrayList<>();
    private final Map<String, FramePoint> onDolly = new LinkedHashMap<>();
    private final List<String> missing = new ArrayList<>();
    private final boolean sideways;
    private final Optional<FrameFlexibility> frame;

    ContactSetting(Reader reader, Standing standing, Weight weight, EstimatedBalance carried, boolean sideways) {
        this.standing = standing;
        this.carried = carried;
        this.sideways = sideways;
        this.supports = standing.supports();
        this.dolly = standing.dolly().map(d -> reader.read(new DollyBodyKey(d.id())));
        if (supports.isEmpty()) {
            missing.add("supports: nothing says what it rests on");
        }
        addUnsaid();
        supports.forEach(this::addSupport);
        standing.dolly().ifPresent(d -> addFeetOrCastors(d, reader));
        dolly.ifPresent(body -> missing.addAll(body.missing()));
        dolly.map(DollyBody::loose).filter(loose -> !loose.isEmpty())
                .ifPresent(loose -> missing.add("a dolly that holds together: these members hang loose: " + String.join(", ", loose)));
        frame = dolly.flatMap(DollyBody::frame).map(structure -> FrameFlexibility.of(structure, LoadCase.none(structure.model()), this::place));
        missing.addAll(weight.missing());
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
        LoadCase own = ownWeight(dolly.orElseThrow(), ownFactor * situation.weightFactor());
        return frame.orElseThrow().withLoads(own).result(solution, DOLLY);
    }

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

    /** Returns the pins about which a part of the dolly turns freely. */
    List<Pivot> pivots() {
        return dolly.flatMap(DollyBody::rocking).map(end -> List.of(new Pivot(end.pin(), end.axis(), beyond(end, floorContacts()),
                Vec3.UP.times(-end.mass() * Constants.GRAVITY), end.centre()))).orElse(List.of());
    }

    /** Tells whether the carried piece rests beyond a pin: its share there cannot be told from statics alone. */
    boolean restsBeyondAPin() {
        return dolly.flatMap(DollyBody::rocking).filter(end -> !beyond(end, supports.stream().map(Support::contactId).toList()).isEmpty())
                .isPresent();
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
        return Carriers.toCarrier(carried.balance().point(), standing.setup());
    }

    /**
     * Returns where a support holds, all at the height of the lowest: sideways holds at unlike heights would else form couples that
     * keep anything from tipping. The lowest is the unfavourable one for pushes from above; upright pushes do not care.
     */
    private Vec3 level(Support support) {
        Vec3 at = support.inCarrier();
        boolean upright = supports.stream().allMatch(s -> s.normal().equals(Vec3.UP));
        return upright ? new Vec3(at.x(), at.y(), supports.stream().mapToDouble(s -> s.inCarrier().z()).min().orElseThrow()) : at;
    }

    /** Notes what would take a share of the load that nobody can work out. */
    private void addUnsaid() {
        Set<String> placed = supports.stream().map(Support::contactId).collect(Collectors.toSet());
        standing.setup().contacts().stream().filter(contact -> !placed.contains(contact.id()))
                .forEach(contact -> missing.add(contact.name() + ": where on the car it holds (measure the mount or lift point from the marks)"));
        if (standing.carrier() == CarrierKind.DOLLY && dolly.isEmpty()) {
            missing.add(standing.setup().name() + ": the dolly it stands on");
        }
        supports.stream().filter(support -> dolly.isPresent() && support.holder() instanceof Holder.Unknown)
                .forEach(support -> missing.add(support.name() + ": what it rests on, a fixture of the dolly or a stand"));
    }

    private void addSupport(Support support) {
        Vec3 at = level(support);
        names.put(support.contactId(), support.name());
        boolean fixture = support.holder() instanceof Holder.OnFixture && dolly.isPresent();
        Contact contact = Contact.rests(support.contactId(), SHELL, fixture ? DOLLY : Contact.GROUND, at, support.compliance())
                .withGap(support.gap());
        double sidewaysGive = SIDEWAYS * support.compliance();
        contacts.add(switch (support.hold()) {
            case RESTS -> sideways ? contact.pinned(sidewaysGive) : contact;
            case PINNED -> contact.pinned(sidewaysGive);
            case BOLTED -> contact.bolted(pull(support), sidewaysGive);
        });
        if (fixture) {
            Holder.OnFixture on = (Holder.OnFixture) support.holder();
            placeOnDolly(support.contactId(), on.fixture().nodeId(), at, support.name());
        }
    }

    private static double pull(Support support) {
        return support.holder() instanceof Holder.OnFixture on ? on.fixture().capacity().map(Value::si).orElse(0.0) : 0;
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
            addFloorContact(foot.id(), foot.name(), foot.nodeId(), Compliances.BARE_STEEL);
        }
        if (down.isEmpty()) {
            for (CastorFacts castor : facts.castors()) {
                Optional<StockFacts.CastorType> type = castor.typeId().flatMap(id -> source.read(new FactKey<>(StockFacts.CastorType.class, id)));
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
        contacts.add(sideways ? contact.pinned(SIDEWAYS * give) : contact);
        placeOnDolly(id, nodeId, floor, name);
    }

    private FramePoint place(UnitAction action) {
        return onDolly.get(action.contact());
    }

    /** Returns the problem with a rigid carried piece and the masses as listed. */
    CoupledProblem problem(Situation situation) {
        return new CoupledProblem(bodies(Body.rigid(SHELL, carriedLoads(situation, carried.balance().mass(), 1)), situation, 1), contacts(situation));
    }

    /** Returns the problem under factored actions: own weight of the dolly and what it carries, the mass at its upper end. */
    CoupledProblem factored(Situation situation, double ownFactor, double carriedFactor) {
        double mass = carried.balance().mass() + carried.expanded(EstimatedBalance.Quantity.MASS);
        return new CoupledProblem(bodies(Body.rigid(SHELL, carriedLoads(situation, mass, carriedFactor)), situation, ownFactor), contacts(situation));
    }

    /** Returns the problem with an elastic carried piece of a torsional stiffness in N*m/rad. */
    CoupledProblem elastic(Situation situation, double torsionalStiffness) {
        double front = supports.stream().mapToDouble(s -> s.inCarrier().x()).min().orElseThrow();
        double rear = supports.stream().mapToDouble(s -> s.inCarrier().x()).max().orElseThrow();
        double span = rear - front;
        ShellSpine spine = ShellSpine.of(new Vec3(front, balance().y(), balance().z()), span, span, torsionalStiffness, bending());
        LoadCase.Builder loads = LoadCase.on(spine.model());
        loads.force(spine.pointAt(balance()), Vec3.UP.times(-weight(situation, carried.balance().mass())));
        situation.push().ifPresent(push -> loads.force(spine.pointAt(push.at()), push.force()));
        return new CoupledProblem(bodies(Body.elastic(SHELL, FrameFlexibility.of(spine, loads.build())), situation, 1), contacts(situation));
    }

    /** Tells whether a twist of the shell matters: more than three supports along its length, and a shell that is not known as rigid. */
    boolean twistMatters() {
        double front = supports.stream().mapToDouble(s -> s.inCarrier().x()).min().orElse(0);
        double rear = supports.stream().mapToDouble(s -> s.inCarrier().x()).max().orElse(0);
        return supports.size() > 3 && rear - front > SHORTEST_SPINE && softest() < STIFFEST_SHELL;
    }

    /** Returns the torsional stiffness of the carried shell at its low end, or the softest that is taken when nobody knows it. */
    double softest() {
        return piece().flatMap(PieceFacts::torsionalStiffness).map(k -> Math.max(k.low(), SOFTEST_SHELL)).orElse(SOFTEST_SHELL);
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
            return Body.elastic(DOLLY, frame.get().withLoads(ownWeight(body, factor)));
        }
        Vec3 centre = body.centre().orElse(balance());
        return Body.rigid(DOLLY, Body.weight(body.mass(), centre).times(factor));
    }

    /** Own weight of the members, scaled to the mass of the dolly when that was weighed, so that castors and joints count. */
    private LoadCase ownWeight(DollyBody body, double factor) {
        FrameStructure structure = body.frame().orElseThrow();
        LoadCase members = LoadCase.on(structure.model()).selfWeight().build();
        double own = -members.resultant().force().z();
        double wanted = body.mass() * Constants.GRAVITY;
        return members.times(own > 0 ? factor * wanted / own : 0);
    }

    private double weight(Situation situation, double mass) {
        return situation.weightFactor() * mass * Constants.GRAVITY;
    }

    private ForceMoment carriedLoads(Situation situation, double mass, double factor) {
        ForceMoment loads = Body.force(balance(), Vec3.UP.times(-weight(situation, mass)));
        Optional<ForceMoment> push = situation.push().map(p -> Body.force(p.at(), p.force()));
        return push.map(loads::plus).orElse(loads).times(factor);
    }

    private List<Contact> contacts(Situation situation) {
        if (situation.loweredCastor().isEmpty()) {
            return contacts;
        }
        String lowered = situation.loweredCastor().get();
        return contacts.stream().map(contact -> contact.id().equals(lowered) ? contact.withGap(situation.lowered()) : contact).toList();
    }
}
