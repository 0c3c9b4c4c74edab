package cradlewright.ui.parts;

import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import cradlewright.ui.properties.Habits;
import cradlewright.ui.properties.QuantityRow;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.osgi.util.NLS;

/**
 * Values out of pasted cells. An empty cell says nothing: what was known stays. A give or take is twice the standard uncertainty that files
 * hold (19 times in 20).
 */
final class PastedValues {

    private static final double TWICE = 2;
    private static final List<PartColumn> AXES = List.of(PartColumn.X, PartColumn.Y, PartColumn.Z);

    private final Map<PartColumn, String> cells;
    private final Habits habits;

    /**
     * Takes the cells of a row that are not empty.
     *
     * @param habits how its numbers are written
     */
    PastedValues(Map<PartColumn, String> cells, Habits habits) {
        this.cells = cells;
        this.habits = habits;
    }

    private String cell(PartColumn column) {
        return cells.getOrDefault(column, "");
    }

    /** Returns the mass that the row says; what was known when it says none. */
    Measured mass(EAttribute feature, Measured old) throws PasteRefused {
        try {
            Measured said = cell(PartColumn.MASS).isEmpty() ? old
                    : (Measured) QuantityRow.read(feature, habits, cell(PartColumn.MASS));
            if (said == null) {
                if (!cell(PartColumn.GIVE).isEmpty()) {
                    throw new PasteRefused(Messages.Paste_giveWithoutMass);
                }
                return null;
            }
            OptionalDouble kept = said.uncertainty().isPresent() || old == null ? said.uncertainty() : old.uncertainty();
            Source from = said.source() == Source.UNSTATED && old != null ? old.source() : said.source();
            return new Measured(said.value(), said.unit(), size(PartColumn.GIVE, Dimension.MASS, kept), source(from));
        } catch (QuantityFormatException e) {
            throw refused(PartColumn.MASS, e);
        }
    }

    private OptionalDouble size(PartColumn column, Dimension dimension, OptionalDouble kept) throws PasteRefused {
        String text = cell(column).replaceFirst("^(\\+/?-|±)\\s*", "");
        if (text.isEmpty()) {
            return kept;
        }
        double size;
        try {
            size = habits.readDifference(text, dimension);
        } catch (QuantityFormatException e) {
            throw refused(column, e);
        }
        if (size < 0) {
            throw new PasteRefused(NLS.bind(Messages.Paste_giveBelowZero, text));
        }
        return OptionalDouble.of(size / TWICE);
    }

    private Source source(Source kept) throws PasteRefused {
        String word = cell(PartColumn.SOURCE).toLowerCase(habits.locale());
        if (word.isEmpty()) {
            return kept;
        }
        return Source.ofWord(word.replace('’', '\'')).orElseThrow(() -> new PasteRefused(NLS.bind(Messages.Paste_noSource, word,
                Arrays.stream(Source.values()).map(Source::word).filter(each -> !each.isEmpty()).collect(Collectors.joining(", ")))));
    }

    /** Returns the balance point that the row says; what was known when it says none. */
    Position place(Position old) throws PasteRefused {
        if (AXES.stream().allMatch(axis -> cell(axis).isEmpty())) {
            if (old == null && !cell(PartColumn.PLACE_GIVE).isEmpty()) {
                throw new PasteRefused(Messages.Paste_giveWithoutPlace);
            }
            return old == null ? null : new Position(old.x(), old.y(), old.z(),
                    size(PartColumn.PLACE_GIVE, Dimension.LENGTH, old.uncertainty()), old.source());
        }
        if (old == null && AXES.stream().anyMatch(axis -> cell(axis).isEmpty())) {
            throw new PasteRefused(Messages.Paste_halfPlace);
        }
        OptionalDouble size = size(PartColumn.PLACE_GIVE, Dimension.LENGTH, old == null ? OptionalDouble.empty() : old.uncertainty());
        return new Position(length(PartColumn.X, old == null ? 0 : old.x()), length(PartColumn.Y, old == null ? 0 : old.y()),
                length(PartColumn.Z, old == null ? 0 : old.z()), size, old == null ? Source.UNSTATED : old.source());
    }

    private double length(PartColumn axis, double kept) throws PasteRefused {
        if (cell(axis).isEmpty()) {
            return kept;
        }
        try {
            return habits.read(cell(axis), Dimension.LENGTH).in(Unit.MILLIMETRE);
        } catch (QuantityFormatException e) {
            throw refused(axis, e);
        }
    }

    private static PasteRefused refused(PartColumn column, QuantityFormatException why) {
        String about = switch (column) {
            case X -> Messages.About_x;
            case Y -> Messages.About_y;
            case Z -> Messages.About_z;
            case GIVE -> Messages.About_give;
            case PLACE_GIVE -> Messages.About_placeGive;
            default -> Messages.Column_mass;
        };
        return new PasteRefused(NLS.bind(Messages.Paste_cell, new Object[] {about, why.what(), why.mend()}));
    }
}
