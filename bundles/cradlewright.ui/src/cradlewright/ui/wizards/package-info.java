/** Guides a person through a new shop, a new car and a new dolly; what they make is plain model code that knows nothing of windows. */
package cradlewright.ui.wizards;
