/** What was done to the shop since it was opened, to be taken back and done again. */
package cradlewright.ui.history;
