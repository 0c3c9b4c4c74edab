/** A dolly as a structure: sections resolved from stock, its frame, its own weight. */
package cradlewright.analysis.dolly;
