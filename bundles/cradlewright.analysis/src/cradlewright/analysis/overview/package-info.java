/** One line a car: where it stands, on what, what it waits for, and the gravest answer about it. */
package cradlewright.analysis.overview;
