/** Tests of what the wizards make. */
package cradlewright.ui.wizards;
