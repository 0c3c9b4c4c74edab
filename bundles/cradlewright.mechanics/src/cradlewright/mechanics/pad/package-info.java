/** Soft pads of cork and rubber between fixture and body, and the tolerances of stacks of shims. */
package cradlewright.mechanics.pad;
