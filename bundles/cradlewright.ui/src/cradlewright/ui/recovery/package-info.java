/** Keeps copies of what is not saved yet beside the program, and gives them back after the program or the machine broke down. */
package cradlewright.ui.recovery;
