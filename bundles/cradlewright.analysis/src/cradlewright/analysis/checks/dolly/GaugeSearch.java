package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.dolly.SectionKey;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.quantity.Source;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Looks for a thicker gauge of the same shape under which a member is judged better; forces and own weight stay as they are. */
final class GaugeSearch {

    /** Two measures of a section that differ less than this are equal, m. */
    private static final double SAME = 1e-6;
    private static final Map<Double, String> THICKER = thicker();

    private final Reader reader;
    private final LoadedMember member;

    GaugeSearch(Reader reader, LoadedMember member) {
        this.reader = reader;
        this.member = member;
    }

    private static Map<Double, String> thicker() {
        Map<Double, String> words = new LinkedHashMap<>();
        words.put(1.25, "a quarter thicker");
        words.put(1.5, "one and a half times as thick");
        words.put(2.0, "twice as thick");
        words.put(3.0, "three times as thick");
        return words;
    }

    /**
     * Returns the thinnest one in stock that improves the verdict, else how much thicker the sheet would have to be.
     *
     * @param judge the check's own verdict on a section, nothing when the question does not arise for it
     * @param now the verdict on the present section
     */
    Remedy thicker(Function<SectionShape, Optional<Verdict>> judge, Verdict now) {
        Optional<StockFacts.Section> section = member.facts().sectionId().flatMap(this::section);
        return section.flatMap(s -> fromStock(s, judge, now).or(() -> rolled(s, judge, now)))
                .orElseGet(() -> Remedy.advice("Take a stronger shape for " + member.facts().name()
                        + ", or put a support nearer to a castor."));
    }

    private Optional<Remedy> fromStock(StockFacts.Section section, Function<SectionShape, Optional<Verdict>> judge, Verdict now) {
        Stream<StockFacts.Section> thickerOnes = reader.read(new IdsKey<>(StockFacts.Section.class)).stream()
                .flatMap(id -> section(id).stream())
                .filter(other -> sameButThicker(section, other))
                        .sorted(Comparator.comparingDouble(other -> thickness(other).orElseThrow().si()));
        return thickerOnes.flatMap(other -> better(other, judge, now)
                .map(after -> Remedy.proven("Take " + other.name() + " from stock for it: the same shape, thicker.", after)).stream())
                        .findFirst();
    }

    private Optional<Remedy> rolled(StockFacts.Section section, Function<SectionShape, Optional<Verdict>> judge, Verdict now) {
        return THICKER.entrySet().stream().flatMap(entry -> better(scaled(section, entry.getKey()), judge, now)
                .map(after -> Remedy.proven("Make it of the same shape, " + entry.getValue() + ".", after)).stream()).findFirst();
    }

    private Optional<Verdict> better(StockFacts.Section section, Function<SectionShape, Optional<Verdict>> judge, Verdict now) {
        try {
            return new SectionKey(section.id()).compute(new OneSection(section)).flatMap(judge).filter(after -> after.compareTo(now) < 0);
        } catch (IllegalArgumentException | IllegalStateException e) {
            // The rules do not cover the thicker one either: it is no remedy.
            return Optional.empty();
        }
    }

    private Optional<StockFacts.Section> section(String id) {
        return reader.read(new FactKey<>(StockFacts.Section.class, id));
    }

    /** Gives one section and nothing else. */
    private record OneSection(StockFacts.Section section) implements Reader {

        @Override
        @SuppressWarnings("unchecked") // the key of a section is the only one that is asked for
        public <T> T read(Key<T> key) {
            return (T) Optional.of(section);
        }
    }

    private static boolean sameButThicker(StockFacts.Section section, StockFacts.Section other) {
        if (section.getClass() != other.getClass() || thickness(section).isEmpty() || thickness(other).isEmpty()) {
            return false;
        }
        double factor = thickness(other).get().si() / thickness(section).get().si();
        return factor > 1 && sameMeasures(measures(scaled(section, factor)), measures(other)) && sameShape(section, other);
    }

    private static boolean sameShape(StockFacts.Section section, StockFacts.Section other) {
        return !(section instanceof StockFacts.Folded folded) || other instanceof StockFacts.Folded folds && folded.shape() == folds.shape()
                && folded.points().equals(folds.points());
    }

    private static boolean sameMeasures(List<Optional<Value>> one, List<Optional<Value>> other) {
        for (int i = 0; i < one.size(); i++) {
            double a = one.get(i).map(Value::si).orElse(0.0);
            double b = other.get(i).map(Value::si).orElse(0.0);
            if (Math.abs(a - b) > SAME) {
                return false;
            }
        }
        return true;
    }

    private static Optional<Value> thickness(StockFacts.Section section) {
        if (section instanceof StockFacts.Folded s) {
            return s.thickness();
        }
        if (section instanceof StockFacts.Hollow s) {
            return s.thickness();
        }
        if (section instanceof StockFacts.Tube s) {
            return s.thickness();
        }
        if (section instanceof StockFacts.Flat s) {
            return s.width();
        }
        return section instanceof StockFacts.Tee s ? s.webThickness() : Optional.empty();
    }

    /** Returns the measures but for the inside radius, which grows with the sheet. */
    private static List<Optional<Value>> measures(StockFacts.Section section) {
        if (section instanceof StockFacts.Folded s) {
            return List.of(s.height(), s.width(), s.lip(), s.thickness());
        }
        if (section instanceof StockFacts.Hollow s) {
            return List.of(s.height(), s.width(), s.thickness());
        }
        if (section instanceof StockFacts.Tube s) {
            return List.of(s.diameter(), s.thickness());
        }
        if (section instanceof StockFacts.Flat s) {
            return List.of(s.height(), s.width());
        }
        return section instanceof StockFacts.Tee s ? List.of(s.flangeWidth(), s.flangeThickness(), s.webHeight(), s.webThickness())
                : List.of();
    }

    private static StockFacts.Section scaled(StockFacts.Section section, double factor) {
        if (section instanceof StockFacts.Folded s) {
            return new StockFacts.Folded(s.id(), s.name(), s.shape(), s.height(), s.width(), s.lip(), times(s.thickness(), factor),
                    times(s.insideRadius(), factor), s.points());
        }
        if (section instanceof StockFacts.Hollow s) {
            return new StockFacts.Hollow(s.id(), s.name(), s.height(), s.width(), times(s.thickness(), factor));
        }
        if (section instanceof StockFacts.Tube s) {
            return new StockFacts.Tube(s.id(), s.name(), s.diameter(), times(s.thickness(), factor));
        }
        if (section instanceof StockFacts.Flat s) {
            return new StockFacts.Flat(s.id(), s.name(), s.height(), times(s.width(), factor));
        }
        if (section instanceof StockFacts.Tee s) {
            return new StockFacts.Tee(s.id(), s.name(), s.flangeWidth(), times(s.flangeThickness(), factor), s.webHeight(),
                    times(s.webThickness(), factor));
        }
        return section;
    }

    private static Optional<Value> times(Optional<Value> value, double factor) {
        return value.map(v -> new Value(v.si() * factor, v.u() * factor, Source.DERIVED));
    }
}
