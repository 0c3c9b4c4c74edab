package cradlewright.ui.shop;

import cradlewright.model.io.ShopFile;
import java.nio.file.Path;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;

/**
 * The shop as the platform sees it: one project in the workspace of the window with one linked folder. Whatever the platform writes goes
 * beside the link, nothing into the folder of the shop.
 */
final class ShopProject {

    private static final String PROJECT = "shop";
    private static final String LINK = "files";

    private final IFolder folder;

    private ShopProject(IFolder folder) {
        this.folder = folder;
    }

    /**
     * Points the link at a shop.
     *
     * @throws CoreException when the workspace does not take it
     */
    static ShopProject of(Path directory) throws CoreException {
        IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(PROJECT);
        if (!project.exists()) {
            project.create(null);
        }
        project.open(null);
        IFolder folder = project.getFolder(LINK);
        if (!directory.toUri().equals(folder.getRawLocationURI())) {
            folder.createLink(directory.toUri(), IResource.REPLACE | IResource.ALLOW_MISSING_LOCAL, null);
        }
        folder.refreshLocal(IResource.DEPTH_INFINITE, null);
        return new ShopProject(folder);
    }

    /** Returns the linked folder. */
    IFolder folder() {
        return folder;
    }

    /** Returns a file of the shop; a new one does not exist before it is saved. */
    IFile resource(ShopFile file) {
        return folder.getFile(file.path());
    }

    /** Lets the platform see that a file was written. */
    void written(ShopFile file) {
        IFile resource = resource(file);
        WorkspaceJob job = new WorkspaceJob(resource.getName()) {
            @Override
            public IStatus runInWorkspace(IProgressMonitor monitor) {
                try {
                    resource.refreshLocal(IResource.DEPTH_ZERO, monitor);
                } catch (CoreException e) {
                    ILog.of(ShopProject.class).log(e.getStatus());
                }
                return Status.OK_STATUS;
            }
        };
        job.setRule(folder);
        job.setSystem(true);
        job.schedule();
    }
}
