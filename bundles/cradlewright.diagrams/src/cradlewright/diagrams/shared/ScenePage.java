package cradlewright.diagrams.shared;

import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.facts.Change;
import cradlewright.diagrams.Messages;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.base.FileRoot;
import cradlewright.model.edit.ShopEvent;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Position;
import cradlewright.report.UnitSystem;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Scene;
import cradlewright.ui.shop.Answer;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import cradlewright.ui.words.ReaderUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;

/**
 * What a diagram shows. Places follow every edit at once; loads and answers come from the background and stay, marked as old, until new
 * ones are there. While something is dragged the diagram shows the records as they would be. A subclass ends its constructor with
 * {@link #begin}.
 *
 * @param <S> all that a drawing shows, as records
 */
public abstract class ScenePage<S> implements WorkingShopListener {

    /** Height of texts before the zoom is known, mm. */
    private static final double USUAL_TEXT = 75;
    private static final Scene EMPTY = new Scene("", new Box(0, 0, 4000, 3000), List.of(), List.of());

    private final WorkingShop shop;
    private final FileRoot root;
    private final Runnable changed;
    private final Engine sketching = new Engine();
    private final SceneNode.Nodes nodes = new SceneNode.Nodes();
    private final List<Question> asked = new ArrayList<>();
    private Optional<S> worked = Optional.empty();
    private boolean workedIsOld = true;
    private Optional<S> foreseen = Optional.empty();
    private Optional<Position> dragged = Optional.empty();
    private Question working = () -> {
    };
    private Scene scene = EMPTY;
    private String trouble = "";
    private boolean awaiting = true;
    private double text = USUAL_TEXT;

    /**
     * Makes a page that shows nothing yet.
     *
     * @param root of the file that is shown
     * @param changed called after the scene has changed
     */
    protected ScenePage(WorkingShop shop, FileRoot root, Runnable changed) {
        this.shop = shop;
        this.root = root;
        this.changed = changed;
    }

    /** Begins to follow the shop. */
    protected final void begin() {
        shop.addListener(this);
        chooseUsual();
        chosen();
    }

    /** Stops listening. */
    public final void dispose() {
        shop.removeListener(this);
        working.giveUp();
        asked.forEach(Question::giveUp);
    }

    /** Returns the choices in the bar. */
    public abstract List<Chooser> choosers();

    /** Returns what may be done here. */
    public abstract SceneEdits edits();

    /** Returns where new things go along the direction that a view does not show, m. */
    public abstract Vec3 usualPlace();

    /** Returns the id of the item that stands for an object: mostly that of the object itself. */
    public abstract String drawn(String objectId);

    /** Returns what must be done before there is anything to show, in words; empty when there is something. */
    protected abstract String nothing();

    /** Tells whether what was chosen is still there. */
    protected abstract boolean stillThere();

    /** Chooses what people most likely want to see. */
    protected abstract void chooseUsual();

    /** Returns the visit that is on now, else the last one. */
    protected static Optional<Visit> present(List<Visit> all) {
        Optional<Visit> now = all.stream().filter(each -> Boolean.TRUE.equals(each.getCurrent())).reduce((a, b) -> b);
        return now.or(() -> all.stream().reduce((a, b) -> b));
    }

    /** Returns the question about what was chosen; nothing when there is none. */
    protected abstract Optional<? extends Key<Optional<S>>> question();

    /** Returns what can be shown at once, before any load is worked out. */
    protected abstract Optional<S> sketch(Engine engine);

    /** Returns what is there now with the numbers of before. */
    protected abstract S withNumbersOf(S sketch, S before);

    /** Returns what is to be shown with the answers that belong to it. */
    protected abstract S judged(S sight, boolean foreseen);

    /** Draws. */
    protected abstract Scene paint(S sight, UnitSystem units, double text);

    /** Returns the change of records when a thing is elsewhere; nothing when no load depends on it. */
    protected abstract Optional<Change> moved(String thingId, Position to);

    /** Asks what else is to be known about a change that is foreseen; each question is handed to {@link #asked}. */
    protected void foreseeMore(Change change) {
        // Most pages show nothing else.
    }

    /** Forgets what else was foreseen. */
    protected void forgetMore() {
        // Most pages show nothing else.
    }

    /** Keeps a question so that it can be given up. */
    protected final void asked(Question question) {
        asked.add(question);
    }

    /** Returns the root of the file that is shown. */
    public final FileRoot root() {
        return root;
    }

    /** Returns the shop. */
    public final WorkingShop shop() {
        return shop;
    }

    /** Returns the drawing as it is. */
    public final Scene scene() {
        return scene;
    }

    /** Tells whether what was chosen last has not had its first numbers yet: the sheet grows when they come. */
    final boolean awaiting() {
        return awaiting;
    }

    /** Returns the nodes of its items. */
    public final List<SceneNode> nodes() {
        return nodes.all();
    }

    /** Sets the height of texts, mm of the sheet, so that they can be read at every zoom. */
    public final void setText(double height) {
        if (height != text) {
            text = height;
            draw();
        }
    }

    /** Shows what was chosen now. */
    protected final void chosen() {
        awaiting = true;
        worked = Optional.empty();
        workedIsOld = true;
        endPreview();
        work();
        draw();
    }

    /** Returns how things stand with the loads, in words; empty when all is as it should be or nothing is shown. */
    public final String status() {
        if (!nothing().isEmpty()) {
            return "";
        }
        if (dragged.isPresent()) {
            return NLS.bind(Messages.Bar_dragging, TypedPlace.text(dragged.get(), ReaderUnits.current()));
        }
        if (!trouble.isEmpty()) {
            return trouble;
        }
        return switch (shop.state()) {
            case CURRENT -> "";
            case HELD_BACK -> NLS.bind(Messages.Bar_heldBack, shop.heldBack());
            case WORKING_OUT, STOPPED -> Messages.Bar_workingOut;
        };
    }

    @Override
    public final void changed(ShopEvent event) {
        if (!event.kind().changesObjects()) {
            return;
        }
        if (!stillThere()) {
            chooseUsual();
            chosen();
            return;
        }
        workedIsOld = true;
        work();
        draw();
    }

    @Override
    public final void answered() {
        draw();
    }

    /** Asks for the loads as things are now. */
    private void work() {
        working.giveUp();
        trouble = "";
        question().ifPresent(key -> working = shop.ask(key, new Answer<Optional<S>>() {
            @Override
            public void is(Optional<S> value) {
                worked = value;
                workedIsOld = false;
                awaiting = false;
                draw();
            }

            @Override
            public void failed(RuntimeException why) {
                worked = Optional.empty();
                trouble = NLS.bind(Messages.Bar_heldBack, why.getMessage());
                draw();
            }
        }));
    }

    /** Shows what would be if a thing were elsewhere, as soon as that is worked out; nothing is edited. */
    final void foresee(String thingId, Position to) {
        dragged = Optional.of(to);
        question().ifPresent(key -> moved(thingId, to).ifPresent(after -> {
            asked.forEach(Question::giveUp);
            asked.clear();
            asked.add(shop.ask(after, key, (Answer<Optional<S>>) sight -> {
                foreseen = sight;
                draw();
            }));
            foreseeMore(after);
        }));
        changed.run();
    }

    /** Shows things as they are again. */
    final void endPreview() {
        asked.forEach(Question::giveUp);
        asked.clear();
        boolean shown = foreseen.isPresent() || dragged.isPresent();
        foreseen = Optional.empty();
        dragged = Optional.empty();
        forgetMore();
        if (shown) {
            draw();
        }
    }

    /** Draws again: answers have come, or other units were chosen. */
    public final void draw() {
        scene = sight().map(sight -> paint(sight, ReaderUnits.current(), text)).orElse(EMPTY);
        nodes.show(scene);
        changed.run();
    }

    /** Returns what is shown now. */
    protected final Optional<S> sight() {
        if (foreseen.isPresent()) {
            return foreseen.map(sight -> judged(sight, true));
        }
        if (!workedIsOld && worked.isPresent()) {
            return worked.map(sight -> judged(sight, false));
        }
        sketching.update(shop.snapshot());
        return sketch(sketching).map(sketch -> judged(worked.map(before -> withNumbersOf(sketch, before)).orElse(sketch), false));
    }
}
