package cradlewright.analysis.overview;

import java.time.LocalDate;

/**
 * A day that matters for a car.
 *
 * @param day the day
 * @param what what is to happen on it, in words
 */
public record CarDate(LocalDate day, String what) {
}
