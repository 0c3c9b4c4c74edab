package cradlewright.benchmarks;

import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Movements and section forces that the other program printed for one step. */
final class CcxOutput {

    private final Map<Integer, double[]> movements = new HashMap<>();
    private final Map<Integer, double[][]> sections = new HashMap<>();

    /** Reads the printed steps, in order of their times. */
    static List<CcxOutput> read(List<String> lines) {
        Map<Double, CcxOutput> byTime = new TreeMap<>();
        CcxOutput current = null;
        boolean moves = false;
        for (String line : lines) {
            if (line.contains("for set")) {
                double time = Double.parseDouble(line.substring(line.lastIndexOf("time") + 4).strip());
                current = byTime.computeIfAbsent(time, t -> new CcxOutput());
                moves = line.contains("displacements");
            } else if (current != null && !line.isBlank()) {
                String[] words = line.strip().split("\\s+");
                double[] six = Arrays.stream(words, words.length - (moves ? words.length - 1 : 6), words.length)
                        .mapToDouble(Double::parseDouble).toArray();
                int number = Integer.parseInt(words[0]);
                if (moves) {
                    current.movements.put(number, six);
                } else {
                    current.sections.computeIfAbsent(number, n -> new double[2][])[Integer.parseInt(words[1]) - 1] = six;
                }
            }
        }
        return new ArrayList<>(byTime.values());
    }

    /** Returns three shifts and, for a node of the frame, three turns. */
    double[] movement(int node) {
        return movements.get(node);
    }

    /**
     * Returns the section forces at the near (0) or far (1) end of an element along its axes: axial force, bending and shear
     * along its
     * first axis, then torque times the shear factor. They are printed like a stress, turned into global axes, so they are
     * turned back;
     * the shear is printed as what the near part does to the far one, here it is the other way round.
     */
    double[] section(int element, int end, Vec3 along, Vec3 first) {
        double[] s = sections.get(element)[end];
        Vec3 second = along.cross(first);
        return new double[] {turned(s, along, along), turned(s, first, first), -turned(s, along, first), turned(s, first,
                second)};
    }

    private static double turned(double[] s, Vec3 a, Vec3 b) {
        return a.dot(new Vec3(s[0] * b.x() + s[3] * b.y() + s[4] * b.z(), s[3] * b.x() + s[1] * b.y() + s[5] * b.z(),
                s[4] * b.x() + s[5] * b.y() + s[2] * b.z()));
    }
}
