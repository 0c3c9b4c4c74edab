package cradlewright.ui.ask;

import cradlewright.model.vehicle.Car;
import java.util.Optional;

/** Will the gear take this car as it is now? */
public final class AskLift extends AskHandler {

    @Override
    void ask(AskView view, Optional<Object> selected) {
        view.askLift(id(selected, Car.class));
    }
}
