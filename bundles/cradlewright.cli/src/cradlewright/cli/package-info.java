/** The command line: one class a verb, text in and out, no display. */
package cradlewright.cli;
