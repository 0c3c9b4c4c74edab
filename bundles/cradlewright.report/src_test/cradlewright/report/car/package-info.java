/** Tests of the drawing of a car on what carries it. */
package cradlewright.report.car;
