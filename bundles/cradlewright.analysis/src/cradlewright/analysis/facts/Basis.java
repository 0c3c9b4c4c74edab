package cradlewright.analysis.facts;

/** What a capacity is rated by; mixing them is the usual error, so every verdict prints it. */
public enum Basis {
    WORKING_LOAD_LIMIT, RATED_LOAD, DESIGN_RESISTANCE
}
