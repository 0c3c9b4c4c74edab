package cradlewright.quantity;

import java.math.BigDecimal;

/**
 * An exact conversion factor as a fraction of two decimals, so that a chain of conversions is rounded once only, at its
 * end.
 *
 * <p>Sources: inch, foot and pound by the international yard and pound agreement of 1959 (1 yd = 0.9144 m, 1 lb =
 * 0.453 592 37 kg, exact; from memory); standard acceleration of free fall 9.806 65 m/s2 (3rd General Conference on
 * Weights and Measures 1901, ISO 80000-3, exact; from memory); pound-force and kilogram-force are the mass times that
 * acceleration. The circle number is cut after 40 decimals.
 */
record Factor(BigDecimal numerator, BigDecimal denominator) {

    static final Factor ONE = of("1");
    static final Factor MILLI = of("0.001");
    static final Factor CENTI = of("0.01");
    static final Factor KILO = of("1000");
    static final Factor MEGA = of("1e6");
    static final Factor INCH = of("0.0254");
    static final Factor FOOT = INCH.times(of("12"));
    static final Factor MILE = FOOT.times(of("5280"));
    static final Factor POUND = of("0.45359237");
    static final Factor GRAVITY = of("9.80665");
    static final Factor POUND_FORCE = POUND.times(GRAVITY);
    static final Factor PSI = POUND_FORCE.per(INCH).per(INCH);
    static final Factor MINUTE = of("60");
    static final Factor HOUR = of("3600");
    static final Factor DEGREE = of("3.1415926535897932384626433832795028841972").per(of("180"));

    static Factor of(String decimal) {
        return new Factor(new BigDecimal(decimal), BigDecimal.ONE);
    }

    Factor times(Factor other) {
        return new Factor(numerator.multiply(other.numerator), denominator.multiply(other.denominator));
    }

    Factor per(Factor other) {
        return new Factor(numerator.multiply(other.denominator), denominator.multiply(other.numerator));
    }
}
