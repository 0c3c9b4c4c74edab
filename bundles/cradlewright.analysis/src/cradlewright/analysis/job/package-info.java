/** The work on a car: its steps, where somebody has to sign before it goes on, and what exactly they signed for. */
package cradlewright.analysis.job;
