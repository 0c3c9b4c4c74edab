package cradlewright.ui.properties;

import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Unit;
import java.util.Objects;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** One of the three lengths of a position, in a field of its own. A position is known wholly or not at all. */
public final class Coordinate {

    /** Which of the three. */
    public enum Axis {
        /** To the rear. */
        X,
        /** To the right. */
        Y,
        /** Up. */
        Z
    }

    private static final Pattern SEVERAL = Pattern.compile("\\S+[\\s;]+[-+]?[0-9].*");

    private final EObject thing;
    private final EAttribute feature;
    private final Axis axis;
    private final Habits habits;
    private final Chosen chosen;
    private final QuantityRow row;

    /**
     * Makes the field of one thing.
     *
     * @param chosen that thing alone
     * @param feature holds its position
     */
    public Coordinate(Chosen chosen, EAttribute feature, Axis axis) {
        this.thing = chosen.first();
        this.feature = feature;
        this.axis = axis;
        this.habits = chosen.habits();
        this.chosen = chosen;
        this.row = new QuantityRow(chosen, feature);
    }

    /** Returns the length in the unit of lengths, without the unit; empty when the position is not known. */
    public String text() {
        return position() == null ? "" : habits.number(of(position()));
    }

    private Position position() {
        return (Position) thing.eGet(feature);
    }

    private double of(Position position) {
        return switch (axis) {
            case X -> position.x();
            case Y -> position.y();
            case Z -> position.z();
        };
    }

    /** Judges what is being typed: this length, all three of them, or nothing, after which the whole position is not known. */
    public Reply type(String text) {
        if (text.strip().equals(text())) {
            return Reply.nothing();
        }
        boolean fraction = text.contains("/") || text.contains("'") || text.contains("ft");
        if (!fraction && SEVERAL.matcher(text.strip()).matches()) {
            return row.typeValue(text);
        }
        if (text.isBlank()) {
            return chosen.change(feature, old -> null, Messages.Place_cleared);
        }
        if (position() == null) {
            String whole = new Known.Place(Position.of(1250, -450, 300)).show(habits);
            return Reply.refused(Messages.Place_noneYet + "; " + NLS.bind(Messages.Place_how, whole) + ".");
        }
        try {
            Measured length = habits.read(text, Dimension.LENGTH);
            double mm = length.in(Unit.MILLIMETRE);
            return Objects.equals(habits.number(mm), text()) ? Reply.nothing()
                    : chosen.change(feature, old -> with((Position) old, mm), row.stillKnown());
        } catch (QuantityFormatException e) {
            return Reply.refused(e.what() + "; " + e.mend() + ".");
        }
    }

    private Position with(Position old, double mm) {
        return new Position(axis == Axis.X ? mm : old.x(), axis == Axis.Y ? mm : old.y(), axis == Axis.Z ? mm : old.z(),
                old.uncertainty(), old.source());
    }
}
