package cradlewright.ui.tests;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.File;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Hands and eyes of the tests: finds widgets, sends them events, waits until something is so, takes pictures. */
final class Bot {

    private static final long PATIENCE = 60_000;
    private static final int STEP = 20;

    private Bot() {
    }

    static Display display() {
        return Display.getCurrent();
    }

    static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }

    static IWorkbenchPage page() {
        return window().getActivePage();
    }

    static Shell shell() {
        return window().getShell();
    }

    /** Lets the window work until something is so. */
    static void await(String what, BooleanSupplier so) {
        long end = System.currentTimeMillis() + PATIENCE;
        while (!so.getAsBoolean()) {
            if (System.currentTimeMillis() > end) {
                fail("waited in vain until " + what);
            }
            if (!display().readAndDispatch()) {
                display().timerExec(STEP, () -> { });
                display().sleep();
            }
        }
    }

    /** Lets the window draw and settle. */
    static void settle() {
        for (int i = 0; i < STEP; i++) {
            while (display().readAndDispatch()) {
                continue;
            }
            display().timerExec(1, () -> { });
            display().sleep();
        }
    }

    /** Returns all controls below a parent, itself first. */
    static Stream<Control> controls(Control top) {
        Stream<Control> below = top instanceof Composite composite ? Arrays.stream(composite.getChildren()).flatMap(Bot::controls)
                : Stream.empty();
        return Stream.concat(Stream.of(top), below);
    }

    /** Finds the one visible control of a class below a parent. */
    static <T extends Control> T find(Control top, Class<T> type, Predicate<T> wanted) {
        List<T> found = controls(top).filter(type::isInstance).map(type::cast).filter(Control::isVisible).filter(wanted).toList();
        if (found.size() != 1) {
            fail(found.size() + " visible controls of class " + type.getSimpleName() + " instead of one");
        }
        return found.get(0);
    }

    /** Chooses an entry of the menu bar by the beginnings of the texts on the way to it. */
    static void menu(String... path) {
        Menu menu = shell().getMenuBar();
        for (int i = 0; i < path.length; i++) {
            menu.notifyListeners(SWT.Show, new Event());
            String wanted = path[i];
            Optional<MenuItem> item = Arrays.stream(menu.getItems()).filter(each -> plain(each.getText()).startsWith(wanted)).findFirst();
            if (item.isEmpty()) {
                fail("no " + wanted + " in " + Arrays.stream(menu.getItems()).map(MenuItem::getText).toList());
            }
            if (i < path.length - 1) {
                menu = item.get().getMenu();
            } else {
                if (!item.get().isEnabled()) {
                    fail(String.join(", ", path) + " is not enabled");
                }
                item.get().notifyListeners(SWT.Selection, new Event());
            }
        }
        settle();
    }

    /** Returns the text of an entry of the menu bar, found by its beginning. */
    static String menuText(String first, String second) {
        for (MenuItem top : shell().getMenuBar().getItems()) {
            if (plain(top.getText()).startsWith(first)) {
                top.getMenu().notifyListeners(SWT.Show, new Event());
                settle();
                for (MenuItem item : top.getMenu().getItems()) {
                    if (plain(item.getText()).startsWith(second)) {
                        return plain(item.getText());
                    }
                }
            }
        }
        return fail("no " + second + " in " + first);
    }

    private static String plain(String text) {
        return text.replace("&", "").replaceAll("\t.*", "");
    }

    /**
     * Does something that opens a dialog, and hands the dialog over as soon as it is there; the dialog must be closed by the one who gets
     * it.
     */
    static void withDialog(Runnable opens, Consumer<Shell> then) {
        List<Throwable> trouble = new ArrayList<>();
        Shell[] before = display().getShells();
        boolean[] met = {false};
        Runnable[] look = new Runnable[1];
        long end = System.currentTimeMillis() + PATIENCE;
        look[0] = () -> {
            Optional<Shell> dialog = Arrays.stream(display().getShells())
                    .filter(each -> each.isVisible() && !Arrays.asList(before).contains(each))
                    .findFirst();
            if (dialog.isEmpty()) {
                if (System.currentTimeMillis() < end) {
                    display().timerExec(STEP, look[0]);
                }
                return;
            }
            met[0] = true;
            try {
                then.accept(dialog.get());
            } catch (RuntimeException | Error e) {
                trouble.add(e);
            } finally {
                if (!dialog.get().isDisposed() && !trouble.isEmpty()) {
                    dialog.get().close();
                }
            }
        };
        display().timerExec(STEP, look[0]);
        opens.run();
        await("a dialog came", () -> met[0]);
        settle();
        if (!trouble.isEmpty()) {
            throw new AssertionError("in the dialog", trouble.get(0));
        }
    }

    /** Presses a button of a dialog. */
    static void press(Shell dialog, String text) {
        find(dialog, Button.class, button -> plain(button.getText()).equals(text)).notifyListeners(SWT.Selection, new Event());
    }

    /** Saves a picture of a control as it is on the display, and returns it for a look. */
    static File picture(Control control, String name) {
        settle();
        Rectangle area = control.getBounds();
        if (!(control instanceof Shell)) {
            area = display().map(control.getParent(), null, area);
        }
        Image image = new Image(display(), area.width, area.height);
        GC gc = new GC(display());
        gc.copyArea(image, area.x, area.y);
        gc.dispose();
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {image.getImageData()};
        image.dispose();
        File folder = new File(System.getProperty("cradlewright.pictures", "pictures"));
        folder.mkdirs();
        File file = new File(folder, name + ".png");
        loader.save(file.getPath(), SWT.IMAGE_PNG);
        return file;
    }
}
