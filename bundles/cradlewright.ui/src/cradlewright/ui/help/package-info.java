/** Help beside the work: a page for each view and editor, first steps that do what they say, and the libraries with their licences. */
package cradlewright.ui.help;
