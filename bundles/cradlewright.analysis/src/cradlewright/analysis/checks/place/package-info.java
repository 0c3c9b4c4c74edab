/** Whether a place suits what stands there. */
package cradlewright.analysis.checks.place;
