/**
 * Concrete floors under castors, stands and wheels: bending on soil, punching, pressure, and comparison with the wheel of a car.
 */
package cradlewright.mechanics.slab;
