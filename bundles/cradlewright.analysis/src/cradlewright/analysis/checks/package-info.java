/** What the checks of all families share, and the list of those that come with the program. */
package cradlewright.analysis.checks;
