package cradlewright.mechanics.section;

/** A straight or circular piece of the midline of a folded sheet, run through by its length s. */
sealed interface MidlinePiece {

    /** Length of the piece, m. */
    double length();

    /** Point after the length s. */
    SectionPoint at(double s);

    /** Unit normal to the left of the running direction after the length s. */
    SectionPoint normal(double s);

    /** Curvature, above zero when the piece turns to the left, 1/m. */
    double curvature();

    /** Integral of y from the start to s, m2. */
    double firstY(double s);

    /** Integral of z from the start to s, m2. */
    double firstZ(double s);

    /** Twice the area swept by the radius from the origin, from the start to s: integral of y dz - z dy, m2. */
    double sector(double s);

    /** Straight piece. */
    record Line(SectionPoint start, SectionPoint direction, double length) implements MidlinePiece {

        @Override
        public SectionPoint at(double s) {
            return new SectionPoint(start.y() + s * direction.y(), start.z() + s * direction.z());
        }

        @Override
        public SectionPoint normal(double s) {
            return new SectionPoint(-direction.z(), direction.y());
        }

        @Override
        public double curvature() {
            return 0;
        }

        @Override
        public double firstY(double s) {
            return s * (start.y() + s * direction.y() / 2);
        }

        @Override
        public double firstZ(double s) {
            return s * (start.z() + s * direction.z() / 2);
        }

        @Override
        public double sector(double s) {
            return s * (start.y() * direction.z() - start.z() * direction.y());
        }
    }

    /** Circular piece; {@code turn} is +1 to the left, -1 to the right. */
    record Arc(SectionPoint centre, double radius, double startAngle, double turn, double length) implements MidlinePiece {

        private double angle(double s) {
            return startAngle + turn * s / radius;
        }

        @Override
        public SectionPoint at(double s) {
            return ring(s, radius);
        }

        /** Point on the ray of s at another radius. */
        SectionPoint ring(double s, double otherRadius) {
            return new SectionPoint(centre.y() + otherRadius * Math.cos(angle(s)), centre.z() + otherRadius * Math.sin(angle(s)));
        }

        @Override
        public SectionPoint normal(double s) {
            return new SectionPoint(-turn * Math.cos(angle(s)), -turn * Math.sin(angle(s)));
        }

        @Override
        public double curvature() {
            return turn / radius;
        }

        @Override
        public double firstY(double s) {
            return centre.y() * s + turn * radius * radius * (Math.sin(angle(s)) - Math.sin(startAngle));
        }

        @Override
        public double firstZ(double s) {
            return centre.z() * s - turn * radius * radius * (Math.cos(angle(s)) - Math.cos(startAngle));
        }

        @Override
        public double sector(double s) {
            SectionPoint from = at(0);
            SectionPoint to = at(s);
            return centre.y() * (to.z() - from.z()) - centre.z() * (to.y() - from.y()) + turn * radius * s;
        }
    }
}
