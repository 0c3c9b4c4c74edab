/** Whether a car may be lifted, and what each strap, pad and arm then carries. */
package cradlewright.analysis.checks.lift;
