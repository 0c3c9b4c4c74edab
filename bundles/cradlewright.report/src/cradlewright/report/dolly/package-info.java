/** A dolly drawn to scale from above and from the left, with the numbers of the analysis where they act. */
package cradlewright.report.dolly;
