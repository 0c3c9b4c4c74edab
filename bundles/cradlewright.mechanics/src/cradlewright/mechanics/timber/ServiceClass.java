package cradlewright.mechanics.timber;

/** Dampness of the surroundings (EN 1995-1-1 2.3.1.3) and the factor k_mod that follows (Table 3.1, solid timber). */
public enum ServiceClass {
    /** Heated rooms. */
    DRY(0.60, 0.70, 0.80, 0.90, 1.10),
    /** Under a roof, unheated. */
    COVERED(0.60, 0.70, 0.80, 0.90, 1.10),
    /** Out of doors, or washed down. */
    OUTDOORS(0.50, 0.55, 0.65, 0.70, 0.90);

    private final double permanent;
    private final double longTerm;
    private final double mediumTerm;
    private final double shortTerm;
    private final double instantaneous;

    ServiceClass(double permanent, double longTerm, double mediumTerm, double shortTerm, double instantaneous) {
        this.permanent = permanent;
        this.longTerm = longTerm;
        this.mediumTerm = mediumTerm;
        this.shortTerm = shortTerm;
        this.instantaneous = instantaneous;
    }

    /** Returns k_mod of solid timber; see {@link TimberFormulas#K_MOD}. */
    public double modification(LoadDuration duration) {
        return switch (duration) {
            case PERMANENT -> permanent;
            case LONG -> longTerm;
            case MEDIUM -> mediumTerm;
            case SHORT -> shortTerm;
            case INSTANTANEOUS -> instantaneous;
        };
    }
}
