/** Tests of frames against closed forms, tables, invariants and coupled models. */
package cradlewright.mechanics.frame;
