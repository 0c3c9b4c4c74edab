/** Steel grades and resistances of members: EN 1993-1-1 clauses 6.2 and 6.3 with effective widths of EN 1993-1-5. */
package cradlewright.mechanics.steel;
