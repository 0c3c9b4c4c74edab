/** A car as it stands or hangs: what rests on what, what it weighs, what each support and castor carries. */
package cradlewright.analysis.standing;
