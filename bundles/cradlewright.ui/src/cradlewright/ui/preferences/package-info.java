/** What the person at this window prefers. */
package cradlewright.ui.preferences;
