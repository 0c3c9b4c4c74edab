/** Answers as headed lines, so that the command line and the window show the same words. */
package cradlewright.report.sheet;
