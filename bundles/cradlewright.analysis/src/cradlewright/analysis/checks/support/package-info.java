/** Whether what a piece rests on, and the place that rests there, is fit to carry. */
package cradlewright.analysis.checks.support;
