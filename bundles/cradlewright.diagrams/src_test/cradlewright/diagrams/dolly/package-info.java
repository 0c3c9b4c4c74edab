/** Tests of the edits in the diagram of a dolly. */
package cradlewright.diagrams.dolly;
