/** Checks of the work on a car: signatures before work goes on, order, people, gear that is booked, readings, what is late. */
package cradlewright.analysis.checks.job;
