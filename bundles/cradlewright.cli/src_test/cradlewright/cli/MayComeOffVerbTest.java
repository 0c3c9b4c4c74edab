package cradlewright.cli;

import static cradlewright.cli.CommandLineTest.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb may-come-off on a shell on four stands at x 0 and 2 m; expected balance points by moments about x = 0. */
class MayComeOffVerbTest {

    @TempDir
    Path folder;

    private SmallShop shop() {
        return new SmallShop(folder);
    }

    private static Run ask(Path shop, String part, Object... more) {
        Object[] all = new Object[more.length + 5];
        all[0] = "may-come-off";
        all[1] = shop;
        all[2] = part;
        all[3] = "--day";
        all[4] = SmallShop.DAY;
        System.arraycopy(more, 0, all, 5, more.length);
        return Run.of(all);
    }

    @Test
    void yesWhenItHoldsWithAndWithout() throws Exception {
        Path shop = shop().part("bare shell", "300 kg u 0 weighed", 1, 0).part("left door", "20 kg u 0 weighed", 0.68, -0.64).write();
        Run run = ask(shop, "door");
        assertEquals(0, run.code(), run.out());
        assertTrue(run.flat().contains("on 2026-03-31? YES. It holds"), run.out());
        assertTrue(run.flat().contains("mass now 320 kg, give or take 0.0 kg mass then 300 kg"), run.out());
        // Before: x = (300*1 + 20*0.68)/320 = 0.98 m, y = -20*0.64/320 = -0.04 m; after: 1 m and 0.
        assertTrue(run.flat().contains("balance right by 40.0 mm, back by 20.0 mm worse nothing"), run.out());
        assertTrue(run.out().contains("Cautions"), run.out());
        assertEquals(List.of(), run.untidy());
    }

    @Test
    void notYetWhenItWouldGoOver() throws Exception {
        // With the engine: (100*2.6 + 200*0.2)/300 = 1 m, midway; without: 2.6 m, behind the rear stands at 2 m.
        Path shop = shop().part("bare shell", "100 kg u 0 weighed", 2.6, 0).part("engine", "200 kg u 0 weighed", 0.2, 0).write();
        Run run = ask(shop, "engine");
        assertEquals(1, run.code(), run.out());
        assertTrue(run.flat().contains("NOT YET. With the part off something does not hold"), run.out());
        assertTrue(run.flat().contains("now HOLDS part off STOP"), run.out());
        assertTrue(run.flat().contains("balance back by 1600.0 mm"), run.out());
        assertTrue(run.flat().contains("worse HOLDS, then STOP."), run.out());
        assertTrue(run.out().contains("[support.rank]"), run.out());
        assertTrue(run.flat().contains("there is no answer: "), run.out());
        assertEquals(List.of(), run.untidy());
    }

    @Test
    void notYetWhenItStopsAlreadyThoughItWouldHoldAfter() throws Exception {
        // 320 kg in the middle: 80 kg a stand, asked 120 kg of a plate of 118 kg; without the 40 kg: 70 kg, asked 105 kg.
        Path shop = shop().part("bare shell", "280 kg u 0 weighed", 1, 0).part("engine", "40 kg u 0 weighed", 1, 0)
                .stands("118 kg plate").write();
        Run run = ask(shop, "engine");
        assertEquals(1, run.code(), run.out());
        assertTrue(run.flat().contains("NOT YET. With the part off nothing would stop, but it comes off the car as it stands"), run.out());
        assertTrue(run.flat().contains("only now STOP. Stand 1"), run.out());
    }

    @Test
    void alreadyTightGetsTighter() throws Exception {
        // Loads by moments: the part at x = 0 off shifts the balance point back; a rear stand then carries 284*1.1/2/2 = 78.1 kg.
        Path shop = shop().part("bare shell", "284 kg u 0 weighed", 1.1, 0).part("ballast", "10 kg u 0 weighed", -0.4, 0)
                .stands("124 kg plate").write();
        Run run = ask(shop, "ballast");
        assertEquals(0, run.code(), run.out());
        assertTrue(run.flat().contains("YES, but it is tight"), run.out());
        // Before, a rear stand: (284*1.1 - 10*0.4)/4 = 77.1 kg, asked 115.65 of 124 kg (93 %); after: asked 117.15 kg (94 %).
        assertTrue(run.flat().contains("worse TIGHT as before, with more asked. Stand 3"), run.out());
        assertTrue(run.flat().contains("now asked 116 kg, can give 124 kg (93 %)"), run.out());
        assertTrue(run.flat().contains("part off asked 117 kg, can give 124 kg (94 %)"), run.out());
    }

    @Test
    void whatWasTightAndStaysSoIsToldToo() throws Exception {
        // 300 kg in the middle: 75 kg a stand, asked 112.5 of 124 kg (91 %); the clip of 1 g changes nothing that people notice.
        Path shop = shop().part("bare shell", "300 kg u 0 weighed", 1, 0).part("clip", "0.001 kg u 0 weighed", 1, 0).stands("124 kg plate")
                .write();
        Run run = ask(shop, "clip");
        assertEquals(0, run.code(), run.out());
        assertTrue(run.flat().contains("worse nothing as before TIGHT. Stand 1"), run.out());
    }

    @Test
    void cantSayWithoutMassesVisitsOrCarriedPieces() throws Exception {
        Path shop = shop().part("bare shell", "300 kg u 0 weighed", 1, 0).part("bench", "", 1, 0)
                .part("left door", "20 kg weighed", 1, -0.6).write();
        Run run = ask(shop, "left door");
        assertEquals(2, run.code(), run.out());
        assertTrue(run.flat().contains("CAN'T SAY. Something is not known"), run.out());
        assertTrue(run.flat().contains("without bench: mass"), run.out());
        shop().part("left door", "20 kg weighed", 1, -0.6).dates("from=\"2026-06-01\"").write();
        run = ask(shop, "left door");
        assertEquals(2, run.code(), run.out());
        assertTrue(run.flat().contains("missing where Red coupe stands on this day: "
                + "its visits cover from 2026-06-01 on (on stands); ask for one of these days"), run.out());
        shop().part("left door", "20 kg weighed", 1, -0.6).carriesNothing().write();
        run = ask(shop, "left door");
        assertEquals(2, run.code(), run.out());
        assertTrue(run.flat().contains("missing left door is on nothing that stands there on this day: on stands. If it is on"), run.out());
    }

    @Test
    void partsAreFoundByIdNameOrPieceOfAName() throws Exception {
        Path shop = shop().part("bare shell", "300 kg u 0 weighed", 1, 0).part("door", "20 kg weighed", 1, 0)
                .part("left door", "20 kg weighed", 1, 0).part("left wing", "8 kg weighed", 1, 0).partOff("bonnet").write();
        assertTrue(ask(shop, "door").out().startsWith("May door come off Red coupe"));
        assertTrue(ask(shop, "WING", "--car", "red").out().startsWith("May left wing come off"));
        assertTrue(ask(shop, SmallShop.id("left wing"), "--car", "car0000000001").out().startsWith("May left wing come off"));
        assertRefused(ask(shop, "left"), "several parts fit left", "left door", SmallShop.id("left wing"), "give the id");
        assertRefused(ask(shop, "piano"), "no part is called piano");
        assertRefused(ask(shop, "door", "--car", "green"), "no car is called green", "Red coupe");
        assertRefused(ask(shop, "bonnet"), "already off");
    }

    @Test
    void theReaderChoosesUnits() throws Exception {
        Path shop = shop().part("bare shell", "300 kg u 0 weighed", 1, 0).part("left door", "20 kg u 0 weighed", 0.68, -0.64).write();
        Run run = ask(shop, "left door", "--units", "inch");
        // 320 kg / 0.45359237 kg = 705.5 lb; 40 mm / 25.4 mm = 1.575 in.
        assertTrue(run.flat().contains("mass now 705 lb"), run.out());
        assertTrue(run.flat().contains("right by 1.575 in"), run.out());
        assertFalse(run.out().contains(" kg"), run.out());
        assertRefused(ask(shop, "left door", "--units", "stone"), "stone");
    }
}
