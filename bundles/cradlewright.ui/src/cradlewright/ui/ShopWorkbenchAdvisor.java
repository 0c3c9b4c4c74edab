package cradlewright.ui;

import cradlewright.ui.command.ShopOpening;
import cradlewright.ui.history.UndoRedo;
import cradlewright.ui.problems.ShopMarkers;
import cradlewright.ui.recovery.Recovery;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.start.StartPages;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;
import org.osgi.framework.Bundle;

/** Sets the workbench up: its first perspective, and the pictures that the view of problems asks its application for. */
final class ShopWorkbenchAdvisor extends WorkbenchAdvisor {

    private static final Map<String, String> PICTURES_OF_PROBLEMS = Map.of("IMG_OBJS_ERROR_PATH", "icons/full/obj16/error_tsk.svg",
            "IMG_OBJS_WARNING_PATH", "icons/full/obj16/warn_tsk.svg", "IMG_OBJS_INFO_PATH", "icons/full/obj16/info_tsk.svg");

    private final List<String> words;
    private Optional<String> trouble = Optional.empty();

    ShopWorkbenchAdvisor(String[] words) {
        this.words = List.of(words);
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
        IDE.registerAdapters();
        Bundle pictures = Platform.getBundle("org.eclipse.ui.ide");
        PICTURES_OF_PROBLEMS.forEach((name, path) -> configurer.declareImage(name, ImageDescriptor.createFromURL(pictures.getEntry(path)),
                true));
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return ShopPerspective.ID;
    }

    @Override
    public IAdaptable getDefaultPageInput() {
        return ResourcesPlugin.getWorkspace().getRoot();
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new ShopWindowAdvisor(configurer);
    }

    /** Opens the shop before the window comes up, so that editors find it when they are brought back. */
    @Override
    public void preStartup() {
        WorkingShop.addOpenListener(new ShopMarkers());
        trouble = ShopOpening.openAtStart(shopNamed());
    }

    @Override
    public void postStartup() {
        IWorkbench workbench = getWorkbenchConfigurer().getWorkbench();
        Splash.close();
        UndoRedo.install(workbench);
        StartPages.install(workbench);
        Recovery.install(workbench);
        trouble.ifPresent(why -> MessageDialog.openError(workbench.getActiveWorkbenchWindow().getShell(), Messages.Open_title, why));
    }

    /** Returns the first word that is neither an option of the platform nor its value. */
    private Optional<Path> shopNamed() {
        return IntStream.range(0, words.size()).filter(i -> !words.get(i).startsWith("-") && (i == 0 || !words.get(i - 1).startsWith("-")))
                .mapToObj(i -> Path.of(words.get(i))).findFirst();
    }
}
