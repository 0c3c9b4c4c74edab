/** Tests of what stands between the objects of the open shop and the window. */
package cradlewright.ui.shop;
