/** Shows answers as sheets: what the command line writes, with headings and in one scrolling text. */
package cradlewright.ui.sheet;
