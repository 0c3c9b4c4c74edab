/** Shows and edits what is known of the things that are selected; what may be typed is decided without widgets. */
package cradlewright.ui.properties;
