package cradlewright.mechanics.slab;

import cradlewright.mechanics.formula.Require;

/**
 * Where something stands on the floor: a rectangle, or a circle (both lengths its diameter).
 *
 * @param length m
 * @param width m
 * @param round true for a circle
 */
public record LoadedArea(double length, double width, boolean round) {

    /** Refuses lengths that are not above zero and circles of two diameters. */
    public LoadedArea {
        Require.positive(length, "length of the contact");
        Require.positive(width, "width of the contact");
        if (round && length != width) {
            throw new IllegalArgumentException("a circle has one diameter, found " + length + " and " + width);
        }
    }

    /** Returns a rectangle, m. */
    public static LoadedArea rectangle(double length, double width) {
        return new LoadedArea(length, width, false);
    }

    /** Returns a circle of the given radius, m. */
    public static LoadedArea circle(double radius) {
        return new LoadedArea(2 * radius, 2 * radius, true);
    }

    /** Returns the area, m2. */
    public double area() {
        return round ? Math.PI * length * length / 4 : length * width;
    }

    /** Returns the way round, m. */
    public double perimeter() {
        return round ? Math.PI * length : 2 * (length + width);
    }

    /** Returns the radius of the circle of the same area, m. */
    public double equalRadius() {
        return Math.sqrt(area() / Math.PI);
    }

    /** Returns itself, or for a circle the square drawn inside it, which is a little on the safe side. */
    LoadedArea squared() {
        return round ? rectangle(length / Math.sqrt(2), length / Math.sqrt(2)) : this;
    }
}
