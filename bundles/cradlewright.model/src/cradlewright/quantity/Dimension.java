package cradlewright.quantity;

/** What a number measures. Quantities of different dimension never convert into each other, mass and force included. */
public enum Dimension {
    /** How much there is of a thing; what a scale shows in kilograms. */
    MASS("mass"),
    /** Length, width, height, thickness, gap. */
    LENGTH("length"),
    /** Push, pull, weight as a force. */
    FORCE("force"),
    /** Force times lever arm. */
    MOMENT("moment"),
    /** Force on an area; also pressure and modulus of elasticity. */
    STRESS("stress"),
    /** Force per length of give. */
    STIFFNESS("stiffness"),
    /** Moment per angle of twist. */
    TORSIONAL_STIFFNESS("torsional stiffness"),
    /** Modulus of elasticity times second moment of area. */
    BENDING_STIFFNESS("bending stiffness"),
    /** Plane angle. */
    ANGLE("angle"),
    /** Duration, for jobs in work hours. */
    TIME("time"),
    /** A number without a unit: factor, share, slope, friction. */
    RATIO("ratio"),
    /** Temperature on a scale whose zero is a convention. */
    TEMPERATURE("temperature"),
    /** Mass per volume. */
    DENSITY("density"),
    /** Pressure of the ground per depth of sinking in. */
    SUBGRADE_MODULUS("subgrade modulus"),
    /** Length per time. */
    SPEED("speed"),
    /** Length times length. */
    AREA("area");

    private final String word;

    Dimension(String word) {
        this.word = word;
    }

    /** Returns the name for messages, in lower case. */
    public String word() {
        return word;
    }

    /** Returns the name with its article, for messages. */
    String one() {
        return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }

    /** Returns the unit in which files of the program hold this dimension by preference. */
    public Unit stored() {
        return switch (this) {
            case MASS -> Unit.KILOGRAM;
            case LENGTH -> Unit.MILLIMETRE;
            case FORCE -> Unit.NEWTON;
            case MOMENT -> Unit.NEWTON_METRE;
            case STRESS -> Unit.MEGAPASCAL;
            case STIFFNESS -> Unit.NEWTON_PER_METRE;
            case TORSIONAL_STIFFNESS -> Unit.NEWTON_METRE_PER_DEGREE;
            case BENDING_STIFFNESS -> Unit.NEWTON_SQUARE_METRE;
            case ANGLE -> Unit.DEGREE;
            case TIME -> Unit.HOUR;
            case RATIO -> Unit.ONE;
            case TEMPERATURE -> Unit.DEGREE_CELSIUS;
            case DENSITY -> Unit.KILOGRAM_PER_CUBIC_METRE;
            case SUBGRADE_MODULUS -> Unit.NEWTON_PER_CUBIC_MILLIMETRE;
            case SPEED -> Unit.METRE_PER_SECOND;
            case AREA -> Unit.SQUARE_MILLIMETRE;
        };
    }

    /**
     * Returns whether a share of the value is a sensible uncertainty. Not so for temperatures and angles: their zero is
     * a convention, and 40 % of 0 degrees would claim that a guess is exact.
     */
    public boolean hasNaturalZero() {
        return this != TEMPERATURE && this != ANGLE;
    }
}
