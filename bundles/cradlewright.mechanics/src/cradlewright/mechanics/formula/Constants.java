package cradlewright.mechanics.formula;

/** Physical constants that more than one formula family uses. */
public final class Constants {

    /** Standard acceleration of free fall, m/s2 (ISO 80000-3, exact; from memory). */
    public static final double GRAVITY = 9.80665;

    private Constants() {
    }
}
