/** Tests of the pages of the help. */
package cradlewright.ui.help;
