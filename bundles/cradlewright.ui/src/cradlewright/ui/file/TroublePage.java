package cradlewright.ui.file;

import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.Severity;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.Messages;
import cradlewright.ui.command.ShopOpening;
import cradlewright.ui.recovery.GoodCopies;
import cradlewright.ui.recovery.Recovery;
import cradlewright.ui.shop.WorkingShop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/**
 * Says in words what is wrong with a file, where and how to mend it, and which earlier version is at hand. For editors of files that could
 * not be read or may not be written.
 */
public final class TroublePage {

    private TroublePage() {
    }

    /** Tells whether a file has to be shown this way. */
    public static boolean wanted(ShopFile file) {
        return file.root().isEmpty();
    }

    /** Fills a parent with the page. */
    public static Composite create(Composite parent, WorkingShop shop, ShopFile file) {
        ScrolledComposite scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        Composite page = new Composite(scrolled, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(16, 16).spacing(8, 10).applyTo(page);
        Label title = new Label(page, SWT.WRAP);
        title.setText(NLS.bind(Messages.Trouble_title, file.path(), file.state().words()));
        title.setFont(JFaceResources.getHeaderFont());
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(title);
        shop.problems().stream().filter(problem -> problem.file().equals(file.path())).forEach(problem -> add(page, problem));
        Optional<Path> good = Recovery.lastGood(file).or(() -> lastGood(shop.folder().directory(), file));
        Label last = text(page, good.map(path -> NLS.bind(Messages.Trouble_lastGood, path)).orElse(Messages.Trouble_noLastGood));
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(1, SWT.DEFAULT).applyTo(last);
        good.ifPresent(path -> {
            Button back = new Button(page, SWT.PUSH);
            back.setText(Messages.Trouble_putBack);
            back.addListener(SWT.Selection, event -> putBack(shop, file, path));
            GridDataFactory.swtDefaults().span(2, 1).applyTo(back);
        });
        Label then = text(page, Messages.Trouble_then);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(1, SWT.DEFAULT).applyTo(then);
        scrolled.setContent(page);
        scrolled.addListener(SWT.Resize, event -> scrolled.setMinSize(page.computeSize(scrolled.getClientArea().width, SWT.DEFAULT)));
        return scrolled;
    }

    /** The shop is read anew afterwards; a button of the page that does so goes with the page, so this runs after it. */
    private static void putBack(WorkingShop shop, ShopFile file, Path good) {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        try {
            GoodCopies.putBack(shop.folder().directory(), file.path(), good);
            window.getShell().getDisplay().asyncExec(() -> ShopOpening.readAgain(window));
        } catch (IOException e) {
            MessageDialog.openError(window.getShell(), Messages.Trouble_putBack,
                    NLS.bind(Messages.Save_diskRefuses, file.path(), e.getMessage()));
        }
    }

    private static void add(Composite page, ReadProblem problem) {
        Label sign = new Label(page, SWT.NONE);
        sign.setImage(sign(problem.severity()));
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(sign);
        String where = problem.line() > 0 ? NLS.bind(Messages.Problem_line, problem.file(), problem.line()) : problem.file();
        String who = problem.objectName().isEmpty() ? "" : problem.objectName() + ": ";
        Label words = text(page, NLS.bind(Messages.Trouble_problem, new Object[] {where, who + problem.what(), problem.mend()}));
        GridDataFactory.fillDefaults().grab(true, false).hint(1, SWT.DEFAULT).applyTo(words);
    }

    private static Image sign(Severity severity) {
        return JFaceResources.getImage(switch (severity) {
            case ERROR -> Dialog.DLG_IMG_MESSAGE_ERROR;
            case WARNING -> Dialog.DLG_IMG_MESSAGE_WARNING;
            case NOTE -> Dialog.DLG_IMG_MESSAGE_INFO;
        });
    }

    private static Label text(Composite page, String words) {
        Label text = new Label(page, SWT.WRAP);
        text.setText(words);
        return text;
    }

    /** Finds the latest of the earlier versions that saving keeps. */
    private static Optional<Path> lastGood(Path shop, ShopFile file) {
        Path kept = shop.resolve(".versions").resolve(file.path());
        if (!Files.isDirectory(kept)) {
            return Optional.empty();
        }
        try (Stream<Path> versions = Files.list(kept)) {
            return versions.max(Comparator.naturalOrder());
        } catch (IOException e) {
            ILog.of(TroublePage.class).warn("The earlier versions cannot be listed.", e);
            return Optional.empty();
        }
    }
}
