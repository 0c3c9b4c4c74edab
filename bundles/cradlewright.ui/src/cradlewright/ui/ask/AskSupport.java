package cradlewright.ui.ask;

import cradlewright.model.base.Named;
import cradlewright.model.fixture.Contact;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Mount;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What is there to know about this support? */
public final class AskSupport extends AskHandler {

    @Override
    void ask(AskView view, Optional<Object> selected) {
        view.askSupport(selected.filter(thing -> thing instanceof Mount || thing instanceof Contact).map(Named.class::cast)
                .map(AskSupport::words).orElse(""));
    }

    private static String words(Named support) {
        return EcoreUtil.getRootContainer(support) instanceof Car car ? support.getName() + ' ' + car.getName() : support.getName();
    }
}
