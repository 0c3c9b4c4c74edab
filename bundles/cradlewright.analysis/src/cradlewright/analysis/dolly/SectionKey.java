package cradlewright.analysis.dolly;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.section.FlatBar;
import cradlewright.mechanics.section.FoldedSection;
import cradlewright.mechanics.section.HollowSection;
import cradlewright.mechanics.section.SectionPoint;
import cradlewright.mechanics.section.SectionProperties;
import cradlewright.mechanics.section.TeeSection;
import java.util.Optional;

/**
 * The properties of a section in stock; nothing when it is not there, a measure is missing, or the measures make no section.
 *
 * @param sectionId the section
 */
public record SectionKey(String sectionId) implements Key<Optional<SectionShape>> {

    @Override
    public Optional<SectionShape> compute(Reader reader) {
        try {
            return reader.read(new FactKey<>(StockFacts.Section.class, sectionId)).flatMap(SectionKey::shape);
        } catch (IllegalArgumentException e) {
            // Measures that make no section, a wall thicker than the tube for one: the dolly then says which member lacks its section.
            return Optional.empty();
        }
    }

    private static Optional<SectionShape> shape(StockFacts.Section section) {
        if (section instanceof StockFacts.Folded folded) {
            return folded(folded);
        }
        if (section instanceof StockFacts.Hollow s && known(s.height(), s.width(), s.thickness())) {
            return steel(HollowSection.rectangular(si(s.height()), si(s.width()), si(s.thickness())), si(s.thickness()));
        }
        if (section instanceof StockFacts.Tube s && known(s.diameter(), s.thickness())) {
            return steel(HollowSection.circular(si(s.diameter()), si(s.thickness())), si(s.thickness()));
        }
        if (section instanceof StockFacts.Flat s && known(s.height(), s.width())) {
            return steel(FlatBar.of(si(s.height()), si(s.width())), Math.min(si(s.height()), si(s.width())));
        }
        if (section instanceof StockFacts.Tee s && known(s.flangeWidth(), s.flangeThickness(), s.webHeight(), s.webThickness())) {
            return steel(TeeSection.of(si(s.flangeWidth()), si(s.flangeThickness()), si(s.webHeight()), si(s.webThickness())),
                    Math.max(si(s.flangeThickness()), si(s.webThickness())));
        }
        if (section instanceof StockFacts.TimberRail s && known(s.height(), s.width())) {
            return Optional.of(new SectionShape(FlatBar.of(si(s.height()), si(s.width())), si(s.width()), true));
        }
        return Optional.empty();
    }

    private static Optional<SectionShape> folded(StockFacts.Folded s) {
        return sheet(s).flatMap(sheet -> steel(sheet.properties(), sheet.thickness()));
    }

    /**
     * Returns folded sheet as a section; nothing when a measure is missing.
     *
     * @throws IllegalArgumentException when its measures make no section
     */
    static Optional<FoldedSection> sheet(StockFacts.Folded s) {
        if (!known(s.thickness())) {
            return Optional.empty();
        }
        double t = si(s.thickness());
        double r = s.insideRadius().map(Value::si).orElse(t);
        if (s.shape() == StockFacts.Shape.POLYLINE) {
            return Optional.of(FoldedSection.of(s.name(), s.points().stream().map(p -> new SectionPoint(p.y(), p.z())).toList(), t, r));
        }
        if (!known(s.height(), s.width())) {
            return Optional.empty();
        }
        double h = si(s.height());
        double b = si(s.width());
        return switch (s.shape()) {
            case CHANNEL -> Optional.of(FoldedSection.channel(h, b, t, r));
            case LIPPED_CHANNEL -> s.lip().map(lip -> FoldedSection.lippedChannel(h, b, lip.si(), t, r));
            case ANGLE -> Optional.of(FoldedSection.angle(h, b, t, r));
            case ZED -> Optional.of(FoldedSection.zed(h, b, t, r));
            case HAT -> s.lip().map(brim -> FoldedSection.hat(h, b, b + 2 * brim.si(), t, r));
            case POLYLINE -> Optional.empty();
        };
    }

    private static Optional<SectionShape> steel(SectionProperties properties, double thickness) {
        return Optional.of(new SectionShape(properties, thickness, false));
    }

    @SafeVarargs
    private static boolean known(Optional<Value>... values) {
        for (Optional<Value> value : values) {
            if (value.isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private static double si(Optional<Value> value) {
        return value.orElseThrow().si();
    }
}
