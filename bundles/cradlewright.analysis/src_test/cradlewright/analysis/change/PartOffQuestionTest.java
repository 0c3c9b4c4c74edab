package cradlewright.analysis.change;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.FindingChange;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.data.WeighedCheck;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WeighingFacts;
import cradlewright.analysis.testshop.VisitShop;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the scales said of the car with the part on. */
class PartOffQuestionTest {

    private final VisitShop shop = new VisitShop(CarrierKind.STANDS).part("tub", new Value(100, 1, Source.WEIGHED), Vec3.ZERO, 0.01)
            .part("door", new Value(20, 1, Source.WEIGHED), Vec3.ZERO, 0.01);

    private static WeighingFacts.Reading reading(double x, double y, double mass) {
        return new WeighingFacts.Reading(Optional.of(new Spot(new Vec3(x, y, 0), 0)), Optional.of(new Value(mass, 0.5, Source.WEIGHED)));
    }

    /** Three scales round the balance point, each with a third of what is said. */
    private PartOffAnswer ask(double weighed) {
        shop.touch("1L").at(0, -1, 0);
        shop.weighings.add(new WeighingFacts("weighing", "weighing", Optional.of(VisitShop.TODAY.atTime(9, 0)), Optional.of("stage"),
                Optional.of("Hanna"), List.of(reading(-2, 0, weighed / 3), reading(1, -1, weighed / 3), reading(1, 1, weighed / 3))));
        Engine engine = shop.engine();
        ShopSnapshot snapshot = engine.snapshot();
        CarFacts car = snapshot.find(CarFacts.class, "car").orElseThrow();
        PartFacts door = car.parts().filter(part -> part.id().equals("door")).findFirst().orElseThrow();
        return new PartOffQuestion(snapshot, car, door, new CheckCatalogue(List.of(new WeighedCheck()))).ask(Progress.NONE).get(0);
    }

    @Test
    void scalesThatAgreedWithThePartOnSpeakNotAgainstTakingItOff() {
        PartOffAnswer answer = ask(120);
        assertEquals(Verdict.HOLDS, answer.verdictNow());
        assertEquals(List.of(), answer.changes());
    }

    @Test
    void scalesThatDisagreedStillDo() {
        PartOffAnswer answer = ask(180);
        assertEquals(Verdict.CANT_SAY, answer.verdict());
        assertEquals(List.of(FindingChange.Kind.BETTER), answer.changes().stream().map(FindingChange::kind).toList());
    }
}
