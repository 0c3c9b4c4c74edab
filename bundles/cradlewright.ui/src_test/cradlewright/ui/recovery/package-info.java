/** Tests of the copies of unsaved edits. */
package cradlewright.ui.recovery;
