package cradlewright.ui.recovery;

import cradlewright.model.edit.ShopEvent;
import cradlewright.model.io.ShopFile;
import cradlewright.ui.shop.OpenShopListener;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchListener;
import org.osgi.framework.FrameworkUtil;

/**
 * Copies unsaved files of the open shop into the folder of the program: ten seconds after the last edit, and each minute while edits go on.
 * A copy goes when its file is saved, when its edits are taken back and when the shop is closed; what is found on opening a shop is what a
 * run has left that did not end in order. Belongs to the thread of the display; only the writing is done by a job.
 */
public final class Recovery implements OpenShopListener, WorkingShopListener {

    private static final int QUIET = 10_000;
    private static final int LONGEST = 60_000;
    private static final String FOLDER = "unsaved";
    private static final String GOOD = "good";

    private static final OneByOne ORDER = new OneByOne();

    private static Recovery installed;

    private final Display display;
    private final Path folder;
    private final Path goodFolder;
    private final String run;
    private final Runnable whenQuiet = this::copyNow;
    private final Map<ShopFile, Long> copied = new HashMap<>();
    private Optional<WorkingShop> shop = Optional.empty();
    private CopyStore store;
    private GoodCopies good;
    private long firstEdit;
    private boolean endedByForce;

    private Recovery(Display display, Path own, String run) {
        this.display = display;
        this.folder = own.resolve(FOLDER);
        this.goodFolder = own.resolve(GOOD);
        this.run = run;
    }

    /** Begins to watch over the shops of the window, also over the one that is open. */
    public static void install(IWorkbench workbench) {
        Path own = Platform.getStateLocation(FrameworkUtil.getBundle(Recovery.class)).toPath();
        installed = new Recovery(workbench.getDisplay(), own, UUID.randomUUID().toString());
        WorkingShop.addOpenListener(installed);
        workbench.addWorkbenchListener(new IWorkbenchListener() {
            @Override
            public boolean preShutdown(IWorkbench closing, boolean forced) {
                installed.endedByForce = forced;
                return true;
            }

            @Override
            public void postShutdown(IWorkbench closed) {
                if (!installed.endedByForce) {
                    installed.endInOrder();
                }
            }
        });
        WorkingShop.current().ifPresent(installed::opened);
    }

    /** Returns the one that watches over the window. */
    static Recovery installed() {
        return installed;
    }

    @Override
    public void opened(WorkingShop opened) {
        shop = Optional.of(opened);
        store = new CopyStore(folder, opened.folder().directory(), run);
        good = new GoodCopies(goodFolder, opened.folder().directory());
        copied.clear();
        opened.addListener(this);
        opened.folder().files().forEach(this::keepGood);
        display.asyncExec(() -> {
            if (shop.equals(Optional.of(opened)) && !left().isEmpty()) {
                LeftDialog.ask(this);
            }
        });
    }

    @Override
    public void closing(WorkingShop closed) {
        closed.removeListener(this);
        display.timerExec(-1, whenQuiet);
        CopyStore ended = store;
        write(ended::removeAll);
        shop = Optional.empty();
    }

    /** Jobs are no longer started when the window has gone, so the copies are removed at once. */
    private void endInOrder() {
        if (shop.isEmpty()) {
            return;
        }
        shop = Optional.empty();
        try {
            Job.getJobManager().join(Recovery.class, null);
            store.removeAll();
        } catch (IOException e) {
            ILog.of(Recovery.class).warn(NLS.bind(Messages.Copy_refused, folder), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void changed(ShopEvent event) {
        if (event.kind() == ShopEvent.Kind.SAVED) {
            event.files().forEach(this::forget);
            event.files().forEach(this::keepGood);
            return;
        }
        long now = System.nanoTime() / 1_000_000;
        if (firstEdit == 0) {
            firstEdit = now;
        }
        display.timerExec((int) Math.max(1, Math.min(QUIET, firstEdit + LONGEST - now)), whenQuiet);
    }

    @Override
    public void answered() {
        // What the checks say is not copied.
    }

    /** Copies what is not saved and not copied yet, and removes the copies of what is as it was saved. */
    void copyNow() {
        firstEdit = 0;
        shop.filter(open -> !display.isDisposed()).ifPresent(open -> {
            List<ShopFile> dirty = open.stack().dirtyFiles();
            List.copyOf(copied.keySet()).stream().filter(file -> !dirty.contains(file)).forEach(this::forget);
            for (ShopFile file : dirty) {
                long state = open.stack().state(file);
                if (!Long.valueOf(state).equals(copied.put(file, state))) {
                    open.stack().bytes(file).ifPresent(text -> {
                        UnsavedCopy copy = new UnsavedCopy(file.path(), file.digest(), Clock.systemUTC().instant(), text);
                        CopyStore into = store;
                        write(() -> into.put(copy));
                    });
                }
            }
        });
    }

    private void forget(ShopFile file) {
        if (copied.remove(file) != null) {
            CopyStore from = store;
            write(() -> from.remove(file.path()));
        }
    }

    private void keepGood(ShopFile file) {
        if (file.state() == ShopFile.State.WRITABLE) {
            GoodCopies into = good;
            file.digest().ifPresent(digest -> write(() -> into.keep(file.path(), digest)));
        }
    }

    /** Returns where the last good copy of a file of the open shop lies. */
    public static Optional<Path> lastGood(ShopFile file) {
        return installed == null || installed.shop.isEmpty() ? Optional.empty() : installed.good.find(file);
    }

    Optional<WorkingShop> shop() {
        return shop;
    }

    /** Returns what other runs have left of the open shop. */
    List<LeftCopies> left() {
        try {
            return shop.isPresent() ? store.left() : List.of();
        } catch (IOException e) {
            ILog.of(Recovery.class).error("The copies of unsaved edits cannot be read.", e);
            return List.of();
        }
    }

    /** Removes what another run has left, after the copies of this one are on disk. */
    void remove(LeftCopies left) {
        CopyStore from = store;
        write(() -> from.remove(left));
    }

    /** Something that the disk may refuse. */
    private interface Writing {

        void run() throws IOException;
    }

    /** Runs in the order of the calls; a refusal goes to the log, since the person can do nothing about it but save. */
    private void write(Writing writing) {
        Job job = new Job(Messages.Copy_job) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                try {
                    writing.run();
                    return Status.OK_STATUS;
                } catch (IOException e) {
                    ILog.of(Recovery.class).warn(NLS.bind(Messages.Copy_refused, folder), e);
                    return Status.OK_STATUS;
                }
            }

            @Override
            public boolean belongsTo(Object family) {
                return family == Recovery.class;
            }
        };
        job.setSystem(true);
        job.setRule(ORDER);
        job.schedule();
    }
}
