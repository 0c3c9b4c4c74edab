package cradlewright.ui.ask;

import cradlewright.model.vehicle.Part;
import java.util.Optional;

/** May this part come off now? */
public final class AskPartOff extends AskHandler {

    @Override
    void ask(AskView view, Optional<Object> selected) {
        view.askPart(id(selected, Part.class));
    }
}
