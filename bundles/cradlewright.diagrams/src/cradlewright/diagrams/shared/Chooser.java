package cradlewright.diagrams.shared;

import java.util.List;
import java.util.function.IntConsumer;

/**
 * One choice in the bar over a diagram.
 *
 * @param label what is chosen
 * @param names what there is to choose from
 * @param chosen which of them is shown; below zero for none
 * @param choose chooses another one
 */
public record Chooser(String label, List<String> names, int chosen, IntConsumer choose) {

    /** Copies the list. */
    public Chooser {
        names = List.copyOf(names);
    }
}
