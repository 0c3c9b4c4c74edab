package cradlewright.analysis.checks;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WeighingFacts;
import cradlewright.analysis.standing.Standing;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Takes one part off before a car is lifted or set down: the lightest of the heavy ones that is enough. */
public final class PartsOff {

    /** Parts that are tried, the heaviest ones. */
    private static final int TRIED = 3;
    /** Share of what is carried from which a part is the piece itself and does not come off: common practice, no source. */
    private static final double PIECE_ITSELF = 0.4;

    private PartsOff() {
    }

    /** Returns the parts to try, lightest first. */
    public static List<Remedy> remedies(Standing standing) {
        List<PartFacts> on = on(standing);
        double all = on.stream().mapToDouble(PartsOff::mass).sum();
        return on.stream().filter(part -> mass(part) > 0 && mass(part) < PIECE_ITSELF * all)
                .sorted(Comparator.comparingDouble(PartsOff::mass).reversed()).limit(TRIED)
                        .sorted(Comparator.comparingDouble(PartsOff::mass))
                .map(part -> Remedy.trial("Take " + part.name() + " off first.", "part off", trial(part, standing))).toList();
    }

    private static Trial trial(PartFacts part, Standing standing) {
        CarFacts car = standing.car();
        // That scales with the part on agree with the list is no question any more, as is nothing about the part itself.
        String[] ends = Stream.concat(Stream.of(part.id()), car.weighings().stream().map(WeighingFacts::id)).toArray(String[]::new);
        return Trial.here(Change.of(car.partsOff(standing.visit(), standing.stage(), Set.of(part.id()))), ends);
    }

    private static List<PartFacts> on(Standing standing) {
        return standing.car().pieces().stream().filter(piece -> standing.setup().pieceIds().contains(piece.id()))
                .map(PieceFacts::parts).flatMap(List::stream).filter(part -> standing.stage().partIds().contains(part.id())).toList();
    }

    private static double mass(PartFacts part) {
        return part.mass().map(Value::si).orElse(0.0);
    }
}
