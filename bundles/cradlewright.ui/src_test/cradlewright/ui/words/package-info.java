/** Tests of the words for things. */
package cradlewright.ui.words;
