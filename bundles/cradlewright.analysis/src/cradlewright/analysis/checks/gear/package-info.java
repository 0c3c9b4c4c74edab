/** Whether lifting gear may be used at all. */
package cradlewright.analysis.checks.gear;
