/** Castors and wheels under a rigid load: load states on uneven floors, pushing, steps, brakes, running away, drops. */
package cradlewright.mechanics.castor;
