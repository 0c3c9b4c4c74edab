/** Tests of castor loads, pushing, steps, brakes and drops against texts, balance equations and other routes. */
package cradlewright.mechanics.castor;
