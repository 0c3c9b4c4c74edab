package cradlewright.analysis.check;

import cradlewright.analysis.facts.Change;
import java.util.Objects;
import java.util.Set;

/**
 * Something to do, as changed records that every check can be asked about.
 *
 * @param change the records as they would be
 * @param reach whom it touches
 * @param ends ids of objects, and families of checks, whose questions no longer arise after it: a castor while the feet are down, a
 *        stand that is taken away. What held there need not be answered any more
 */
public record Trial(Change change, Reach reach, Set<String> ends) {

    /** Whom a change touches. */
    public enum Reach {
        /** A way of going about it at the one visit that is asked about. */
        THIS_VISIT,
        /** A record of the shop, with everybody who uses it. */
        EVERY_USER
    }

    /** Copies the set. */
    public Trial {
        Objects.requireNonNull(change);
        Objects.requireNonNull(reach);
        ends = Set.copyOf(ends);
    }

    /** Returns a change of records that touches everybody who uses them. */
    public static Trial records(Change change, String... ends) {
        return new Trial(change, Reach.EVERY_USER, Set.of(ends));
    }

    /** Returns a way of going about it at the one visit that is asked about. */
    public static Trial here(Change change, String... ends) {
        return new Trial(change, Reach.THIS_VISIT, Set.of(ends));
    }

    /** Tells whether the question behind a finding no longer arises. */
    public boolean ends(Finding finding) {
        String family = finding.check().substring(0, finding.check().indexOf('.'));
        return ends.contains(finding.objectId()) || ends.contains(family);
    }
}
