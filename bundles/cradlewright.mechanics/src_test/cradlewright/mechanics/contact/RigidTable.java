package cradlewright.mechanics.contact;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** A rigid body on vertical springs, the plainest contact problem: rows (1, x, y), so w = (W, W x, W y). */
record RigidTable(double[] x, double[] y, double[] stiffness, double[] gap) {

    static RigidTable rectangle(double length, double width, double k) {
        double a = length / 2;
        double b = width / 2;
        return new RigidTable(new double[] {-a, -a, a, a}, new double[] {-b, b, b, -b}, new double[] {k, k, k, k}, new double[4]);
    }

    RigidTable low(int support, double by) {
        double[] g = gap.clone();
        g[support] += by;
        return new RigidTable(x, y, stiffness, g);
    }

    int size() {
        return x.length;
    }

    double[][] rows() {
        double[] one = new double[size()];
        Arrays.fill(one, 1);
        return new double[][] {one, x.clone(), y.clone()};
    }

    static double[] load(double weight, double xg, double yg) {
        return new double[] {weight, weight * xg, weight * yg};
    }

    List<ContactKind> kinds() {
        return Collections.nCopies(size(), ContactKind.UNILATERAL);
    }

    double[][] compliance() {
        double[][] c = new double[size()][size()];
        for (int i = 0; i < size(); i++) {
            c[i][i] = 1 / stiffness[i];
        }
        return c;
    }

    ContactProblem problem(double weight, double xg, double yg) {
        return new ContactProblem(compliance(), gap, rows(), load(weight, xg, yg), kinds());
    }

    ContactSolution solve(double weight, double xg, double yg) {
        return ContactSolver.solve(problem(weight, xg, yg));
    }
}
