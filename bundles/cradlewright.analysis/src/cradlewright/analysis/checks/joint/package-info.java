/** Checks of the joints of a dolly: bolts, the sheet around them, and welds. */
package cradlewright.analysis.checks.joint;
