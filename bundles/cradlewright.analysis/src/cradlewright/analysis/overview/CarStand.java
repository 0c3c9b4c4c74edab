package cradlewright.analysis.overview;

/**
 * Where a car, or what is carried of it, stands at a visit.
 *
 * @param visitId the visit
 * @param where the place, in words
 * @param on what carries it, in words
 */
public record CarStand(String visitId, String where, String on) {
}
