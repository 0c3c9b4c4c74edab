/** Tests of sheets as text. */
package cradlewright.ui.sheet;
