/** Tests of the lines of the start page. */
package cradlewright.ui.start;
