/** Tests of the drawing of a dolly. */
package cradlewright.report.dolly;
