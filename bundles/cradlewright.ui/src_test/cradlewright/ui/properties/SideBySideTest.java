package cradlewright.ui.properties;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Sections flow down columns in their order. */
class SideBySideTest {

    @Test
    void columnsGetAboutAsLong() {
        assertEquals(List.of(2, 2), SideBySide.split(List.of(100, 100, 100, 100), 2));
        assertEquals(List.of(1, 3), SideBySide.split(List.of(300, 100, 100, 100), 2));
        assertEquals(List.of(3, 1), SideBySide.split(List.of(100, 100, 100, 300), 2));
        assertEquals(List.of(1, 1, 1), SideBySide.split(List.of(50, 50, 50), 3));
    }

    @Test
    void noColumnIsEmptyAndNoSectionLost() {
        assertEquals(List.of(1, 1), SideBySide.split(List.of(10, 900), 2));
        assertEquals(List.of(4), SideBySide.split(List.of(1, 2, 3, 4), 1));
        assertEquals(List.of(1, 1), SideBySide.split(List.of(900, 10), 2));
    }
}
