package cradlewright.report;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.standing.Weight;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Mass and balance point in words. */
public final class BalanceWords {

    /** Moves below this, in m, are not worth a word. */
    private static final double NOTICED = 0.0005;

    private BalanceWords() {
    }

    /** Returns "412 kg, give or take 8.0 kg", or that it is not known. */
    public static String mass(Optional<EstimatedBalance> estimate, UnitSystem units) {
        return estimate.map(e -> units.text(Amount.mass(e.balance().mass())) + ", give or take "
                + units.text(Amount.mass(e.expanded(EstimatedBalance.Quantity.MASS)))).orElse("not known");
    }

    /** Returns the mass of what is carried, and what it was summed up without. */
    public static String mass(Weight weight, UnitSystem units) {
        String known = mass(weight.estimate(), units);
        return weight.missing().isEmpty() ? known : known + "; without " + String.join(", ", weight.missing());
    }

    /** Returns where along the car, x rearward in m: "2115 mm behind the marks' zero". */
    public static String along(double x, UnitSystem units) {
        return whole(x, units) + (x < 0 ? " ahead of" : " behind") + " the marks' zero";
    }

    /** Returns where across the car, y to the right in m: "7 mm to the left". */
    public static String across(double y, UnitSystem units) {
        return whole(y, units) + (y < 0 ? " to the left" : " to the right");
    }

    /** Whole millimetres: no balance point is known better. */
    private static String whole(double metres, UnitSystem units) {
        double size = Math.abs(metres);
        return units == UnitSystem.METRIC ? Math.round(1000 * size) + " mm" : units.text(Amount.length(size));
    }

    /**
     * Returns where the balance point goes as seen by somebody who sits in the car, largest move first: "back by 34.1 mm, left by 2.0 mm".
     *
     * @param before in the axes of the marks: x rearward, y to the right, z up
     * @param after in the same axes
     */
    public static String move(Vec3 before, Vec3 after, UnitSystem units) {
        Vec3 by = after.minus(before);
        List<Move> moves = new ArrayList<>(List.of(new Move(by.x(), "back", "forward"), new Move(by.y(), "right", "left"),
                new Move(by.z(), "up", "down")));
        moves.removeIf(move -> Math.abs(move.by) < NOTICED);
        moves.sort((a, b) -> Double.compare(Math.abs(b.by), Math.abs(a.by)));
        return moves.isEmpty() ? "stays where it is" : String.join(", ", moves.stream().map(move -> move.words(units)).toList());
    }

    private record Move(double by, String positive, String negative) {
        String words(UnitSystem units) {
            return (by > 0 ? positive : negative) + " by " + units.text(Amount.length(Math.abs(by)));
        }
    }
}
