/** The contact problem of everything that rests on something: forces, their bounds, tipping, first lift-off and doubt. */
package cradlewright.mechanics.contact;
