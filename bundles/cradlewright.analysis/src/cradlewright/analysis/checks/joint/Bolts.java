package cradlewright.analysis.checks.joint;

import cradlewright.analysis.dolly.SectionShape;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.joint.BoltGrade;
import cradlewright.mechanics.joint.BoltGroup;
import cradlewright.mechanics.joint.BoltResistance;
import cradlewright.mechanics.joint.BoltSize;
import cradlewright.mechanics.joint.HolePosition;
import cradlewright.mechanics.joint.PlanePoint;
import cradlewright.mechanics.joint.PlateOutline;
import cradlewright.mechanics.joint.Prying;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The bolts of a joint with what is known about them; every measure at its low end, in m.
 *
 * @param size thread size
 * @param grade strength class
 * @param plane where the shear plane cuts the bolts
 * @param rows number along the member
 * @param columns number across it
 * @param pitch from row to row
 * @param gauge from column to column
 * @param end from the last row to the end of the sheet
 * @param edge from the outer column to the edge of the sheet
 * @param plate thickness of the plate
 * @param holes shape of the holes
 */
record Bolts(BoltSize size, BoltGrade grade, BoltResistance.ShearPlane plane, int rows, int columns, double pitch, double gauge,
        Optional<Double> end, Optional<Double> edge, Optional<Double> plate, JointFacts.Holes holes) {

    /** Most bolts that are taken in one joint: beyond it the record is a mistake. */
    private static final int MOST = 400;

    /** Returns the bolts of a joint; nothing when {@link #missing} names something. */
    static Optional<Bolts> of(JointFacts.Bolted joint, Reader reader) {
        if (!missing(joint, reader).isEmpty()) {
            return Optional.empty();
        }
        StockFacts.Bolt bolt = bolt(joint, reader).orElseThrow();
        return Optional.of(new Bolts(size(bolt).orElseThrow(), grade(bolt).orElseThrow(),
                bolt.threadsInShear() ? BoltResistance.ShearPlane.THREADS : BoltResistance.ShearPlane.SHANK, joint.rows().getAsInt(),
                joint.columns().getAsInt(), positive(joint.pitch()).orElse(0.0), positive(joint.gauge()).orElse(0.0),
                        positive(joint.endDistance()),
                positive(joint.edgeDistance()), positive(joint.plate()), joint.holes()));
    }

    /** Returns what keeps the forces of the bolts from being worked out, each with how to mend it. */
    static List<String> missing(JointFacts.Bolted joint, Reader reader) {
        List<String> missing = new ArrayList<>();
        Optional<StockFacts.Bolt> bolt = bolt(joint, reader);
        String of = " of the bolts of " + joint.name();
        note(missing, bolt.flatMap(Bolts::size).isEmpty(), "size" + of + ", from M6 to M16");
        note(missing, bolt.flatMap(Bolts::grade).isEmpty(), "strength class" + of + ": 4.6, 5.6, 8.8 or 10.9, read off the head");
        int rows = joint.rows().orElse(0);
        int columns = joint.columns().orElse(0);
        note(missing, rows < 1 || columns < 1 || (long) rows * columns > MOST, "number of rows and columns" + of);
        note(missing, rows > 1 && positive(joint.pitch()).isEmpty(), "distance of the rows" + of);
        note(missing, columns > 1 && positive(joint.gauge()).isEmpty(), "distance of the columns" + of);
        return missing;
    }

    private static void note(List<String> missing, boolean lacks, String what) {
        if (lacks) {
            missing.add(what);
        }
    }

    /** Returns the bolt in stock that a joint names. */
    static Optional<StockFacts.Bolt> bolt(JointFacts.Bolted joint, Reader reader) {
        return joint.boltId().flatMap(id -> reader.read(new FactKey<>(StockFacts.Bolt.class, id)));
    }

    /** Returns the size of a bolt in stock, when the table has it. */
    static Optional<BoltSize> size(StockFacts.Bolt bolt) {
        return bolt.size().map(text -> text.strip().toUpperCase(Locale.ROOT)).flatMap(text -> Stream.of(BoltSize.values())
                .filter(size -> size.name().equals(text)).findFirst());
    }

    private static Optional<BoltGrade> grade(StockFacts.Bolt bolt) {
        return bolt.grade().map(String::strip).flatMap(text -> Stream.of(BoltGrade.values()).filter(grade -> grade.label().equals(text))
                .findFirst());
    }

    /** Returns the low end of a measure when it is above zero. */
    static Optional<Double> positive(Optional<Value> value) {
        return value.map(Value::low).filter(si -> si > 0);
    }

    /** Returns the walls that the bolts go through: the plate and the member. Nothing of the pair stands for what is not known. */
    static List<Sheet> sheets(JointFacts.Bolted joint, List<JointEnd> ends, Reader reader) {
        List<Sheet> sheets = new ArrayList<>();
        Optional<StockFacts.Steel> steel = joint.steelId().flatMap(id -> reader.read(new FactKey<>(StockFacts.Steel.class, id)));
        sheets.add(new Sheet("the plate of " + joint.name(), positive(joint.plate()), steel.flatMap(s -> positive(s.fu()))));
        for (JointEnd end : ends) {
            Optional<SectionShape> shape = end.member().shape().filter(s -> !s.timber());
            sheets.add(new Sheet(end.member().facts().name(), shape.map(SectionShape::thickness),
                    end.member().steel().flatMap(s -> positive(s.fu()))));
        }
        return sheets.stream().distinct().toList();
    }

    /**
     * A wall that bolts go through.
     *
     * @param name what people call it
     * @param thickness m
     * @param ultimate tensile strength, Pa
     */
    record Sheet(String name, Optional<Double> thickness, Optional<Double> ultimate) {

        /** Returns what is not known about it. */
        List<String> missing() {
            List<String> missing = new ArrayList<>();
            note(missing, thickness.isEmpty(), "thickness of the steel of " + name);
            note(missing, ultimate.isEmpty(), "tensile strength of the steel of " + name);
            return missing;
        }
    }

    /** Returns the same joint with bolts of another size. */
    Bolts withSize(BoltSize other) {
        return new Bolts(other, grade, plane, rows, columns, pitch, gauge, end, edge, plate, holes);
    }

    /** Returns the sizes above this one, the next one first. */
    List<BoltSize> larger() {
        return Stream.of(BoltSize.values()).filter(other -> other.compareTo(size) > 0).toList();
    }

    /** Returns the bolts as a group about the middle of the joint: u along the member, v across it. */
    BoltGroup group() {
        List<PlanePoint> points = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                points.add(new PlanePoint((row - (rows - 1) / 2.0) * pitch, (column - (columns - 1) / 2.0) * gauge));
            }
        }
        return new BoltGroup(points);
    }

    /** Returns the pressed face, when both distances to its edges are known. */
    Optional<PlateOutline> outline() {
        return end.flatMap(e1 -> edge.map(e2 -> {
            double u = (rows - 1) * pitch / 2 + e1;
            double v = (columns - 1) * gauge / 2 + e2;
            return new PlateOutline(-u, u, -v, v);
        }));
    }

    /** Returns the factor of prying; the largest stated one when nobody knows how thick the plate is. */
    double prying() {
        return plate.map(t -> Prying.stated(t, size.diameter())).orElse(Prying.LARGEST_STATED);
    }

    /** Returns the diameter of the holes, m. */
    double hole() {
        return holes == JointFacts.Holes.OVERSIZE ? size.widerHoleDiameter() : size.holeDiameter();
    }

    /** Returns where the holes lie, for a force along the member. */
    Optional<HolePosition> position() {
        double betweenRows = rows > 1 ? pitch : HolePosition.NONE;
        double betweenColumns = columns > 1 ? gauge : HolePosition.NONE;
        return end.flatMap(e1 -> edge.map(e2 -> new HolePosition(e1, betweenRows, e2, betweenColumns)));
    }
}
