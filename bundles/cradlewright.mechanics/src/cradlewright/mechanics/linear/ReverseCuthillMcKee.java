package cradlewright.mechanics.linear;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Order of elimination with a small profile: number the rows in layers outward from a row at the rim of the graph, in each
 * layer by rising number of neighbours, then turn the order round (Cuthill and McKee 1969, turned round by George 1971;
 * from memory). The start is found by going to the far end of the layers until they grow no more (Gibbs, Poole and
 * Stockmeyer 1976; from memory). Ties go to the lowest row, so the order depends on nothing but the matrix.
 */
final class ReverseCuthillMcKee {

    private final int[][] neighbours;
    private final boolean[] numbered;
    private final int[] order;
    private int count;

    private ReverseCuthillMcKee(int[][] neighbours) {
        this.neighbours = neighbours;
        numbered = new boolean[neighbours.length];
        order = new int[neighbours.length];
    }

    /** Returns the rows in the order of elimination. */
    static int[] order(int[][] neighbours) {
        ReverseCuthillMcKee work = new ReverseCuthillMcKee(neighbours);
        for (int row = 0; row < neighbours.length; row++) {
            if (!work.numbered[row]) {
                work.number(work.rim(row));
            }
        }
        int[] reversed = new int[work.count];
        for (int i = 0; i < work.count; i++) {
            reversed[i] = work.order[work.count - 1 - i];
        }
        return reversed;
    }

    private int rim(int start) {
        int row = start;
        int[] distance = distances(row);
        int depth = Arrays.stream(distance).max().orElseThrow();
        while (true) {
            int far = farthest(distance, depth);
            int[] next = distances(far);
            int nextDepth = Arrays.stream(next).max().orElseThrow();
            if (nextDepth <= depth) {
                return row;
            }
            row = far;
            distance = next;
            depth = nextDepth;
        }
    }

    private int farthest(int[] distance, int depth) {
        int best = -1;
        for (int i = 0; i < distance.length; i++) {
            if (distance[i] == depth && (best < 0 || neighbours[i].length < neighbours[best].length)) {
                best = i;
            }
        }
        return best;
    }

    /** Number of steps from the start to each row, -1 where no way leads. */
    private int[] distances(int start) {
        int[] distance = new int[neighbours.length];
        Arrays.fill(distance, -1);
        int[] queue = new int[neighbours.length];
        queue[0] = start;
        distance[start] = 0;
        int end = 1;
        for (int head = 0; head < end; head++) {
            for (int next : neighbours[queue[head]]) {
                if (distance[next] < 0) {
                    distance[next] = distance[queue[head]] + 1;
                    queue[end++] = next;
                }
            }
        }
        return distance;
    }

    private void number(int start) {
        int head = count;
        append(start);
        while (head < count) {
            int row = order[head++];
            Arrays.stream(neighbours[row]).filter(next -> !numbered[next]).boxed()
                    .sorted(Comparator.comparingInt((Integer next) -> neighbours[next].length)).forEach(this::append);
        }
    }

    private void append(int row) {
        numbered[row] = true;
        order[count++] = row;
    }
}
