/** Edits of the open shop that views and editors have in common. */
package cradlewright.ui.edit;
