package cradlewright.mechanics.timber;

/** How long an action stays (EN 1995-1-1 2.3.1.2). A body that stands for months on a dolly is a long-term action. */
public enum LoadDuration {
    /** Longer than ten years. */
    PERMANENT,
    /** Six months to ten years. */
    LONG,
    /** One week to six months. */
    MEDIUM,
    /** Less than a week. */
    SHORT,
    /** A blow or a gust. */
    INSTANTANEOUS
}
