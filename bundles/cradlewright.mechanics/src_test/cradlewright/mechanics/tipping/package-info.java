/** Tests of balance against closed forms, brute force over directions and integrated swings. */
package cradlewright.mechanics.tipping;
