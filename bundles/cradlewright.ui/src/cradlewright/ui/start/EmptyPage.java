package cradlewright.ui.start;

import cradlewright.model.io.FileKind;
import cradlewright.ui.command.ShopOpening;
import cradlewright.ui.look.Picture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.IHandlerService;

/** What the start page says while no shop is open: how to open one, and how to try the program without one. */
final class EmptyPage {

    private static final int MARGIN = 24;
    private static final int WIDTH = 520;

    private final IWorkbenchWindow window;
    private final Composite page;

    EmptyPage(Composite parent, IWorkbenchWindow window) {
        this.window = window;
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN).spacing(8, 12).applyTo(page);
        Label title = new Label(page, SWT.NONE);
        title.setFont(JFaceResources.getHeaderFont());
        title.setText(Messages.Empty_title);
        text(Messages.Empty_own);
        button(Messages.Empty_open, () -> run("cradlewright.ui.openShop")).setImage(Picture.OPEN.image());
        button(Messages.Empty_new, () -> run("cradlewright.ui.newShop")).setImage(Picture.SHOP.image());
        if (DemoShop.available()) {
            text(NLS.bind(Messages.Empty_demo, DemoShop.usualFolder()));
            button(Messages.Empty_openDemo, () -> demo(DemoShop.usualFolder())).setImage(Picture.SHOP.image());
            button(Messages.Empty_demoElsewhere, this::demoElsewhere);
        }
    }

    private void text(String words) {
        Label label = new Label(page, SWT.WRAP);
        label.setText(words);
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).indent(0, 8).applyTo(label);
    }

    private Button button(String words, Runnable body) {
        Button button = new Button(page, SWT.PUSH);
        button.setText(words);
        button.addListener(SWT.Selection, event -> body.run());
        return button;
    }

    Composite control() {
        return page;
    }

    private void run(String command) {
        try {
            window.getService(IHandlerService.class).executeCommand(command, null);
        } catch (CommandException e) {
            throw new IllegalStateException(e);
        }
    }

    private void demoElsewhere() {
        DirectoryDialog dialog = new DirectoryDialog(window.getShell());
        dialog.setText(Messages.Empty_openDemo);
        dialog.setMessage(Messages.Demo_where);
        dialog.setFilterPath(System.getProperty("user.home"));
        String chosen = dialog.open();
        if (chosen != null) {
            demo(Path.of(chosen));
        }
    }

    /** Opens the demo shop in a folder; what lies there from before is opened as it is, with all edits. */
    private void demo(Path folder) {
        if (!Files.isRegularFile(folder.resolve(FileKind.SHOP.path("")))) {
            try {
                DemoShop.copyTo(folder);
            } catch (IOException e) {
                MessageDialog.openError(window.getShell(), Messages.Empty_openDemo,
                        NLS.bind(Messages.Demo_notCopied, folder, e.getMessage()));
                return;
            }
        }
        ShopOpening.open(window, folder);
    }
}
