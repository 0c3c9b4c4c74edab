/** Tests of the section properties against closed forms, published tables and brute force. */
package cradlewright.mechanics.section;
