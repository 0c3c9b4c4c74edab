/** Answers as pages with drawings, readable without a network. */
package cradlewright.report.html;
