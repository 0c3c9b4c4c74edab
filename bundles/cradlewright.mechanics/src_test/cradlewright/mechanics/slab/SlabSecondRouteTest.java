package cradlewright.mechanics.slab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.verify.CheckValues;
import cradlewright.mechanics.verify.SpringBed;

/** Slabs by the work of their yield lines, by strips, springs and cells, and against another print of the table of concretes. */
class SlabSecondRouteTest {

    private static final CheckValues VALUES = CheckValues.load("slab");
    private static final SlabUltimate SHEET = new SlabUltimate(25e6, 0.150, 193e-6, 0.093, 500e6, 3e7);
    private static final double RIGHT_ANGLE = Math.PI / 2;
    private static final int SIDES = 2000;

    @Test
    void concretesOfTheTable() {
        for (int fck : new int[] {12, 25, 30, 40, 50}) {
            VALUES.check("second.C" + fck + ".fctm", Concrete.meanTension(fck * 1e6) / 1e6);
            VALUES.check("second.C" + fck + ".E", Concrete.meanModulus(fck * 1e6) / 1e9);
        }
        VALUES.check("second.C35.fcd", Concrete.designCompression(35e6) / 1e6);
        VALUES.check("second.C45.fcd", Concrete.designCompression(45e6) / 1e6);
        assertThrows(IllegalArgumentException.class, () -> Concrete.meanTension(11.9e6));
        assertThrows(IllegalArgumentException.class, () -> Concrete.meanTension(50.1e6));
    }

    @Test
    void collapseByTheWorkOfYieldLines() {
        double sagging = SHEET.sagging();
        double hogging = SHEET.hogging();
        check("lines.inside", work(fan(0, 4 * RIGHT_ANGLE), true, sagging, hogging), SHEET.internal(0));
        check("lines.edge", work(wedges(2 * RIGHT_ANGLE, RIGHT_ANGLE / 2), false, sagging, hogging), SHEET.edge(0));
        check("lines.corner", work(wedges(RIGHT_ANGLE, RIGHT_ANGLE / 2), false, sagging, hogging), SHEET.corner(0));
    }

    /** The wedges of the formulas are those of equal moments: others take little off with a mesh, but much without one. */
    @Test
    void worstWedges() {
        SlabUltimate plain = new SlabUltimate(25e6, 0.150, 0, 0.093, 500e6, 3e7);
        double edge = leastWork(2 * RIGHT_ANGLE, SHEET) / SHEET.edge(0);
        double corner = leastWork(RIGHT_ANGLE, SHEET) / SHEET.corner(0);
        assertTrue(edge < 1 && edge > 0.99, "edge " + edge);
        assertTrue(corner < 1 && corner > 0.99, "corner " + corner);
        assertEquals(0.88, leastWork(2 * RIGHT_ANGLE, plain) / plain.edge(0), 0.005, "plain edge, as its formula warns");
        assertEquals(0.79, leastWork(RIGHT_ANGLE, plain) / plain.corner(0), 0.005, "plain corner, as its formula warns");
    }

    private static double leastWork(double angle, SlabUltimate slab) {
        double least = Double.POSITIVE_INFINITY;
        for (double wedge = 0.005; wedge < RIGHT_ANGLE / 2; wedge += 0.01) {
            least = Math.min(least, work(wedges(angle, wedge), false, slab.sagging(), slab.hogging()));
        }
        return least;
    }

    private static void check(String row, double route, double ours) {
        VALUES.check(row, route / 1000);
        assertEquals(route, ours, 1e-5 * route, row);
    }

    /** Tangents from one direction to another at a circle of 1 m, as corners of a polygon around it. */
    private static List<Vec3> fan(double from, double to) {
        List<Vec3> corners = new ArrayList<>();
        double half = (to - from) / (2 * SIDES);
        for (int i = 0; i < SIDES; i++) {
            double direction = from + (2 * i + 1) * half;
            corners.add(new Vec3(Math.cos(direction), Math.sin(direction), 0).times(1 / Math.cos(half)));
        }
        return corners;
    }

    /** A fan between two wedges beside free edges that stand at the given angle; each wedge ends in a tangent to the circle. */
    private static List<Vec3> wedges(double angle, double wedge) {
        List<Vec3> corners = new ArrayList<>();
        corners.add(new Vec3(1 / Math.cos(wedge), 0, 0));
        if (angle > 2 * wedge + 1e-9) {
            corners.addAll(fan(wedge, angle - wedge));
        }
        corners.add(new Vec3(Math.cos(angle), Math.sin(angle), 0).times(1 / Math.cos(wedge)));
        return corners;
    }

    /** Work of the moments while the load at the origin sinks by 1 m and the polygon stays where it is. */
    private static double work(List<Vec3> corners, boolean closed, double sagging, double hogging) {
        int pieces = closed ? corners.size() : corners.size() - 1;
        Vec3[] turns = new Vec3[pieces];
        double work = 0;
        for (int i = 0; i < pieces; i++) {
            Vec3 a = corners.get(i);
            Vec3 side = corners.get((i + 1) % corners.size()).minus(a);
            double distance = a.cross(side).norm() / side.norm();
            turns[i] = side.unit().times(1 / distance);
            work += hogging * side.norm() / distance;
        }
        for (int i = closed ? 0 : 1; i < pieces; i++) {
            Vec3 line = corners.get(i);
            work += sagging * Math.abs(turns[i].minus(turns[(i + pieces - 1) % pieces]).dot(line));
        }
        return work;
    }

    @Test
    void momentsByStrips() {
        double h = 0.150;
        int strips = 2000;
        double top = Concrete.designFlexure(25e6, h);
        double hogging = 0;
        for (int i = 0; i < strips; i++) {
            double z = ((i + 0.5) / strips - 0.5) * h;
            hogging += top * z / (h / 2) * z * h / strips;
        }
        VALUES.check("strips.Mn", hogging / 1000);
        assertEquals(hogging, SHEET.hogging(), 1e-5 * hogging);
        // cracked: strips from the pressed face are added until they balance the mesh
        double pull = 193e-6 * 500e6 / 1.15;
        double pressed = 0;
        double moment = pull * 0.093;
        for (double z = 5e-7; pressed < pull; z += 1e-6) {
            double strip = Math.min(0.85 * 25e6 / 1.5 * 1e-6, pull - pressed);
            pressed += strip;
            moment -= strip * z;
        }
        VALUES.check("strips.Mp", SHEET.sagging() / 1000);
        assertEquals(7555, moment, 1);
        assertTrue(SHEET.sagging() < moment, "the rule lies on the safe side of the strips");
    }

    @Test
    void pressuresBySpringsAndCells() {
        LoadedArea contact = LoadedArea.circle(0.025);
        double pressure = new SpringBed(0.05, 0.05, 1e-4, (x, y) -> Math.hypot(x, y) <= 0.025).largestPressure(5000);
        VALUES.check("bed.contact", pressure / 1e6);
        assertEquals(pressure, BearingPressure.contact(5000, contact), 2e-3 * pressure);
        int reached = 0;
        for (int i = -300; i < 300; i++) {
            for (int j = -300; j < 300; j++) {
                double beyondX = Math.max(0, Math.abs(i + 0.5) - 25);
                double beyondY = Math.max(0, Math.abs(j + 0.5) - 25);
                reached += beyondX <= 150 && beyondY <= 150 ? 1 : 0;
            }
        }
        double soil = 5000 / (reached * 1e-6);
        VALUES.check("cells.soil", soil / 1000);
        assertEquals(soil, BearingPressure.soil(5000, LoadedArea.rectangle(0.05, 0.05), 0.150), 1e-3 * soil);
    }

    @Test
    void limitsOfTheRange() {
        double widest = 0.5 * SHEET.elastic().radius();
        assertTrue(SHEET.internal(widest * 0.9999) > 0);
        assertThrows(IllegalArgumentException.class, () -> SHEET.internal(widest * 1.001));
        assertTrue(SHEET.elastic().interior(5000, widest * 0.9999).sag() > 0);
        assertThrows(IllegalArgumentException.class, () -> SHEET.elastic().interior(5000, widest * 1.001));
        assertTrue(new Westergaard(31e9, 0.5, 0.15, 3e7).radius() > 0);
        assertThrows(IllegalArgumentException.class, () -> new Westergaard(31e9, 0.501, 0.15, 3e7));
        // from 1.724 h on the contact counts with its own radius
        Westergaard slab = new Westergaard(31e9, 0.2, 0.150, 3e7);
        double a = 1.73 * 0.150;
        double wide = 3 * 1.2 * 5000 / (2 * Math.PI * 0.150 * 0.150) * (Math.log(slab.radius() / a) + 0.6159);
        assertEquals(wide, slab.interior(5000, a).stress(), 1e-9 * wide);
    }
}
