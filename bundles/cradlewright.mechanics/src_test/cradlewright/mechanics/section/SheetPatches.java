package cradlewright.mechanics.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** A folded channel as many small patches of its true thick outline, web upright on the left: no formula of a section. */
public final class SheetPatches {

    private static final int LAYERS = 40;
    private static final int STEPS = 400;

    /** A small piece of the section. */
    public record Patch(double y, double z, double area) {
    }

    private final List<Patch> patches = new ArrayList<>();

    private SheetPatches() {
    }

    /** Outside measures and inner radius in m, as in the drawing of the channel. */
    public static SheetPatches channel(double height, double width, double thickness, double innerRadius) {
        SheetPatches sheet = new SheetPatches();
        double outer = innerRadius + thickness;
        for (int i = 0; i < STEPS; i++) {
            double share = (i + 0.5) / STEPS;
            for (int k = 0; k < LAYERS; k++) {
                double depth = (k + 0.5) * thickness / LAYERS;
                double layer = thickness / LAYERS;
                double web = height - 2 * outer;
                sheet.patches.add(new Patch(depth, outer + share * web, layer * web / STEPS));
                double flange = width - outer;
                double radius = outer - depth;
                double angle = share * Math.PI / 2;
                double bend = layer * radius * Math.PI / 2 / STEPS;
                for (int side = 0; side < 2; side++) {
                    double z = side == 0 ? depth : height - depth;
                    sheet.patches.add(new Patch(outer + share * flange, z, layer * flange / STEPS));
                    double rise = outer - radius * Math.sin(angle);
                    sheet.patches.add(new Patch(outer - radius * Math.cos(angle), side == 0 ? rise : height - rise, bend));
                }
            }
        }
        return sheet;
    }

    /** Sum of a density over the section. */
    public double sum(ToDoubleFunction<Patch> density) {
        return patches.stream().mapToDouble(p -> density.applyAsDouble(p) * p.area()).sum();
    }

    /** Area, m2. */
    public double area() {
        return sum(p -> 1);
    }

    /** Moment of equal stress blocks of 1 Pa, pulled above and pressed below the level that halves the area. */
    public double plastic(ToDoubleFunction<Patch> along) {
        List<Patch> sorted = new ArrayList<>(patches);
        sorted.sort(Comparator.comparingDouble(along));
        double half = area() / 2;
        double seen = 0;
        double moment = 0;
        for (Patch p : sorted) {
            double pressed = Math.max(0, Math.min(p.area(), half - seen));
            moment += along.applyAsDouble(p) * (p.area() - 2 * pressed);
            seen += p.area();
        }
        return moment;
    }

    /** Moment at which a straight line of stress reaches 1 Pa at the distance {@code edge} from the centroid. */
    public double elastic(ToDoubleFunction<Patch> along, double edge) {
        double centre = sum(along) / area();
        return sum(p -> Math.pow(along.applyAsDouble(p) - centre, 2)) / edge;
    }
}
