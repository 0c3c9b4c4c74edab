package cradlewright.mechanics.frame;

import java.util.ArrayList;
import java.util.List;

import cradlewright.mechanics.formula.Require;

/**
 * A frame seen through its contacts: how far each contact point moves along its direction per unit of each contact, and
 * under loads. One solve per contact, done when made; what loads do to the contacts then follows from the work that they do
 * on these movements (Maxwell and Betti), without a solve. Immutable. See {@link FrameFormulas#CONDENSE}.
 *
 * <p>On a free body flexibility and sag depend on the clamped node by rigid motions; in a contact problem that also asks for
 * balance these drop out.
 */
public final class CondensedFrame {

    private final FrameStructure structure;
    private final List<ContactDof> contacts;
    private final List<LoadCase> units = new ArrayList<>();
    private final List<double[]> movements = new ArrayList<>();
    private final double[][] flexibility;

    CondensedFrame(FrameStructure structure, List<ContactDof> contacts) {
        this.structure = structure;
        this.contacts = List.copyOf(contacts);
        for (ContactDof contact : this.contacts) {
            LoadCase unit = LoadCase.on(structure.model()).action(contact.point(), contact.action()).build();
            units.add(unit);
            movements.add(structure.movements(unit));
        }
        flexibility = symmetric();
    }

    private double[][] symmetric() {
        int n = contacts.size();
        double[][] rows = new double[n][];
        for (int j = 0; j < n; j++) {
            rows[j] = work(units.get(j));
        }
        double[][] mean = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                mean[i][j] = (rows[i][j] + rows[j][i]) / 2;
            }
        }
        return mean;
    }

    /** Movement of each contact along its direction: the work of the loads on the movements of its unit action. */
    private double[] work(LoadCase loads) {
        double[] actions = structure.actions(loads);
        double[] along = new double[contacts.size()];
        for (int i = 0; i < along.length; i++) {
            along[i] = Vectors.dot(movements.get(i), actions) + betweenNodes(contacts.get(i), loads);
        }
        return along;
    }

    /** What loads on the same member add to the movement of a contact that does not stand at a node. */
    private double betweenNodes(ContactDof contact, LoadCase loads) {
        FramePoint point = contact.point();
        if (!point.onMember()) {
            return 0;
        }
        int member = structure.model().memberIndex(point.owner());
        List<SpanLoad> span = loads.spanLoads(member);
        if (span.isEmpty()) {
            return 0;
        }
        double station = structure.model().station(point.owner(), point.distance());
        return contact.action().work(structure.element(member).held(span).motion(station).at(point.arm()));
    }

    /** Returns the structure behind the contacts. */
    public FrameStructure structure() {
        return structure;
    }

    /** Returns the contacts, in the order of all rows and columns. */
    public List<ContactDof> contacts() {
        return contacts;
    }

    /**
     * Returns what one unit of a contact adds to force and moment on the body, moment about the origin: its column of the
     * balance of the body.
     */
    public ForceMoment balanceColumn(int contact) {
        ContactDof c = contacts.get(contact);
        return c.action().seenFrom(structure.model().position(c.point()));
    }

    /**
     * Returns entry (i, j): movement of contact i along its direction per unit of contact j, m/N. The give of the member
     * between its nodes is counted where contacts stand on the same member. Symmetric; the mean of both halves.
     */
    public double[][] flexibility() {
        double[][] copy = new double[flexibility.length][];
        for (int i = 0; i < copy.length; i++) {
            copy[i] = flexibility[i].clone();
        }
        return copy;
    }

    /**
     * Returns the movement of each contact along its direction under loads that are not contacts, m.
     *
     * @throws IllegalArgumentException if the case belongs to another model
     */
    public double[] sag(LoadCase loads) {
        return under(loads).sag(1);
    }

    /**
     * Returns movements and internal forces under contact forces and other loads together.
     *
     * @param contactForces units of each contact, in order
     * @throws IllegalArgumentException if a number is not finite, their count differs, the case belongs to another model, or
     *         the whole does not balance on a free body
     */
    public FrameResult result(double[] contactForces, LoadCase loads) {
        return under(loads).result(contactForces, 1);
    }

    /**
     * Returns the frame with a pattern of loads that are not contacts.
     *
     * @throws IllegalArgumentException if the case belongs to another model
     */
    public LoadedFrame under(LoadCase loads) {
        loads.requireOn(structure.model());
        return new LoadedFrame(this, loads);
    }

    double[] movedBy(LoadCase loads) {
        if (!loads.hasSettlements()) {
            return work(loads);
        }
        FrameResult result = structure.result(loads, structure.movements(loads));
        return contacts.stream().mapToDouble(c -> c.action().work(result.motion(c.point()))).toArray();
    }

    /** The sum of all contacts, each times its force, and of {@code factor} times a case with the movements it makes. */
    FrameResult superposed(double[] contactForces, LoadCase loads, double[] moved, double factor) {
        if (contactForces.length != contacts.size()) {
            throw new IllegalArgumentException(contacts.size() + " contact forces wanted, found " + contactForces.length);
        }
        double[] sum = new double[moved.length];
        Vectors.addTimes(sum, factor, moved);
        for (int c = 0; c < contactForces.length; c++) {
            if (!Double.isFinite(contactForces[c])) {
                Require.finite(contactForces[c], "force of contact " + c);
            }
            Vectors.addTimes(sum, contactForces[c], movements.get(c));
        }
        LoadCase all = loads.times(factor).plusTimes(units, contactForces);
        structure.requireBalance(all);
        return structure.result(all, sum);
    }
}
