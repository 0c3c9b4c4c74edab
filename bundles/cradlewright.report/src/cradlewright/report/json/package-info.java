/** Answers as JSON for other programs. */
package cradlewright.report.json;
