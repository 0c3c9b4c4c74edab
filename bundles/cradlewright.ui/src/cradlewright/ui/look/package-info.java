/** How things look in the window: pictures, and the glyph, word and colour of each verdict. */
package cradlewright.ui.look;
