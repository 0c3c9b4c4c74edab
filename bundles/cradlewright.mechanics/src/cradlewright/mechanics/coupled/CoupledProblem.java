package cradlewright.mechanics.coupled;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import cradlewright.mechanics.contact.ContactKind;
import cradlewright.mechanics.contact.ContactProblem;
import cradlewright.mechanics.contact.ContactSolver;
import cradlewright.mechanics.contact.LoadPath;
import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.contact.StaticsBounds;
import cradlewright.mechanics.contact.SupportRank;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.geometry.Vec3;

/**
 * Bodies and contacts put together into one {@link ContactProblem}: each contact gives one unknown along its normal and one
 * per direction of shear, each body six rows (forces, then moments about the origin).
 *
 * <p>C = diag(d) + sum of C_b over the elastic bodies, g = g0 + their sag. Immutable.
 *
 * @see CoupledFormulas#ASSEMBLY
 */
public final class CoupledProblem {

    static final int ROWS = 6;
    private static final double COMPLIANCE_TOLERANCE = 1e-9;

    /** An unknown: its contact and the direction of the force on the body above. */
    private record Unknown(int contact, Vec3 direction, boolean isShear) {
    }

    private final Map<String, Body> bodies = new LinkedHashMap<>();
    private final List<Contact> contacts;
    private final List<Unknown> unknowns = new ArrayList<>();
    private final int[] normalOf;
    private final Map<String, Integer> place = new HashMap<>();
    private final Map<String, int[]> touching = new HashMap<>();
    private final Map<String, List<UnitAction>> actions = new HashMap<>();
    private final ContactProblem problem;

    /**
     * Puts the problem together; each elastic body is condensed once.
     *
     * @throws IllegalArgumentException for ids that stand twice or a contact that names no body
     */
    public CoupledProblem(List<Body> bodies, List<Contact> contacts) {
        for (Body body : bodies) {
            if (this.bodies.put(body.id(), body) != null) {
                throw new IllegalArgumentException("body " + body.id() + " stands twice");
            }
        }
        this.contacts = List.copyOf(contacts);
        this.normalOf = new int[this.contacts.size()];
        for (int c = 0; c < normalOf.length; c++) {
            Contact contact = this.contacts.get(c);
            if (place.put(contact.id(), c) != null) {
                throw new IllegalArgumentException("contact " + contact.id() + " stands twice");
            }
            if (!this.bodies.containsKey(contact.above())
                    || !contact.below().equals(Contact.GROUND) && !this.bodies.containsKey(contact.below())) {
                throw new IllegalArgumentException("contact " + contact.id() + " names a body that is not there: '"
                        + contact.above() + "' on '" + contact.below() + "'");
            }
            normalOf[c] = unknowns.size();
            unknowns.add(new Unknown(c, contact.normal(), false));
            for (Vec3 t : contact.shear()) {
                unknowns.add(new Unknown(c, t, true));
            }
        }
        for (String body : this.bodies.keySet()) {
            note(body);
        }
        this.problem = assemble();
    }

    /** Notes which unknowns touch a body, and what each does to it. */
    private void note(String body) {
        int[] found = new int[unknowns.size()];
        List<UnitAction> units = new ArrayList<>();
        for (int i = 0; i < found.length; i++) {
            Unknown u = unknowns.get(i);
            Contact contact = contacts.get(u.contact);
            boolean above = contact.above().equals(body);
            if (above || contact.below().equals(body)) {
                found[units.size()] = i;
                units.add(new UnitAction(contact.id(), contact.point(), above ? u.direction : u.direction.times(-1)));
            }
        }
        touching.put(body, Arrays.copyOf(found, units.size()));
        actions.put(body, List.copyOf(units));
    }

    private ContactProblem assemble() {
        int n = unknowns.size();
        double[][] c = new double[n][n];
        double[] g = new double[n];
        List<ContactKind> kinds = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Unknown u = unknowns.get(i);
            Contact contact = contacts.get(u.contact);
            c[i][i] = u.isShear ? contact.shearCompliance() : contact.compliance();
            g[i] = u.isShear ? 0 : contact.gap();
            kinds.add(u.isShear || contact.hold() == Hold.BOLTED ? ContactKind.HELD : ContactKind.UNILATERAL);
        }
        double[][] e = new double[ROWS * bodies.size()][n];
        double[] w = new double[e.length];
        int first = 0;
        for (Body body : bodies.values()) {
            int[] at = touching.get(body.id());
            List<UnitAction> units = actions.get(body.id());
            for (int a = 0; a < at.length; a++) {
                put(Body.force(units.get(a).point(), units.get(a).direction()), e, first, at[a]);
            }
            ForceMoment loads = body.loads();
            double[] balanced = components(loads.times(-1));
            System.arraycopy(balanced, 0, w, first, ROWS);
            body.flexibility().ifPresent(flexibility -> addTo(c, g, at, flexibility.condense(units)));
            first += ROWS;
        }
        return new ContactProblem(c, g, e, w, kinds);
    }

    private static void addTo(double[][] c, double[] g, int[] at, Condensed condensed) {
        double[][] part = condensed.compliance();
        double[] sag = condensed.sag();
        for (int a = 0; a < at.length; a++) {
            g[at[a]] += sag[a];
            for (int b = 0; b < at.length; b++) {
                c[at[a]][at[b]] += part[a][b];
            }
        }
    }

    private static void put(ForceMoment unit, double[][] e, int first, int column) {
        double[] values = components(unit);
        for (int k = 0; k < ROWS; k++) {
            e[first + k][column] = values[k];
        }
    }

    static double[] components(ForceMoment f) {
        return new double[] {f.force().x(), f.force().y(), f.force().z(), f.moment().x(), f.moment().y(), f.moment().z()};
    }

    /** Returns what the unknowns that touch a body do to it, in the order of the unknowns. */
    public List<UnitAction> actionsOn(String body) {
        requireBody(body);
        return actions.get(body);
    }

    /** Picks the forces that belong to {@link #actionsOn} out of those of all unknowns. */
    double[] forcesOn(String body, double[] all) {
        requireBody(body);
        int[] at = touching.get(body);
        double[] result = new double[at.length];
        for (int a = 0; a < result.length; a++) {
            result[a] = all[at[a]];
        }
        return result;
    }

    Body requireBody(String id) {
        Body body = bodies.get(id);
        if (body == null) {
            throw new IllegalArgumentException("no body " + id + ", found " + bodies.keySet());
        }
        return body;
    }

    int normalIndex(String id) {
        return normalOf[contactIndex(id)];
    }

    private int contactIndex(String id) {
        Integer index = place.get(id);
        if (index == null) {
            throw new IllegalArgumentException("no contact " + id);
        }
        return index;
    }

    Contact contact(String id) {
        return contacts.get(contactIndex(id));
    }

    /** Returns the bodies. */
    public List<Body> bodies() {
        return List.copyOf(bodies.values());
    }

    /** Returns the contacts. */
    public List<Contact> contacts() {
        return contacts;
    }

    /** Returns the problem in matrices, for bounds, paths and unfavourable ends. */
    public ContactProblem matrices() {
        return problem;
    }

    /** Returns the place of the normal force of a contact among the unknowns of {@link #matrices()}. */
    public int indexOf(String contact) {
        return normalIndex(contact);
    }

    /**
     * Follows the forces while loads (with the sag they cause) and gaps move in proportion from this problem, t = 0, through
     * {@code target}, t = 1, and beyond.
     *
     * @param target the same bodies and contacts with other loads or gaps
     * @param end last t, above zero
     * @throws IllegalArgumentException if bodies, contacts or compliances differ
     */
    public LoadPath pathTo(CoupledProblem target, double end) {
        if (!bodies.keySet().equals(target.bodies.keySet()) || !unknowns.equals(target.unknowns) || !sameCompliance(target)) {
            throw new IllegalArgumentException("a path needs the same bodies, contacts and compliances at both ends");
        }
        return LoadPath.follow(problem, difference(target.problem.load(), problem.load()),
                difference(target.problem.gap(), problem.gap()), end);
    }

    private boolean sameCompliance(CoupledProblem target) {
        for (int i = 0; i < unknowns.size(); i++) {
            for (int j = 0; j <= i; j++) {
                double size = Math.sqrt(problem.compliance(i, i) * problem.compliance(j, j));
                if (Math.abs(problem.compliance(i, j) - target.problem.compliance(i, j)) > COMPLIANCE_TOLERANCE * size) {
                    return false;
                }
            }
        }
        return true;
    }

    private static double[] difference(double[] a, double[] b) {
        double[] result = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            result[i] = a[i] - b[i];
        }
        return result;
    }

    /**
     * Returns an additional load on one rigid body as a change of w in {@link #matrices()}. On an elastic body the load makes
     * sag as well: use {@link #pathTo}.
     *
     * @throws IllegalArgumentException for an unknown or elastic body
     */
    public double[] loadChange(String body, ForceMoment load) {
        if (requireBody(body).flexibility().isPresent()) {
            throw new IllegalArgumentException("body " + body + " is elastic: a load on it makes sag as well");
        }
        double[] w = new double[ROWS * bodies.size()];
        int first = ROWS * new ArrayList<>(bodies.keySet()).indexOf(body);
        System.arraycopy(components(load.times(-1)), 0, w, first, ROWS);
        return w;
    }

    /** Returns the pull that each unknown can take, N: infinite for shear. */
    public double[] pullCapacities() {
        return unknowns.stream().mapToDouble(u -> u.isShear ? Double.POSITIVE_INFINITY : contacts.get(u.contact).pullCapacity())
                .toArray();
    }

    /** Solves. */
    public CoupledSolution solve() {
        return new CoupledSolution(this, ContactSolver.solve(problem));
    }

    /**
     * Solves, first trying the shut contacts of a neighbouring solution of the same contacts: faster where they are right, the
     * same to the last bit in any case.
     */
    public CoupledSolution solve(CoupledSolution neighbour) {
        if (neighbour.status() != SolveStatus.OK) {
            return solve();
        }
        return new CoupledSolution(this, ContactSolver.solve(problem, neighbour.unknowns().shut()));
    }

    /** Returns what statics alone allow, in the order of the unknowns. */
    public StaticsBounds staticsBounds() {
        return StaticsBounds.of(problem, pullCapacities());
    }

    /** Returns the problem with every body taken as rigid. */
    public CoupledProblem asRigid() {
        return new CoupledProblem(bodies().stream().map(Body::asRigid).toList(), contacts);
    }

    /** Returns the loads of some bodies together. */
    ForceMoment loadsOf(Set<String> group) {
        return group.stream().map(id -> requireBody(id).loads()).reduce(ForceMoment.ZERO, ForceMoment::plus);
    }

    /** Returns the contacts between the bodies of a group and anything else. */
    List<Contact> around(Set<String> group) {
        return contacts.stream().filter(c -> group.contains(c.above()) != group.contains(c.below())).toList();
    }

    /**
     * Looks at the supports that push a group of bodies, taken as locked together, upward; the pull of bolts and the loads'
     * sideways parts play no part.
     *
     * @throws IllegalArgumentException for an unknown body or a group without weight
     */
    public SupportRank supportRank(Set<String> group) {
        ForceMoment loads = loadsOf(group);
        double down = -loads.force().z();
        if (!(down > 0)) {
            throw new IllegalArgumentException("bodies " + group + " have no weight, so no balance point");
        }
        List<Vec3> points = new ArrayList<>();
        for (Contact c : around(group)) {
            double up = c.normal().z() * (group.contains(c.above()) ? 1 : -1);
            if (up > 0) {
                points.add(c.point());
            }
        }
        return SupportRank.of(points,
                new Vec3(loads.moment().y() / down, -loads.moment().x() / down, 0));
    }
}
