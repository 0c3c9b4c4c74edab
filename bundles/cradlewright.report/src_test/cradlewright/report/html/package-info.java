/** Tests of reports as pages. */
package cradlewright.report.html;
