/** Checks of the dolly itself: its members, their stability, and what it may carry. */
package cradlewright.analysis.checks.dolly;
