/** Measures how long answers take, beside a general finite element program, and for a whole shop. */
package cradlewright.benchmarks;
