package cradlewright.report.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import cradlewright.analysis.facts.CarrierKind;
import org.junit.jupiter.api.Test;

/** What gives under the car is named by what carries it: nobody on a lift is told about the floor. */
class LoadTableTest {

    @Test
    void theWordsFollowTheCarrier() {
        assertEquals("however the arms give", LoadTable.anyway(CarrierKind.LIFT));
        assertEquals("however the straps stretch", LoadTable.anyway(CarrierKind.STRAPS));
        assertEquals("however floor and dolly give", LoadTable.anyway(CarrierKind.DOLLY));
        assertEquals("however the floor gives", LoadTable.anyway(CarrierKind.STANDS));
        assertFalse(LoadTable.anyway(CarrierKind.CHASSIS).contains("floor"));
    }
}
