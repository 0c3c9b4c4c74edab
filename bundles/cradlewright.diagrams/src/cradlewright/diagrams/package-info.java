/** The diagrams of a car on its fixtures and of a dolly. */
package cradlewright.diagrams;
