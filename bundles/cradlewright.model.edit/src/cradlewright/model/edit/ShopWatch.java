package cradlewright.model.edit;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.Notifier;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.EContentAdapter;

/**
 * Sees every change of every object of a shop. Objects that were taken out stay under watch: the history may bring them back,
 * so nobody may change them meanwhile either.
 */
final class ShopWatch extends EContentAdapter {

    /** Who is told. */
    interface Report {

        /** An object, or the top of a file, was changed. */
        void changed(Notification told);

        /** A file came into the shop or left it. */
        void filesChanged();
    }

    private final Report report;

    ShopWatch(Report report) {
        this.report = report;
    }

    @Override
    public void notifyChanged(Notification told) {
        super.notifyChanged(told);
        if (told.isTouch()) {
            return;
        }
        Object notifier = told.getNotifier();
        if (notifier instanceof EObject
                || notifier instanceof Resource && told.getFeatureID(Resource.class) == Resource.RESOURCE__CONTENTS) {
            report.changed(told);
        } else if (notifier instanceof ResourceSet
                && told.getFeatureID(ResourceSet.class) == ResourceSet.RESOURCE_SET__RESOURCES) {
            report.filesChanged();
        }
    }

    @Override
    protected void removeAdapter(Notifier notifier) {
        // Stays on purpose; see above.
    }
}
