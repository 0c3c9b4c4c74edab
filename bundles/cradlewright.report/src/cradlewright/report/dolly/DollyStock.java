package cradlewright.report.dolly;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.StockFacts;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the parts of a dolly are of. */
public final class DollyStock {

    private DollyStock() {
    }

    /** Returns the ids of castor types, sections and pads that a dolly has. */
    public static Stream<String> ids(DollyFacts dolly) {
        return Stream.of(dolly.castors().stream().map(CastorFacts::typeId), dolly.members().stream().map(MemberFacts::sectionId),
                dolly.fixtures().stream().map(FixtureFacts::padId)).flatMap(ids -> ids).flatMap(Optional::stream);
    }

    /** Reads what is kept in stock under some ids. */
    public static Map<String, StockFacts> read(Stream<String> ids, Reader reader) {
        Map<String, StockFacts> stock = new HashMap<>();
        ids.distinct().forEach(id -> reader.read(new FactKey<>(StockFacts.class, id)).ifPresent(fact -> stock.put(id, fact)));
        return stock;
    }
}
