/** Numbers with their unit, uncertainty and source: the one place where units are read, written and converted. */
package cradlewright.quantity;
