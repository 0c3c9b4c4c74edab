package cradlewright.analysis.dolly;

import cradlewright.mechanics.section.SectionProperties;

/**
 * A section of stock as the frame and the steel checks need it.
 *
 * @param properties of the section
 * @param thickness of the thickest part, which decides the strength of the steel, in m
 * @param timber whether it is timber
 */
public record SectionShape(SectionProperties properties, double thickness, boolean timber) {
}
