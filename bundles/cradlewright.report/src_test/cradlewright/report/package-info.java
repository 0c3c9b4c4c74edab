/** Tests of units and of the words around numbers. */
package cradlewright.report;
