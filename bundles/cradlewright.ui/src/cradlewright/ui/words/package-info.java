/** What things are called in the window. */
package cradlewright.ui.words;
