package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Amount;
import cradlewright.mechanics.steel.Utilisation;
import cradlewright.quantity.Dimension;

/** A use of steel as amounts and shop words. */
final class UseWords {

    private UseWords() {
    }

    static Amount demand(Utilisation use) {
        return new Amount(use.demand(), dimension(use));
    }

    static Amount capacity(Utilisation use) {
        return new Amount(use.capacity(), dimension(use));
    }

    static Amount stress(double pascals) {
        return Amount.stress(pascals);
    }

    /** Returns what the steel is used by. */
    static String of(Utilisation use) {
        return switch (use.what()) {
            case "compression" -> "push along it";
            case "tension" -> "pull along it";
            case "bending about y" -> "bending over its height";
            case "bending about z" -> "bending over its width";
            case "shear along y" -> "shear across its width";
            case "shear along z" -> "shear across its height";
            case "torsion" -> "twisting";
            case "axial force and bending together" -> "bending both ways with the push or pull along it";
            case "von Mises stress" -> "bending and twisting together";
            default -> use.what();
        };
    }

    private static Dimension dimension(Utilisation use) {
        return switch (use.unit()) {
            case "N" -> Dimension.FORCE;
            case "N*m" -> Dimension.MOMENT;
            case "Pa" -> Dimension.STRESS;
            default -> Dimension.RATIO;
        };
    }
}
