package cradlewright.mechanics.section;

import cradlewright.mechanics.formula.Require;
import java.util.List;

/**
 * Tee welded from two plates: flange lying on top of an upright web, the web toe at z = 0. Weld beads are left out, and so is
 * warping, which is small and on the safe side.
 *
 * @see SectionFormulas#TEE
 */
public final class TeeSection {

    private TeeSection() {
    }

    /**
     * Tee from its two plates.
     *
     * @param flangeWidth along y, not less than the web thickness, m
     * @param flangeThickness m
     * @param webHeight below the flange, m
     * @param webThickness m
     */
    public static SectionProperties of(double flangeWidth, double flangeThickness, double webHeight, double webThickness) {
        Require.positive(flangeThickness, "flange thickness");
        Require.positive(webHeight, "web height");
        Require.positive(webThickness, "web thickness");
        Require.within(flangeWidth, Math.nextUp(webThickness), Double.MAX_VALUE, "flange width");
        double flange = flangeWidth * flangeThickness;
        double web = webHeight * webThickness;
        double area = flange + web;
        double flangeCentre = webHeight + flangeThickness / 2;
        double centroid = (flange * flangeCentre + web * webHeight / 2) / area;
        double iy = flangeWidth * Math.pow(flangeThickness, 3) / 12 + flange * square(flangeCentre - centroid)
                + webThickness * Math.pow(webHeight, 3) / 12 + web * square(centroid - webHeight / 2);
        double iz = flangeThickness * Math.pow(flangeWidth, 3) / 12 + webHeight * Math.pow(webThickness, 3) / 12;
        double constant = (flangeWidth * Math.pow(flangeThickness, 3) + webHeight * Math.pow(webThickness, 3)) / 3;
        double thickest = Math.max(flangeThickness, webThickness);

        double webToAxis = Math.min(centroid, webHeight);
        double firstMoment = webThickness * webToAxis * (centroid - webToAxis / 2);
        double outer = flangeWidth / 2;
        double inner = webThickness / 2;
        SectionPoint joint = new SectionPoint(0, webHeight);
        List<Plate> plates = List.of(
                Plate.straight(Plate.Kind.OUTSTAND, joint, new SectionPoint(0, 0), webThickness),
                Plate.straight(Plate.Kind.OUTSTAND, new SectionPoint(inner, flangeCentre), new SectionPoint(outer, flangeCentre),
                        flangeThickness),
                Plate.straight(Plate.Kind.OUTSTAND, new SectionPoint(-inner, flangeCentre),
                        new SectionPoint(-outer, flangeCentre), flangeThickness));
        List<SectionPoint> outline = List.of(new SectionPoint(-inner, 0), new SectionPoint(inner, 0),
                new SectionPoint(outer, webHeight), new SectionPoint(outer, webHeight + flangeThickness),
                new SectionPoint(-outer, webHeight + flangeThickness), new SectionPoint(-outer, webHeight));
        return new SectionProperties("tee", new AreaMoments(area, 0, centroid, iy, iz, 0),
                new TorsionProperties(constant, constant / thickest, 0, 0, flangeCentre),
                new ShearAreas(flange, iz * 8 / square(flangeWidth), flange * 5 / 6),
                new ShearAreas(webThickness * (webHeight + flangeThickness / 2), iy * webThickness / firstMoment, web * 5 / 6),
                plasticY(flangeWidth, flangeThickness, webHeight, webThickness),
                flangeThickness * square(flangeWidth) / 4 + webHeight * square(webThickness) / 4, outline, plates);
    }

    private static double plasticY(double flangeWidth, double flangeThickness, double webHeight, double webThickness) {
        double flange = flangeWidth * flangeThickness;
        double web = webHeight * webThickness;
        double half = (flange + web) / 2;
        if (web >= half) {
            double level = half / webThickness;
            return flange * (webHeight + flangeThickness / 2 - level)
                    + webThickness * (square(level) + square(webHeight - level)) / 2;
        }
        double above = half / flangeWidth;
        double below = flangeThickness - above;
        return flangeWidth * (square(above) + square(below)) / 2 + web * (below + webHeight / 2);
    }

    private static double square(double x) {
        return x * x;
    }
}
