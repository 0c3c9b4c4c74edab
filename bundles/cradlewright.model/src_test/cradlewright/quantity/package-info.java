/** Tests of units, their texts and their conversion. */
package cradlewright.quantity;
