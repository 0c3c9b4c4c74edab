package cradlewright.analysis.checks.gear;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.SupportShop;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class RatingAndTagCheckTest {

    private static Verdict ask(Check check, GearFacts gear) {
        return new SupportShop(CarrierKind.FLOOR).has(gear).ask(check, new Subject(Scope.GEAR, gear.id(), Optional.empty(),
                gear.name())).get(0).verdict();
    }

    private static GearFacts.Stand stand(Optional<Value> rated, Optional<Boolean> perPair, Optional<String> tag) {
        return new GearFacts.Stand("S", "stand", new Examination(tag, Optional.empty(), Optional.empty()), rated, perPair,
                Optional.empty(), Optional.empty(),
                OptionalInt.empty());
    }

    private static final Optional<Value> PLATE = Optional.of(new Value(2000, 0, Source.PLATE));

    @Test
    void theRatingMustBeKnownAndNotGuessed() {
        assertEquals(Verdict.HOLDS, ask(new RatingCheck(), stand(PLATE, Optional.of(true), Optional.empty())));
        assertEquals(Verdict.CANT_SAY, ask(new RatingCheck(), stand(Optional.empty(), Optional.of(true), Optional.empty())));
        assertEquals(Verdict.CANT_SAY, ask(new RatingCheck(), stand(Optional.of(new Value(2000, 0, Source.GUESSED)),
                Optional.of(true), Optional.empty())));
        assertEquals(Verdict.CANT_SAY, ask(new RatingCheck(), stand(PLATE, Optional.empty(), Optional.empty())));
        assertEquals(Verdict.HOLDS, ask(new RatingCheck(), new GearFacts.Trestle("T", "trestle", SupportShop.examined(), PLATE)));
    }

    @Test
    void aNumberOnATag() {
        assertEquals(Verdict.HOLDS, ask(new TagCheck(), stand(PLATE, Optional.empty(), Optional.of("12"))));
        assertEquals(Verdict.TIGHT, ask(new TagCheck(), stand(PLATE, Optional.empty(), Optional.empty())));
        assertEquals(Verdict.TIGHT, ask(new TagCheck(), stand(PLATE, Optional.empty(), Optional.of(" "))));
    }

    @Test
    void nothingAboutGearThatIsNotThere() {
        assertEquals(List.of(), new SupportShop(CarrierKind.FLOOR).ask(new TagCheck(), new Subject(Scope.GEAR, "gone",
                Optional.empty(), "gone")));
        assertEquals(List.of(), new SupportShop(CarrierKind.FLOOR).ask(new RatingCheck(), new Subject(Scope.GEAR, "gone",
                Optional.empty(), "gone")));
    }
}
