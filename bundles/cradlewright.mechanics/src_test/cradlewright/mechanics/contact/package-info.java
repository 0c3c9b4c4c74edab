/** Tests of the contact problem against closed forms, brute force over all contact sets and a second solver. */
package cradlewright.mechanics.contact;
