package cradlewright.mechanics.coupled;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import cradlewright.mechanics.contact.ContactKind;
import cradlewright.mechanics.contact.ContactProblem;
import cradlewright.mechanics.contact.FallMotion;
import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.contact.TipLimit;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.geometry.Vec3;

/**
 * Does it tip? Asked twice: the shell on what it stands on, with that taken as ground, and everything locked together on the
 * floor. The smaller limit governs.
 *
 * @see CoupledFormulas#TIPPING
 */
public final class TippingQuestions {

    /**
     * Answer of one question.
     *
     * @param status OK when it stands up to lambda; NO_EQUILIBRIUM when it falls whatever the amount of the action
     * @param lambda how often the action can be laid on: infinite where it upsets nothing, 0 where nothing holds the load
     * @param standsWithoutAction whether it stands by itself
     * @param motion what starts beyond lambda
     * @param shut ids of the contacts that stay shut in that motion: those it tips over
     */
    public record Answer(SolveStatus status, double lambda, boolean standsWithoutAction, FallMotion motion, List<String> shut) {

        /** Takes a copy of the list. */
        public Answer {
            shut = List.copyOf(shut);
        }
    }

    private final CoupledProblem problem;
    private final String changedBody;
    private final ForceMoment change;

    /** Asks about the bodies, contacts and loads of a problem; compliance and gaps play no part. */
    public TippingQuestions(CoupledProblem problem) {
        this(problem, problem.bodies().get(0).id(), ForceMoment.ZERO);
    }

    /**
     * Asks the same with the steadying load on one body changed, for example to a mass and balance point at the end of their give or
     * take.
     *
     * @param body the body
     * @param change what comes to its load, moment about the origin
     */
    public TippingQuestions(CoupledProblem problem, String body, ForceMoment change) {
        this.problem = Objects.requireNonNull(problem, "problem");
        problem.requireBody(body);
        this.changedBody = body;
        this.change = Objects.requireNonNull(change, "change");
    }

    /**
     * Asks about one body, with all that stands on it, on what it stands on.
     *
     * @param body the body
     * @param action the upsetting load on it, moment about the origin
     */
    public Answer onItsSupports(String body, ForceMoment action) {
        problem.requireBody(body);
        Set<String> moving = new LinkedHashSet<>(Set.of(body));
        boolean grew = true;
        while (grew) {
            grew = false;
            for (Contact c : problem.contacts()) {
                grew |= moving.contains(c.below()) && moving.add(c.above());
            }
        }
        return locked(moving, action);
    }

    /** Asks about all bodies locked together on the floor. */
    public Answer onTheFloor(ForceMoment action) {
        return onTheFloor(action, List.of());
    }

    /** Asks about all bodies locked together on the floor, but for parts that turn freely about pins. */
    public Answer onTheFloor(ForceMoment action, List<Pivot> pivots) {
        Set<String> all = new LinkedHashSet<>();
        problem.bodies().forEach(b -> all.add(b.id()));
        return locked(all, action, pivots);
    }

    /**
     * Asks about a group of bodies locked together, with all others taken as ground.
     *
     * @throws IllegalArgumentException for an unknown body or an action of nothing
     */
    public Answer locked(Set<String> moving, ForceMoment action) {
        return locked(moving, action, List.of());
    }

    private Answer locked(Set<String> moving, ForceMoment action, List<Pivot> pivots) {
        ForceMoment loads = moving.contains(changedBody) ? problem.loadsOf(moving).plus(change) : problem.loadsOf(moving);
        List<Contact> around = problem.around(moving);
        List<String> ids = new ArrayList<>();
        List<Boolean> normals = new ArrayList<>();
        List<ContactKind> kinds = new ArrayList<>();
        List<double[]> columns = new ArrayList<>();
        List<Double> capacity = new ArrayList<>();
        for (Contact c : around) {
            double sign = moving.contains(c.above()) ? 1 : -1;
            List<Vec3> directions = new ArrayList<>(List.of(c.normal()));
            directions.addAll(c.shear());
            for (int k = 0; k < directions.size(); k++) {
                boolean normal = k == 0;
                ids.add(c.id());
                normals.add(normal);
                kinds.add(normal && c.hold() != Hold.BOLTED ? ContactKind.UNILATERAL : ContactKind.HELD);
                columns.add(column(c, directions.get(k).times(sign), normal, pivots));
                capacity.add(normal ? c.pullCapacity() : Double.POSITIVE_INFINITY);
            }
        }
        double[] balance = Arrays.copyOf(CoupledProblem.components(loads.times(-1)), CoupledProblem.ROWS + pivots.size());
        for (int k = 0; k < pivots.size(); k++) {
            balance[CoupledProblem.ROWS + k] = -pivots.get(k).ownMoment();
        }
        TipLimit limit = TipLimit.of(rigid(columns, kinds, balance),
                Arrays.copyOf(CoupledProblem.components(action.times(-1)), balance.length),
                capacity.stream().mapToDouble(Double::doubleValue).toArray());
        if (limit.status() != SolveStatus.OK && limit.status() != SolveStatus.NO_EQUILIBRIUM) {
            return new Answer(limit.status(), 0, false, new FallMotion(FallMotion.Kind.STAYS, Vec3.ZERO, Vec3.ZERO), List.of());
        }
        List<String> shut = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            if (normals.get(i) && limit.staysShut(i)) {
                shut.add(ids.get(i));
            }
        }
        return new Answer(limit.status(), limit.lambda(), limit.standsWithoutAction(),
                limit.motionOf(0, size(around), !shut.isEmpty()), shut);
    }

    /** Returns what a unit force of a contact does: six balances of the whole, and one about each pin. */
    private static double[] column(Contact c, Vec3 force, boolean normal, List<Pivot> pivots) {
        double[] column = Arrays.copyOf(CoupledProblem.components(Body.force(c.point(), force)), CoupledProblem.ROWS + pivots.size());
        for (int k = 0; k < pivots.size(); k++) {
            if (normal && pivots.get(k).contacts().contains(c.id())) {
                column[CoupledProblem.ROWS + k] = pivots.get(k).moment(c.point(), force);
            }
        }
        return column;
    }

    private static ContactProblem rigid(List<double[]> columns, List<ContactKind> kinds, double[] balance) {
        int n = columns.size();
        double[][] c = new double[n][n];
        double[][] e = new double[balance.length][n];
        for (int i = 0; i < n; i++) {
            c[i][i] = ContactProblem.LEAST_COMPLIANCE;
            for (int k = 0; k < balance.length; k++) {
                e[k][i] = columns.get(i)[k];
            }
        }
        return new ContactProblem(c, new double[n], e, balance, kinds);
    }

    private static double size(List<Contact> contacts) {
        double size = 0;
        for (Contact a : contacts) {
            for (Contact b : contacts) {
                size = Math.max(size, a.point().minus(b.point()).norm());
            }
        }
        return size > 0 ? size : 1;
    }
}
