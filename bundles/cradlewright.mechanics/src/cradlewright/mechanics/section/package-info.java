/**
 * Properties of member cross-sections: folded sheet, hollow sections, flat bars and tees, with the flat parts that decide
 * about local buckling.
 *
 * <p>Axes of a drawn section follow EN 1993: y to the right, z up, the member axis x towards the viewer. {@code Iy} is the
 * second moment about the horizontal axis y-y (bending under vertical load), {@code Iz} the one about the vertical axis z-z.
 * A section that lies on its side is drawn lying on its side; no axis is renamed to stay the stronger one.
 */
package cradlewright.mechanics.section;
