/** Tests of floor slabs against a textbook case, a published sample sheet, a plate on springs and random slabs. */
package cradlewright.mechanics.slab;
