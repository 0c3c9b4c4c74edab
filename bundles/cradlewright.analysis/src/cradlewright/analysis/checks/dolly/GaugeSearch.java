package cradlewright.analysis.checks.dolly;

import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Trial;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.dolly.SectionKey;
import cradlewright.analysis.dolly.SectionShape;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.quantity.Source;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Looks for thicker gauges of the same shape under which a member is judged better, its forces as they are, to be tried on the dolly. */
final class GaugeSearch {

    /** Two measures of a section that differ less than this are equal, m. */
    private static final double SAME = 1e-6;
    /** Gauges that are tried. */
    private static final int TRIED = 3;
    private static final String GROUP = "gauge";
    private static final Map<Double, String> THICKER = thicker();

    private final Reader reader;
    private final DollyFacts dolly;
    private final LoadedMember member;

    GaugeSearch(Reader reader, DollyFacts dolly, LoadedMember member) {
        this.reader = reader;
        this.dolly = dolly;
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
     * Returns thicker ones of the same shape for all members of this section, thinnest first: those in stock, or where none of them is
     * thick enough, how much thicker the sheet would have to be.
     *
     * @param judge the check's own verdict on a section, nothing when the question does not arise for it
     * @param now the verdict on the present section
     */
    List<Remedy> thicker(Function<SectionShape, Optional<Verdict>> judge, Verdict now) {
        Optional<StockFacts.Section> section = member.facts().sectionId().flatMap(this::section);
        return section.map(s -> fromStock(s, judge, now)).filter(list -> !list.isEmpty())
                .or(() -> section.map(s -> rolled(s, judge, now))).orElse(List.of());
    }

    private List<Remedy> fromStock(StockFacts.Section section, Function<SectionShape, Optional<Verdict>> judge, Verdict now) {
        return reader.read(new IdsKey<>(StockFacts.Section.class)).stream().flatMap(id -> section(id).stream())
                .filter(other -> sameButThicker(section, other) && better(other, judge, now))
                .sorted(Comparator.comparingDouble(other -> thickness(other).orElseThrow().si())).limit(TRIED)
                .map(other -> Remedy.trial("Make all members of " + section.name() + " of " + other.name()
                        + " from stock: the same shape, thicker.", GROUP, Trial.records(Change.of(with(section, other))))).toList();
    }

    private List<Remedy> rolled(StockFacts.Section section, Function<SectionShape, Optional<Verdict>> judge, Verdict now) {
        return THICKER.entrySet().stream().filter(entry -> better(scaled(section, section.id(), entry.getKey()), judge, now)).limit(TRIED)
                .map(entry -> rolled(section, entry.getKey(), entry.getValue())).toList();
    }

    private Remedy rolled(StockFacts.Section section, double factor, String words) {
        StockFacts.Section other = scaled(section, section.id() + " " + words, factor);
        return Remedy.trial("Make all members of " + section.name() + " of the same shape, " + words + "; there is none in stock.", GROUP,
                Trial.records(Change.of(other, with(section, other))));
    }

    /** The dolly with every member of one section made of another: they are cut from one sheet. */
    private DollyFacts with(StockFacts.Section section, StockFacts.Section other) {
        return dolly.withMembers(dolly.members().stream()
                .map(m -> m.sectionId().filter(section.id()::equals).isPresent() ? m.withSection(other.id()) : m).toList());
    }

    private boolean better(StockFacts.Section section, Function<SectionShape, Optional<Verdict>> judge, Verdict now) {
        try {
            return new SectionKey(section.id()).compute(new OneSection(section)).flatMap(judge).filter(after -> after.compareTo(now) < 0)
                    .isPresent();
        } catch (IllegalArgumentException | IllegalStateException e) {
            // The rules do not cover the thicker one either: it is no remedy.
            return false;
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
        return factor > 1 && sameMeasures(measures(scaled(section, section.id(), factor)), measures(other)) && sameShape(section, other);
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

    private static StockFacts.Section scaled(StockFacts.Section section, String id, double factor) {
        if (section instanceof StockFacts.Folded s) {
            return new StockFacts.Folded(id, s.name(), s.shape(), s.height(), s.width(), s.lip(), times(s.thickness(), factor),
                    times(s.insideRadius(), factor), s.points());
        }
        if (section instanceof StockFacts.Hollow s) {
            return new StockFacts.Hollow(id, s.name(), s.height(), s.width(), times(s.thickness(), factor));
        }
        if (section instanceof StockFacts.Tube s) {
            return new StockFacts.Tube(id, s.name(), s.diameter(), times(s.thickness(), factor));
        }
        if (section instanceof StockFacts.Flat s) {
            return new StockFacts.Flat(id, s.name(), s.height(), times(s.width(), factor));
        }
        if (section instanceof StockFacts.Tee s) {
            return new StockFacts.Tee(id, s.name(), s.flangeWidth(), times(s.flangeThickness(), factor), s.webHeight(),
                    times(s.webThickness(), factor));
        }
        return section;
    }

    private static Optional<Value> times(Optional<Value> value, double factor) {
        return value.map(v -> new Value(v.si() * factor, v.u() * factor, Source.DERIVED));
    }
}
