/** Tests of how things look. */
package cradlewright.ui.look;
