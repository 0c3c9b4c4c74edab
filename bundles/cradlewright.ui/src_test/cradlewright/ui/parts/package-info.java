/** Tests of the parts list apart from its widgets. */
package cradlewright.ui.parts;
