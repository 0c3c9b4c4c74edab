/** Drives the real window on a virtual display, as a person would, and looks at what it shows. */
package cradlewright.ui.tests;
