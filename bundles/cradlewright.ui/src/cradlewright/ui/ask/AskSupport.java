package cradlewright.ui.ask;

import cradlewright.model.base.Named;
import cradlewright.model.fixture.Contact;
import cradlewright.model.vehicle.Mount;
import java.util.Optional;

/** What is there to know about this support? */
public final class AskSupport extends AskHandler {

    @Override
    void ask(AskView view, Optional<Object> selected) {
        view.askSupport(selected.filter(thing -> thing instanceof Mount || thing instanceof Contact).map(Named.class::cast)
                .map(Named::getName).orElse(""));
    }
}
