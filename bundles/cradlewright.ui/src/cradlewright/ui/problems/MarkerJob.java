package cradlewright.ui.problems;

import cradlewright.ui.Messages;
import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;

/** Makes the markers of one type those that are wanted: what is there already stays, so that the view does not flicker. */
final class MarkerJob extends WorkspaceJob {

    private final String type;
    private final IResource top;
    private final Map<Wanted, IMarker> there = new HashMap<>();
    private volatile Set<Wanted> wanted = Set.of();
    private boolean swept;

    /**
     * @param type type of the markers
     * @param top everything that gets markers lies in here
     */
    MarkerJob(String type, IResource top) {
        super(Messages.Problem_job);
        this.type = type;
        this.top = top;
        setRule(top.getWorkspace().getRoot());
        setSystem(true);
    }

    /** Has the markers brought into line, soon. */
    void want(Set<Wanted> next) {
        wanted = Set.copyOf(next);
        schedule();
    }

    @Override
    public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
        Set<Wanted> now = wanted;
        if (!swept) {
            top.deleteMarkers(type, true, IResource.DEPTH_INFINITE);
            swept = true;
        }
        for (Iterator<Map.Entry<Wanted, IMarker>> known = there.entrySet().iterator(); known.hasNext();) {
            Map.Entry<Wanted, IMarker> entry = known.next();
            if (!now.contains(entry.getKey()) || !entry.getValue().exists()) {
                entry.getValue().delete();
                known.remove();
            }
        }
        for (Wanted each : now) {
            if (!there.containsKey(each)) {
                there.put(each, each.resource().createMarker(type, each.attributes()));
            }
        }
        return Status.OK_STATUS;
    }
}
