package cradlewright.analysis.checks.tip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.WorkPointFacts;
import cradlewright.analysis.load.TipAnswer;
import cradlewright.analysis.load.TipKey;
import cradlewright.analysis.testshop.RollingShop;
import cradlewright.mechanics.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * 900 kg on castors 0.4 m to either side, their lead 0.05 m taken off: a pull of 800 N sideways at the height H can be laid on
 * 900 x 9.80665 x 0.35/(800 H) times (statics). 1.5 times are asked for (common practice).
 */
class TipOnFloorCheckTest {

    private static final double MOMENT = 900 * 9.80665 * 0.35;

    private static RollingShop shop(double ratio) {
        return new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.8).work("roof", WorkPointFacts.Kind.BAR,
                new Vec3(0, 0, MOMENT / (800 * ratio)), new Vec3(0, 1, 0));
    }

    private static Finding only(RollingShop shop) {
        List<Finding> findings = shop.ask(new TipOnFloorCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    @Test
    void holdsStandsTightAndStops() {
        Finding holds = only(shop(1.7));
        assertEquals(1.7, holds.capacity().orElseThrow().si(), 1e-9);
        assertEquals(Verdict.HOLDS, holds.verdict());
        assertEquals(Verdict.TIGHT, only(shop(1.6)).verdict());
        Finding stop = only(shop(1.4));
        assertEquals(Verdict.STOP, stop.verdict());
        assertTrue(stop.words().startsWith("It is too close to falling over."), stop.words());
        assertTrue(only(shop(0.9)).words().startsWith("It falls over."));
    }

    @Test
    void theRigidAnswerIsThatOfTheCoupledBodies() {
        // With castors straight, that is without lead, both routes must agree, for an oblique push as well.
        RollingShop shop = new RollingShop().weighs(760, 0).commonBalance(0.1, -0.05, 0.8)
                .lead(Optional.of(RollingShop.measured(0)))
                .work("corner", WorkPointFacts.Kind.BAR, new Vec3(1.2, 0.6, 1.3), new Vec3(1, 2, -0.5).unit());
        TipAnswer answer = shop.read(new TipKey("car", "visit")).stream()
                .filter(a -> a.question() == TipAnswer.Question.ON_FLOOR).findFirst().orElseThrow();
        assertEquals(answer.ratio(), only(shop).capacity().orElseThrow().si(), 1e-6 * answer.ratio());
    }

    @Test
    void massAndBalancePointCountAtTheirUnfavourableEnds() {
        // A search: give or take 20 kg, and 0.04 x 760/900 m nearer to the edge; a lighter shell in the middle of the dolly moves nothing.
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3600; i++) {
            least = Math.min(least, (900 - 20 * Math.cos(Math.PI * i / 1800)) * 9.80665
                    * (0.35 - 0.04 * 760 / 900 * Math.sin(Math.PI * i / 1800)) / (MOMENT / 1.7));
        }
        assertEquals(least, only(shop(1.7).weighs(760, 10).balanceOff(0.02)).capacity().orElseThrow().si(), 1e-3 * least);
    }

    @Test
    void swivelsThatTurnInwardMoveTheEdgeAwayFromThePersonToo() {
        // 120 kg at 1.0 m to the side of castors at 0.4 m less 0.05 m: 900 x 0.35/(120 x 0.65).
        RollingShop shop = new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.8).work("step", WorkPointFacts.Kind.STAND_ON,
                new Vec3(0, 1, 0.5), new Vec3(0, 0, -1));
        assertEquals(900 * 0.35 / (120 * 0.65), only(shop).capacity().orElseThrow().si(), 1e-9);
    }

    @Test
    void feetAreProven() {
        // Feet at 0.6 m and no lead: 1.4 x 0.6/0.35 = 2.4.
        assertEquals(List.of(Remedy.mends("Nobody pulls on a bar while it stands like this.", Verdict.HOLDS),
                Remedy.mends("Put the feet down first.", Verdict.HOLDS)), only(shop(1.4).feet(0.6, false)).remedies().subList(0, 2));
        assertEquals(1.4 * 0.6 / 0.35, only(shop(1.4).feet(0.6, true)).capacity().orElseThrow().si(), 1e-9);
    }

    @Test
    void aPushThatUpsetsNothingHolds() {
        Finding finding = only(new RollingShop().weighs(760, 0).commonBalance(0, 0, 0.8).work("floor",
                WorkPointFacts.Kind.STAND_ON,
                new Vec3(0, 0, 0.5), new Vec3(0, 0, -1)));
        assertEquals(Verdict.HOLDS, finding.verdict());
        assertEquals(Optional.empty(), finding.capacity());
    }

    @Test
    void cantSayWithoutMassIsSaidOnceByTheOtherQuestion() {
        RollingShop shop = new RollingShop().work("roof", WorkPointFacts.Kind.BAR, new Vec3(0, 0, 1), new Vec3(0, 1, 0));
        assertEquals(List.of(), shop.ask(new TipOnFloorCheck()));
        List<Finding> findings = shop.ask(new TipOnDollyCheck());
        assertEquals(List.of(Verdict.CANT_SAY), findings.stream().map(Finding::verdict).toList());
        assertEquals(List.of("the mass of what is carried"), findings.get(0).missing());
    }
}
