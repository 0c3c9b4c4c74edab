/** Tests of what stands on a sheet. */
package cradlewright.report.sheet;
