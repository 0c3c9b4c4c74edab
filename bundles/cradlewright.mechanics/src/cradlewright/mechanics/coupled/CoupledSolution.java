package cradlewright.mechanics.coupled;

import java.util.List;

import cradlewright.mechanics.contact.ContactSolution;
import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.geometry.Vec3;

/** Forces between coupled bodies by contact id. Asking a failed one for numbers throws IllegalStateException. */
public final class CoupledSolution {

    private final CoupledProblem problem;
    private final ContactSolution solution;

    CoupledSolution(CoupledProblem problem, ContactSolution solution) {
        this.problem = problem;
        this.solution = solution;
    }

    /** Returns how the calculation ended. */
    public SolveStatus status() {
        return solution.status();
    }

    /** Returns the solution in the order of the unknowns. */
    public ContactSolution unknowns() {
        return solution;
    }

    /** Returns the problem. */
    public CoupledProblem problem() {
        return problem;
    }

    /** Returns the force along the normal, N; below zero only where a bolted contact pulls. */
    public double force(String contact) {
        return solution.force(problem.normalIndex(contact));
    }

    /** Returns the gap, m; zero where shut. */
    public double gap(String contact) {
        return solution.gap(problem.normalIndex(contact));
    }

    /** Returns the force square to the normal on the body above, N: to be held against friction or the pin. */
    public Vec3 shear(String contact) {
        int at = problem.normalIndex(contact);
        Vec3 sum = Vec3.ZERO;
        List<Vec3> directions = problem.contact(contact).shear();
        for (int k = 0; k < directions.size(); k++) {
            sum = sum.plus(directions.get(k).times(solution.force(at + 1 + k)));
        }
        return sum;
    }

    /** Returns the whole force on the body above, N. */
    public Vec3 forceOnAbove(String contact) {
        return problem.contact(contact).normal().times(force(contact)).plus(shear(contact));
    }

    /** Returns whether a bolted contact pulls no more than it can. */
    public boolean holdsPull(String contact) {
        return force(contact) >= -problem.contact(contact).pullCapacity();
    }

    /** Returns the forces on one body, to go with {@link CoupledProblem#actionsOn(String)}. */
    public double[] forcesOn(String body) {
        return problem.forcesOn(body, solution.forces());
    }

    /** Returns what is left when all forces and loads on a body are added up, moment about the origin: near zero. */
    public ForceMoment unbalanced(String body) {
        ForceMoment sum = problem.requireBody(body).loads();
        for (Contact c : problem.contacts()) {
            if (c.above().equals(body)) {
                sum = sum.plus(Body.force(c.point(), forceOnAbove(c.id())));
            } else if (c.below().equals(body)) {
                sum = sum.plus(Body.force(c.point(), forceOnAbove(c.id()).times(-1)));
            }
        }
        return sum;
    }
}
