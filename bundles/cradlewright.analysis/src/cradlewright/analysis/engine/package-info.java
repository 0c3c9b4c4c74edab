/** Remembers what was worked out and works out again only what an edit touched. */
package cradlewright.analysis.engine;
