/** The page that opens with the window: one line a car, one for each dolly and each piece of lifting gear, and how to begin. */
package cradlewright.ui.start;
