/** Two-post lifts, their arms and pads, slings, straps and stands: who carries what, and what is out of bounds. */
package cradlewright.mechanics.lifting;
