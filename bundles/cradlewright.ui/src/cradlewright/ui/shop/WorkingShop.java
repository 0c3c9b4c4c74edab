package cradlewright.ui.shop;

import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.BuiltInChecks;
import cradlewright.analysis.engine.AfterChange;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.ShopSnapshot;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.run.ShopChecks;
import cradlewright.model.edit.ShopEvent;
import cradlewright.model.edit.ShopStack;
import cradlewright.model.io.FileKind;
import cradlewright.model.io.ReadProblem;
import cradlewright.model.io.ShopFile;
import cradlewright.model.io.ShopFolder;
import cradlewright.model.io.ShopWriter;
import cradlewright.ui.Messages;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;

/**
 * The one shop that is open in the window. Everything here belongs to the owner thread, the one of the display; what other threads need
 * is in the snapshot and the answers, which never change.
 */
public final class WorkingShop {

    /** How far the answers are. */
    public enum State {
        /** They are for the latest snapshot. */
        CURRENT,
        /** They are missing or older than the snapshot and are being worked out. */
        WORKING_OUT,
        /** They are missing or older than the snapshot, and somebody stopped working them out. */
        STOPPED,
        /** They are held back: the files are not in order, or a check run broke off; see {@link WorkingShop#heldBack()}. */
        HELD_BACK
    }

    private static final List<OpenShopListener> OPEN_LISTENERS = new CopyOnWriteArrayList<>();
    private static WorkingShop current;

    private final Display display = Display.getCurrent();
    private final ShopFolder folder;
    private final ShopStack stack;
    private final ShopProject project;
    private final Snapshots snapshots;
    private final FileTroubles troubles;
    private final CheckCatalogue catalogue = BuiltInChecks.catalogue();
    private final Answering answering = new Answering(catalogue);
    private final CheckJob checking;
    private final List<WorkingShopListener> listeners = new CopyOnWriteArrayList<>();
    private ShopSnapshot snapshot;
    private List<ReadProblem> problems = List.of();
    private Optional<ShopAnswers> answers = Optional.empty();
    private State state = State.WORKING_OUT;
    private String heldBack = "";
    private boolean closed;

    private WorkingShop(ShopFolder folder, ShopProject project, Clock clock) {
        this.folder = folder;
        this.project = project;
        this.stack = new ShopStack(folder, new ShopWriter(folder, clock));
        this.snapshots = new Snapshots(folder, clock);
        this.troubles = new FileTroubles(folder);
        this.checking = new CheckJob(answering, this::later, new CheckJob.Outcome() {
            @Override
            public void done(ShopAnswers found) {
                answers = Optional.of(found);
                become(found.snapshot() == snapshot.number() ? State.CURRENT : State.WORKING_OUT, "");
            }

            @Override
            public void stopped() {
                become(State.STOPPED, "");
            }

            @Override
            public void broken(RuntimeException why) {
                ILog.of(WorkingShop.class).error("The checks broke off.", why);
                become(State.HELD_BACK, NLS.bind(Messages.Checking_broken, why));
            }
        });
    }

    /** Returns the shop that is open. */
    public static Optional<WorkingShop> current() {
        return Optional.ofNullable(current);
    }

    /**
     * Opens the shop in a folder in place of the one that is open, whose unsaved edits are lost: ask before. Files that are not in order
     * are no hindrance, see {@link #problems()}.
     *
     * @param clock gives the day that answers are for
     * @throws ShopNotOpened when there is no shop in the folder; the one that was open is still open then
     */
    public static WorkingShop open(Path directory, Clock clock) throws ShopNotOpened {
        Path shop = directory.toAbsolutePath().normalize();
        if (!Files.isRegularFile(shop.resolve(FileKind.SHOP.path("")))) {
            throw new ShopNotOpened(NLS.bind(Messages.Open_noShop, shop, FileKind.SHOP.path("")), null);
        }
        ShopProject project;
        try {
            project = ShopProject.of(shop);
        } catch (CoreException e) {
            throw new ShopNotOpened(NLS.bind(Messages.Open_noProject, shop, e.getStatus().getMessage()), e);
        }
        close();
        WorkingShop opened = new WorkingShop(ShopFolder.open(shop), project, clock);
        current = opened;
        opened.start();
        OPEN_LISTENERS.forEach(listener -> listener.opened(opened));
        return opened;
    }

    /** Puts the open shop away, if there is one. */
    public static void close() {
        WorkingShop closing = current;
        if (closing != null) {
            OPEN_LISTENERS.forEach(listener -> listener.closing(closing));
            closing.closed = true;
            closing.checking.callOff();
            current = null;
        }
    }

    /** Adds somebody who wants to hear which shop is open; one that is open already is not told. */
    public static void addOpenListener(OpenShopListener listener) {
        OPEN_LISTENERS.add(listener);
    }

    /** Removes a listener. */
    public static void removeOpenListener(OpenShopListener listener) {
        OPEN_LISTENERS.remove(listener);
    }

    private void start() {
        stack.addListener(this::happened);
        takeSnapshot(folder.files(), true);
    }

    /** Returns the objects. */
    public ShopFolder folder() {
        return folder;
    }

    /** Returns the only way to change the objects. */
    public ShopStack stack() {
        return stack;
    }

    /** Returns the latest records; each edit gives new ones. */
    public ShopSnapshot snapshot() {
        return snapshot;
    }

    /** Returns the latest answers, which may be older than the snapshot; nothing before the first ones. */
    public Optional<ShopAnswers> answers() {
        return answers;
    }

    /** Returns how far the answers are. */
    public State state() {
        return state;
    }

    /** Returns whether answers are missing or older than the snapshot, for whatever reason: what is shown of them must say so. */
    public boolean workingOut() {
        return state != State.CURRENT;
    }

    /** Returns why answers are held back; empty when they are not. */
    public String heldBack() {
        return heldBack;
    }

    /** Returns what is wrong with the files and with the values in them, as things are now. */
    public List<ReadProblem> problems() {
        return problems;
    }

    /** Returns the checks in force. */
    public CheckCatalogue catalogue() {
        return catalogue;
    }

    /** Adds a listener; the same one is told once. */
    public void addListener(WorkingShopListener listener) {
        if (!listeners.contains(listener)) {
            listeners.add(listener);
        }
    }

    /** Removes a listener. */
    public void removeListener(WorkingShopListener listener) {
        listeners.remove(listener);
    }

    /** Returns a file of the shop as the platform knows it; a new one does not exist there before it is saved. */
    public IFile resource(ShopFile file) {
        return project.resource(file);
    }

    /** Returns the folder of the shop as the platform knows it. */
    public IFolder resource() {
        return project.folder();
    }

    /** Finds the file of the shop that the platform knows as this one. */
    public Optional<ShopFile> fileOf(IFile resource) {
        return folder.files().stream().filter(file -> resource.equals(resource(file))).findFirst();
    }

    /** Finds the file in which the object with this id lies. */
    public Optional<ShopFile> fileOf(String id) {
        return folder.find(id).flatMap(folder::fileOf);
    }

    /** Begins to work the answers out again, for today. */
    public void checkNow() {
        takeSnapshot(List.of(), true);
    }

    /** Asks for a value as things are. */
    public <T> Question ask(Key<T> key, Answer<T> answer) {
        return put((engine, checks, progress) -> engine.read(key, progress), answer);
    }

    /** Asks for a value as it would be after a change; nothing of the change stays. */
    public <T> Question ask(Change change, Key<T> key, Answer<T> answer) {
        return ask(new AfterChange<>(key, change), answer);
    }

    /** Asks what all checks would say about some subjects after a change; nothing of the change stays. */
    public Question foresee(Change change, Predicate<Subject> wanted, Answer<ShopAnswers> answer) {
        return put((engine, checks, progress) -> checks.foresee(change, wanted, progress), answer);
    }

    /** Asks the checks themselves, on their own thread: for what only they can tell, such as the records on which a remedy was tried. */
    public <T> Question askChecks(BiFunction<ShopChecks, Progress, T> question, Answer<T> answer) {
        return put((engine, checks, progress) -> question.apply(checks, progress), answer);
    }

    private <T> Question put(Answering.Asked<T> question, Answer<T> answer) {
        QuestionJob<T> job = new QuestionJob<>(answering, question, answer, this::later);
        job.ask();
        return job;
    }

    private void happened(ShopEvent event) {
        if (event.kind().changesObjects()) {
            takeSnapshot(event.files(), false);
        }
        if (event.kind() == ShopEvent.Kind.SAVED) {
            event.files().forEach(project::written);
        }
        tell(listener -> listener.changed(event));
    }

    private void takeSnapshot(Collection<ShopFile> touched, boolean atOnce) {
        troubles.judge(touched);
        problems = troubles.all();
        Snapshots.Taken taken = snapshots.after(touched);
        snapshot = taken.snapshot();
        answering.take(snapshot);
        String hindrance = FileTroubles.serious(problems) ? Messages.Checking_filesNotInOrder : taken.hindrance();
        if (hindrance.isEmpty()) {
            checking.wish(atOnce);
            become(State.WORKING_OUT, "");
        } else {
            checking.callOff();
            become(State.HELD_BACK, hindrance);
        }
    }

    private void become(State next, String why) {
        state = next;
        heldBack = Objects.requireNonNull(why);
        tell(WorkingShopListener::answered);
    }

    private void tell(Consumer<WorkingShopListener> what) {
        listeners.forEach(what);
    }

    private void later(Runnable told) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!closed) {
                    told.run();
                }
            });
        }
    }
}
