package cradlewright.report.car;

import cradlewright.analysis.facts.Condition;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.QuestionMark;
import cradlewright.report.scene.Role;
import cradlewright.report.scene.Shape.Point;

/** Signs for the condition of a place on the car, told apart by their form: each condition has its own. */
final class Marks {

    private Marks() {
    }

    /** Returns how a place in that condition is painted. */
    static Role role(Condition condition) {
        return condition == Condition.SOUND || condition == Condition.REPAIRED ? Role.SOUND : Role.UNSOUND;
    }

    /** Draws the sign of a condition into a ring or a square of that half width. */
    static void condition(Pen.ItemPen item, Condition condition, Point at, double half) {
        Role role = role(condition);
        double in = half * 0.55;
        switch (condition) {
            case REPAIRED -> cross(item, role, at, in, 0);
            case THIN -> item.line(role, at.moved(-in, 0), at.moved(in, 0));
            case HOLED -> cross(item, role, at, in, in);
            case NOT_LOOKED_AT -> QuestionMark.draw(item, role, at, in);
            default -> {
                // What is sound needs no sign.
            }
        }
    }

    /** Upright cross for a slope of zero, slanting for a slope of its arm. */
    private static void cross(Pen.ItemPen item, Role role, Point at, double arm, double slope) {
        item.line(role, at.moved(-arm, -slope), at.moved(arm, slope));
        if (slope == 0) {
            item.line(role, at.moved(0, -arm), at.moved(0, arm));
        } else {
            item.line(role, at.moved(-arm, slope), at.moved(arm, -slope));
        }
    }
}
