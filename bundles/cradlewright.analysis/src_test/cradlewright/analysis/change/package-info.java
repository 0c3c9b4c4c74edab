/** Tests of changes that are only thought of. */
package cradlewright.analysis.change;
