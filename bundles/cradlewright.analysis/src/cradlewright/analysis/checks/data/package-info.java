/** Whether the files say enough for the other checks to answer. */
package cradlewright.analysis.checks.data;
