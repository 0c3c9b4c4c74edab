package cradlewright.mechanics.linear;

import java.util.Arrays;

import cradlewright.mechanics.formula.Require;

/**
 * A sparse symmetric matrix while it is being put together. Shares of the same entry add up; an entry and its mirror
 * image are one. Not safe for use by several threads.
 */
public final class SymmetricAssembly {

    private final int size;
    private int count;
    private int[] rows = new int[64];
    private int[] columns = new int[64];
    private double[] values = new double[64];

    /** Starts an empty matrix; throws IllegalArgumentException for a size below zero. */
    public SymmetricAssembly(int size) {
        if (size < 0) {
            throw new IllegalArgumentException("matrix size must not be below zero, found " + size);
        }
        this.size = size;
    }

    /** Returns the number of rows. */
    public int size() {
        return size;
    }

    /**
     * Adds a share to the entries (i, j) and (j, i), or once to the diagonal if i = j. Call it once for each pair, not for
     * the entry and its mirror image.
     *
     * @throws IllegalArgumentException for an index out of range or a value that is not finite
     */
    public void add(int i, int j, double value) {
        if (i < 0 || i >= size || j < 0 || j >= size) {
            throw new IllegalArgumentException("entry (" + i + ", " + j + ") lies outside a matrix of " + size + " rows");
        }
        Require.finite(value, "matrix entry");
        if (count == rows.length) {
            rows = Arrays.copyOf(rows, 2 * count);
            columns = Arrays.copyOf(columns, 2 * count);
            values = Arrays.copyOf(values, 2 * count);
        }
        rows[count] = Math.max(i, j);
        columns[count] = Math.min(i, j);
        values[count] = value;
        count++;
    }

    /** Returns the product with {@code x}; throws IllegalArgumentException if the length differs. */
    public double[] times(double[] x) {
        if (x.length != size) {
            throw new IllegalArgumentException("vector of " + size + " numbers wanted, found " + x.length);
        }
        double[] y = new double[size];
        for (int k = 0; k < count; k++) {
            y[rows[k]] += values[k] * x[columns[k]];
            if (rows[k] != columns[k]) {
                y[columns[k]] += values[k] * x[rows[k]];
            }
        }
        return y;
    }

    /** Returns for each row the columns, ascending, that share an entry with it, without the diagonal. */
    int[][] neighbours() {
        int[] degree = new int[size];
        for (int k = 0; k < count; k++) {
            if (rows[k] != columns[k]) {
                degree[rows[k]]++;
                degree[columns[k]]++;
            }
        }
        int[][] found = new int[size][];
        for (int i = 0; i < size; i++) {
            found[i] = new int[degree[i]];
        }
        for (int k = 0; k < count; k++) {
            if (rows[k] != columns[k]) {
                found[rows[k]][--degree[rows[k]]] = columns[k];
                found[columns[k]][--degree[columns[k]]] = rows[k];
            }
        }
        for (int i = 0; i < size; i++) {
            found[i] = Arrays.stream(found[i]).sorted().distinct().toArray();
        }
        return found;
    }

    /**
     * Returns the lower triangle as a profile: row i runs from its first column that is not empty to the diagonal.
     *
     * @param place place of each row in the order of elimination
     */
    double[][] profile(int[] place) {
        int[] first = new int[size];
        Arrays.setAll(first, i -> i);
        for (int k = 0; k < count; k++) {
            int a = place[rows[k]];
            int b = place[columns[k]];
            first[Math.max(a, b)] = Math.min(first[Math.max(a, b)], Math.min(a, b));
        }
        double[][] profile = new double[size][];
        for (int i = 0; i < size; i++) {
            profile[i] = new double[i - first[i] + 1];
        }
        for (int k = 0; k < count; k++) {
            int row = Math.max(place[rows[k]], place[columns[k]]);
            int column = Math.min(place[rows[k]], place[columns[k]]);
            profile[row][column - first[row]] += values[k];
        }
        return profile;
    }
}
