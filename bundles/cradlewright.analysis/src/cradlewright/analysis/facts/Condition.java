package cradlewright.analysis.facts;

/** What somebody found when looking at a place that is to carry load. */
public enum Condition {
    SOUND, THIN, HOLED, REPAIRED, NOT_LOOKED_AT
}
