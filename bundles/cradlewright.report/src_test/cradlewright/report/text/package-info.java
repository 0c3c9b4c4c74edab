/** Tests of reports as text. */
package cradlewright.report.text;
