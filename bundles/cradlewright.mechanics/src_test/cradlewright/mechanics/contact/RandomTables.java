package cradlewright.mechanics.contact;

import java.util.Collections;
import java.util.Random;

/** Random bodies on 4 to 8 supports: free positions and a coarse grid (ties, lines), gaps to 8 mm, rigid and elastic. */
final class RandomTables {

    private RandomTables() {
    }

    static ContactProblem next(Random random) {
        int n = 4 + random.nextInt(5);
        boolean grid = random.nextInt(3) == 0;
        double[] x = new double[n];
        double[] y = new double[n];
        double[] gap = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = grid ? 0.5 * random.nextInt(6) : 3 * random.nextDouble();
            y[i] = grid ? 0.5 * random.nextInt(3) : 1.2 * random.nextDouble();
            gap[i] = grid ? 0.001 * random.nextInt(9) : 0.008 * random.nextDouble();
            if (random.nextInt(4) == 0) {
                gap[i] = 0;
            }
        }
        if (onOneLine(x, y)) {
            return next(random);
        }
        double[] k = new double[n];
        double usual = Math.pow(10, 5 + 2 * random.nextDouble());
        boolean alike = random.nextBoolean();
        for (int i = 0; i < n; i++) {
            k[i] = alike ? usual : usual * (0.2 + random.nextDouble());
        }
        RigidTable table = new RigidTable(x, y, k, gap);
        double[][] c = table.compliance();
        if (random.nextInt(3) == 0) {
            double[] shape = new double[n];
            for (int i = 0; i < n; i++) {
                shape[i] = random.nextGaussian() * 1e-3;
            }
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    c[i][j] += shape[i] * shape[j];
                }
            }
        }
        double weight = 1000 + 4000 * random.nextDouble();
        double xg = 0;
        double yg = 0;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double part = grid && random.nextInt(3) == 0 ? 0.125 : 0.01 + random.nextDouble();
            xg += part * x[i];
            yg += part * y[i];
            sum += part;
        }
        boolean anywhere = random.nextInt(10) == 0;
        xg = anywhere ? 3 * random.nextDouble() : xg / sum;
        yg = anywhere ? 1.2 * random.nextDouble() : yg / sum;
        return new ContactProblem(c, gap, table.rows(), RigidTable.load(weight, xg, yg),
                Collections.nCopies(n, ContactKind.UNILATERAL));
    }

    private static boolean onOneLine(double[] x, double[] y) {
        double largest = 0;
        for (int i = 1; i < x.length; i++) {
            for (int j = 1; j < i; j++) {
                largest = Math.max(largest, Math.abs((x[i] - x[0]) * (y[j] - y[0]) - (x[j] - x[0]) * (y[i] - y[0])));
            }
        }
        return largest < 1e-6;
    }

    static double[][] compliance(ContactProblem problem) {
        double[][] c = new double[problem.size()][problem.size()];
        for (int i = 0; i < c.length; i++) {
            for (int j = 0; j < c.length; j++) {
                c[i][j] = problem.compliance(i, j);
            }
        }
        return c;
    }
}
