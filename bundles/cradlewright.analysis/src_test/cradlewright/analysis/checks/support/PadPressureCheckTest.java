package cradlewright.analysis.checks.support;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.testshop.SupportShop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Three stands of which C carries half. Cork E 17.0 MPa (Procedia Structural Integrity 12 (2018) 317-329, Table 1), limits 0.4 MPa and
 * 5 % (common practice): at 17 MPa the strain at 0.4 MPa is 2.4 %, so pressure governs.
 */
class PadPressureCheckTest {

    private static StockFacts.Pad pad(String id, StockFacts.Material material, double side, Optional<Value> stressLimit) {
        return new StockFacts.Pad(id, id, material, Optional.of(SupportShop.measured(side)),
                Optional.of(SupportShop.measured(side)),
                Optional.of(SupportShop.measured(0.006)),
                material == StockFacts.Material.CORK ? Optional.of(SupportShop.measured(17e6)) : Optional.empty(), Optional.empty(),
                stressLimit, Optional.empty(), Optional.empty());
    }

    private static SupportShop shop(double kilograms, StockFacts.Pad pad) {
        SupportShop shop = new SupportShop(CarrierKind.FLOOR).weighs(kilograms, 0).has(pad);
        shop.support("A", -1, -0.5, 0.5);
        shop.support("B", -1, 0.5, 0.5);
        shop.support("C", 1, 0, 0.5).pad(pad.id());
        return shop;
    }

    private static Finding only(SupportShop shop) {
        List<Finding> findings = shop.ask(new PadPressureCheck());
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }

    /** Mass of which half presses a pad of 60 mm by 60 mm with that stress. */
    private static double massFor(double stress) {
        return 2 * stress * 0.0036 / 9.80665;
    }

    @Test
    void holdsStandsTightAndStops() {
        StockFacts.Pad cork = pad("cork", StockFacts.Material.CORK, 0.06, Optional.empty());
        Finding holds = only(shop(massFor(0.35e6), cork));
        assertEquals(0.35e6, holds.demand().orElseThrow().si(), 1);
        assertEquals(Verdict.HOLDS, holds.verdict());
        // Strain 0.35 MPa/17.0 MPa.
        assertEquals(0.35 / 17.0, holds.inputs().get(2).amount().si(), 1e-6);
        assertEquals(Verdict.TIGHT, only(shop(massFor(0.37e6), cork)).verdict());
        assertEquals(Verdict.STOP, only(shop(massFor(0.41e6), cork)).verdict());
    }

    @Test
    void aLargerPadOfTheStockIsWorkedOut() {
        SupportShop shop = shop(massFor(0.41e6), pad("cork", StockFacts.Material.CORK, 0.06, Optional.empty()));
        shop.has(pad("larger cork", StockFacts.Material.CORK, 0.08, Optional.empty()));
        assertEquals(List.of(Remedy.mends("Use the pad larger cork from stock instead.", Verdict.HOLDS)), only(shop).remedies());
    }

    @Test
    void softCorkIsJudgedByItsStrain() {
        // Stiffness 1 MN/m and 6 mm: 5 % is 0.3 mm or 300 N; pressure is then only 0.083 MPa.
        StockFacts.Pad soft = new StockFacts.Pad("soft", "soft", StockFacts.Material.CORK,
                Optional.of(SupportShop.measured(0.06)),
                Optional.of(SupportShop.measured(0.06)), Optional.of(SupportShop.measured(0.006)), Optional.empty(),
                        Optional.of(SupportShop.measured(1e6)),
                Optional.empty(), Optional.empty(), Optional.empty());
        assertEquals(Verdict.STOP, only(shop(2 * 303 / 9.80665, soft)).verdict());
        Finding finding = only(shop(2 * 240 / 9.80665, soft));
        assertEquals(0.04, finding.demand().orElseThrow().si(), 1e-6);
        assertEquals(Verdict.HOLDS, finding.verdict());
    }

    @Test
    void corkOfNoKnownKindMayBeLight() {
        // Cork board for building gives way from 0.25 MPa; dense agglomerate takes 0.4 MPa (common practice, no source).
        StockFacts.Pad known = pad("cork", StockFacts.Material.CORK, 0.06, Optional.empty());
        StockFacts.Pad unknown = new StockFacts.Pad("cork", "cork", StockFacts.Material.CORK, known.length(), known.width(),
                known.thickness(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        assertEquals(Verdict.HOLDS, only(shop(massFor(0.3e6), known)).verdict());
        assertEquals(List.of("stiffness of the pad cork: press it under a known weight"), only(shop(massFor(0.3e6), unknown)).missing());
        // 6 MPa: 5 % are 0.3 MPa.
        StockFacts.Pad light = new StockFacts.Pad("cork", "cork", StockFacts.Material.CORK, known.length(), known.width(),
                known.thickness(),
                Optional.of(SupportShop.measured(6e6)), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        assertEquals(Verdict.STOP, only(shop(massFor(0.31e6), light)).verdict());
    }

    @Test
    void rubberNeedsLimitsOfItsOwn() {
        assertEquals(Verdict.CANT_SAY, only(shop(100, pad("rubber", StockFacts.Material.RUBBER, 0.06, Optional.empty())))
                .verdict());
        assertEquals(Verdict.HOLDS, only(shop(100, pad("rubber", StockFacts.Material.RUBBER, 0.06,
                Optional.of(SupportShop.measured(1e6))))).verdict());
    }

    @Test
    void cantSayWithoutSize() {
        StockFacts.Pad bare = new StockFacts.Pad("bare", "bare", StockFacts.Material.CORK, Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.of(SupportShop.measured(17e6)),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        assertEquals(List.of("length, width and thickness of the pad bare: measure them"), only(shop(100, bare)).missing());
    }
}
