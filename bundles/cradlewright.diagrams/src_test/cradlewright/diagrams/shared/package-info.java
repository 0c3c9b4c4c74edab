/** Tests of the bridge from GEF's commands to the stack of the shop. */
package cradlewright.diagrams.shared;
