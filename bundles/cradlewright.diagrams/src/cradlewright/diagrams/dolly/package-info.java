/** The diagram of a dolly: its members, castors, feet and fixtures, with what a car on it does to them. */
package cradlewright.diagrams.dolly;
