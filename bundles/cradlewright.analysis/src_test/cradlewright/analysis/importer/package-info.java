/** Checks of the importer against small shops built in memory. */
package cradlewright.analysis.importer;
