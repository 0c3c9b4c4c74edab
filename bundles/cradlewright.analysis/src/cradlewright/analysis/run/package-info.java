/** Asks every check about everything in the shop and gathers the answers. */
package cradlewright.analysis.run;
