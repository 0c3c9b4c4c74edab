/** Reads check values with their sources and records how well the formulas meet them. */
package cradlewright.mechanics.verify;
