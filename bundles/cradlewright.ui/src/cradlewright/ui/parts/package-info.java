/** The parts list of a car as a table: parts and temporary loads, what is on in which stage, and what a stage weighs. */
package cradlewright.ui.parts;
