/** Puts changed records back into the objects of the files that they were read from, so that a remedy can be entered as it was tried. */
package cradlewright.analysis.writeback;
