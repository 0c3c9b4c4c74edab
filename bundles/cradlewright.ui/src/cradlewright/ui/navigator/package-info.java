/** The tree of everything in the shop, with the gravest verdict about each thing. */
package cradlewright.ui.navigator;
