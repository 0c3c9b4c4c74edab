/** Tests of reports as JSON against their schema. */
package cradlewright.report.json;
