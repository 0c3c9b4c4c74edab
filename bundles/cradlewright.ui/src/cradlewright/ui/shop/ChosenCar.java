package cradlewright.ui.shop;

import java.util.Optional;

/** Implemented by editors that show several cars, of which somebody may choose one. */
@FunctionalInterface
public interface ChosenCar {

    /** Returns the id of the car that is chosen. */
    Optional<String> chosenCar();
}
