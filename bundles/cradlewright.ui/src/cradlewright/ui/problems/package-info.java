/** What is wrong, as markers in the view of problems. */
package cradlewright.ui.problems;
