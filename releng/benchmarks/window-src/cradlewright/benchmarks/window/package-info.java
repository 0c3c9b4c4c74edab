/** Runs inside the window to measure it: how long it takes to start, and how it keeps up with the mouse. */
package cradlewright.benchmarks.window;
