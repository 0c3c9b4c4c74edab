/** Tests of what may be typed and chosen for the things of a shop, without widgets. */
package cradlewright.ui.properties;
