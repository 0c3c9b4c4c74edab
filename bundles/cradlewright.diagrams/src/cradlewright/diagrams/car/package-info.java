/** The diagram of a car on what carries it: what may be edited there, and the editor that shows it. */
package cradlewright.diagrams.car;
