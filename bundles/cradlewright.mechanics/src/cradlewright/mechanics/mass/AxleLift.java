package cradlewright.mechanics.mass;

import cradlewright.mechanics.formula.Require;
import java.util.List;

/**
 * Height of the balance point of a car from the readings under one axle while the other is raised (ISO 10392:2011 clause 6).
 *
 * <p>One axle stands on the scale, the other is raised. Works either way round: with the front on the scale distances along the
 * car count rearward from the front axle, with the rear on the scale forward from the rear axle. Suspension blocked, tanks full,
 * brakes off, wheels free to turn. The body is described by the line through the wheel centres, which is inclined already when
 * the two loaded radii differ. See {@link MassFormulas#AXLE_LIFT}.
 *
 * @param wheelbase distance of the wheel centres in m
 * @param mass mass of the car in kg
 * @param scaleRadius loaded radius of the wheels on the scale in m
 * @param raisedRadius loaded radius of the raised wheels in m
 */
public record AxleLift(double wheelbase, double mass, double scaleRadius, double raisedRadius) {

    /**
     * One reading.
     *
     * @param lift how far the raised wheel centres are above their place at rest, m; 0 for the level reading
     * @param reading mass shown by the scale, kg
     */
    public record Step(double lift, double reading) {

        /** Refuses values that are not finite or are below zero. */
        public Step {
            Require.notNegative(lift, "lift");
            Require.notNegative(reading, "reading");
        }
    }

    /**
     * What the readings say.
     *
     * @param aboveCentres height above the line through the wheel centres (square to it), m
     * @param alongCentres distance from the scale axle along that line, m
     * @param aboveFloor height above the floor with all wheels down, m
     * @param aboveCentresUncertainty standard uncertainty of the height above the wheel centres from readings and mass, m
     * @param scatter standard deviation of the readings about the fitted line, kg; 0 for two readings, which any line fits
     * @param worstStep index of the reading that lies furthest from the line
     * @param worstMisfit how far it lies from the line, kg
     */
    public record Height(double aboveCentres, double alongCentres, double aboveFloor, double aboveCentresUncertainty,
            double scatter, int worstStep, double worstMisfit) {
    }

    /** Refuses lengths and masses that are not above zero, and radii that differ by the wheelbase or more. */
    public AxleLift {
        Require.positive(wheelbase, "wheelbase");
        Require.positive(mass, "mass");
        Require.positive(scaleRadius, "loaded radius on the scale");
        Require.positive(raisedRadius, "loaded radius of the raised wheels");
        if (Math.abs(raisedRadius - scaleRadius) >= wheelbase) {
            throw new IllegalArgumentException("the radii must differ by less than the wheelbase, found " + scaleRadius + " and "
                    + raisedRadius);
        }
    }

    /**
     * Returns the inclination of the line through the wheel centres, rad: sin theta = (lift + raised radius - scale
     * radius)/wheelbase.
     *
     * @throws IllegalArgumentException when the lift stands the car upright or more
     */
    public double inclination(double lift) {
        double sine = (Require.notNegative(lift, "lift") + raisedRadius - scaleRadius) / wheelbase;
        if (sine >= 1) {
            throw new IllegalArgumentException("lift must stay below the wheelbase, found " + lift);
        }
        return Math.asin(sine);
    }

    /**
     * Fits the readings against tan theta by least squares and returns the height. Three or more steps, taken up and down, are
     * wanted by the standard; two are computed all the same.
     *
     * <p>u(c)2 = (L/m)2 s2/sum(tan - mean tan)2 + (c u(m)/m)2, where s is the larger of the stated uncertainty of a reading and,
     * with three or more readings, the scatter about the line. Neglected: uncertainty of the inclination, change of tyre
     * deflection, fluids that run forward, suspension that is not quite blocked (the standard puts the method at some per cent).
     *
     * @param steps readings at two or more different lifts, as a rule the first at lift 0
     * @param readingUncertainty standard uncertainty of one reading, kg
     * @param massUncertainty standard uncertainty of the mass of the car, kg
     * @throws IllegalArgumentException for fewer than two different lifts or a reading above the mass of the car
     */
    public Height height(List<Step> steps, double readingUncertainty, double massUncertainty) {
        Require.notNegative(readingUncertainty, "uncertainty of a reading");
        Require.notNegative(massUncertainty, "uncertainty of the mass");
        int n = steps.size();
        double[] tangent = new double[n];
        double meanTangent = 0;
        double meanReading = 0;
        for (int i = 0; i < n; i++) {
            Require.within(steps.get(i).reading(), 0, mass, "reading");
            tangent[i] = Math.tan(inclination(steps.get(i).lift()));
            meanTangent += tangent[i] / n;
            meanReading += steps.get(i).reading() / n;
        }
        double spread = 0;
        double common = 0;
        for (int i = 0; i < n; i++) {
            spread += (tangent[i] - meanTangent) * (tangent[i] - meanTangent);
            common += (tangent[i] - meanTangent) * (steps.get(i).reading() - meanReading);
        }
        if (n < 2 || spread < 1e-6) {
            throw new IllegalArgumentException("readings at two or more clearly different lifts are needed, found " + steps);
        }
        double slope = common / spread;
        double squares = 0;
        int worst = 0;
        double worstMisfit = 0;
        for (int i = 0; i < n; i++) {
            double misfit = steps.get(i).reading() - meanReading - slope * (tangent[i] - meanTangent);
            squares += misfit * misfit;
            if (Math.abs(misfit) > Math.abs(worstMisfit)) {
                worst = i;
                worstMisfit = misfit;
            }
        }
        double scatter = n > 2 ? Math.sqrt(squares / (n - 2)) : 0;
        double c = wheelbase * slope / mass;
        double byReading = wheelbase / mass * Math.max(readingUncertainty, scatter) / Math.sqrt(spread);
        double byMass = c * massUncertainty / mass;
        // the fitted line gives F = m (1 - x_a/L) + (m c/L) tan theta, so x_a follows from its value at tan theta = 0
        double along = wheelbase * (1 - (meanReading - slope * meanTangent) / mass);
        double rest = inclination(0);
        double aboveFloor = scaleRadius + along * Math.sin(rest) + c * Math.cos(rest);
        return new Height(c, along, aboveFloor, Math.hypot(byReading, byMass), scatter, worst, worstMisfit);
    }
}
