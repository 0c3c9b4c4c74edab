/** Tests of what may be edited in the diagram of a car, without a display. */
package cradlewright.diagrams.car;
