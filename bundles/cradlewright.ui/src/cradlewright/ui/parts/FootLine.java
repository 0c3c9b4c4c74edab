package cradlewright.ui.parts;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.standing.StageWeight;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import cradlewright.quantity.Dimension;
import cradlewright.report.UnitSystem;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;

/**
 * What a stage weighs, in words of the reader.
 *
 * @param name the stage, or a piece in it
 * @param mass with give or take; a word for it when nothing known is on
 * @param x balance point to the rear with give or take
 * @param y to the right
 * @param z up
 * @param missing what it was summed up without
 * @param guessed how much of it nobody weighed or looked up
 */
record FootLine(String name, String mass, String x, String y, String z, String missing, String guessed) {

    static List<FootLine> of(List<StageWeight> weights, UnitSystem units) {
        return weights.stream().map(weight -> of(weight, units)).toList();
    }

    private static FootLine of(StageWeight stage, UnitSystem units) {
        Optional<EstimatedBalance> known = stage.weight().estimate();
        String name = stage.piece().map(piece -> NLS.bind(Messages.Foot_piece, piece)).orElse(stage.stage());
        String guessed = stage.weight().guessed().isEmpty() ? ""
                : NLS.bind(Messages.Foot_guessed, units.text(Amount.mass(stage.weight().guessedMass())),
                        String.join(", ", stage.weight().guessed()));
        return new FootLine(name, known.map(all -> text(all.balance().mass(), all, Quantity.MASS, units)).orElse(Messages.Cell_unknown),
                known.map(all -> text(all.balance().point().x(), all, Quantity.X, units)).orElse(""),
                known.map(all -> text(all.balance().point().y(), all, Quantity.Y, units)).orElse(""),
                known.map(all -> text(all.balance().point().z(), all, Quantity.Z, units)).orElse(""),
                String.join(", ", stage.weight().missing()), guessed);
    }

    private static String text(double value, EstimatedBalance all, Quantity quantity, UnitSystem units) {
        Dimension dimension = quantity == Quantity.MASS ? Dimension.MASS : Dimension.LENGTH;
        String number = units.text(new Amount(value, dimension));
        String bare = number.substring(0, number.length() - units.unit(dimension).label().length()).strip();
        return NLS.bind(Messages.Foot_number, bare, units.text(new Amount(all.expanded(quantity), dimension)));
    }
}
