/** Turns the editable shop into immutable records in SI units; the only place of this bundle that sees model objects. */
package cradlewright.analysis.importer;
