/** Answers as plain text for a terminal. */
package cradlewright.report.text;
