/** Tests of the direct solver against a dense one. */
package cradlewright.mechanics.linear;
