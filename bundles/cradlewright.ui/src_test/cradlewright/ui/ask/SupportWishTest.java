package cradlewright.ui.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Names may have blanks in them and begin like one another. */
class SupportWishTest {

    private static final List<String> NAMES = List.of("4L", "4", "front left", "front");

    private static SupportWish of(String text) {
        return SupportWish.of(text, NAMES);
    }

    @Test
    void aNameAloneIsForAllCars() {
        assertEquals(new SupportWish("4L", ""), of(" 4l "));
        assertEquals(new SupportWish("front left", ""), of("Front Left"));
    }

    @Test
    void whatFollowsNamesTheCar() {
        assertEquals(new SupportWish("4L", "red coupe"), of("4L red coupe"));
        assertEquals(new SupportWish("front left", "van"), of("front left van"));
        assertEquals(new SupportWish("front", "right"), of("front right"));
    }

    @Test
    void anUnknownNameStaysAsItWasTyped() {
        assertEquals(new SupportWish("4Lx red", ""), of("4Lx red"));
        assertEquals(new SupportWish("9", ""), of("9"));
    }
}
