package cradlewright.analysis.importer;

import static cradlewright.analysis.importer.Identity.id;
import static cradlewright.analysis.importer.Identity.name;

import cradlewright.analysis.facts.JointFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.model.fixture.BoltedJoint;
import cradlewright.model.fixture.HoleKind;
import cradlewright.model.fixture.Joint;
import cradlewright.model.fixture.Weld;
import cradlewright.model.fixture.WeldedJoint;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Reads the joints of a dolly. */
final class JointImporter {

    private JointImporter() {
    }

    static JointFacts joint(Joint joint) {
        if (joint instanceof BoltedJoint bolted) {
            return bolted(bolted);
        }
        if (joint instanceof WeldedJoint welded) {
            return welded(welded);
        }
        throw new IllegalArgumentException("no record for a joint of the class " + joint.eClass().getName());
    }

    private static JointFacts bolted(BoltedJoint joint) {
        return new JointFacts.Bolted(id(joint), name(joint), Identity.reference(joint.getBolt()), Values.count(joint.getRows()),
                Values.count(joint.getColumns()), Values.si(joint.getPitch()), Values.si(joint.getGauge()),
                Values.si(joint.getE1()), Values.si(joint.getE2()), Values.si(joint.getPlateThickness()),
                Identity.reference(joint.getPlateSteel()), holes(joint.getHoles()));
    }

    /** Returns the shape of the holes; normal round ones when nobody said. */
    private static JointFacts.Holes holes(HoleKind kind) {
        if (kind == null) {
            return JointFacts.Holes.NORMAL;
        }
        return switch (kind) {
            case NORMAL -> JointFacts.Holes.NORMAL;
            case OVERSIZE -> JointFacts.Holes.OVERSIZE;
            case SLOT -> JointFacts.Holes.SLOT;
        };
    }

    private static JointFacts welded(WeldedJoint joint) {
        List<Weld> welds = joint.getWelds();
        return new JointFacts.Welded(id(joint), name(joint), Values.si(joint.getThroat()), shortest(welds), closest(welds),
                welds.size(), Identity.reference(joint.getSteel()));
    }

    private static Optional<Value> shortest(List<Weld> welds) {
        return sorted(welds, weld -> Values.si(weld.getLength())).stream().findFirst();
    }

    private static Optional<Value> closest(List<Weld> welds) {
        List<Value> offsets = sorted(welds, weld -> Values.si(weld.getOffset()));
        return IntStream.range(1, offsets.size()).mapToObj(i -> between(offsets.get(i - 1), offsets.get(i)))
                .min(Comparator.comparingDouble(Value::si));
    }

    private static Value between(Value a, Value b) {
        return new Value(b.si() - a.si(), Math.hypot(a.u(), b.u()), Values.common(a, b));
    }

    /** Returns one value of every run from the least up, or none of them when one is missing. */
    private static List<Value> sorted(List<Weld> welds, Function<Weld, Optional<Value>> value) {
        List<Value> known = welds.stream().map(value).flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(Value::si)).toList();
        return known.size() == welds.size() ? known : List.of();
    }
}
