package cradlewright.diagrams.car;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.diagrams.Messages;
import cradlewright.diagrams.shared.SceneNode;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.edit.ShopEvent;
import cradlewright.model.fixture.Setup;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Position;
import cradlewright.report.UnitSystem;
import cradlewright.report.car.CarDrawing;
import cradlewright.report.car.VisitSight;
import cradlewright.report.car.VisitSightKey;
import cradlewright.report.car.VisitSketchKey;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Scene;
import cradlewright.ui.shop.Answer;
import cradlewright.ui.shop.Question;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.shop.WorkingShopListener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.osgi.util.NLS;

/**
 * What the diagram of a car shows: the scene of the chosen visit. Places follow every edit at once; loads and answers come from the
 * background and stay, marked as old, until new ones are there. While something is dragged it shows the records as they would be.
 */
final class CarPage implements WorkingShopListener {

    /** Height of texts before the zoom is known, mm. */
    private static final double USUAL_TEXT = 75;

    private final WorkingShop shop;
    private final Car car;
    private final Runnable changed;
    private final Engine sketching = new Engine();
    private final SceneNode.Nodes nodes = new SceneNode.Nodes();
    private Optional<Visit> visit = Optional.empty();
    private Optional<VisitSight> worked = Optional.empty();
    private boolean workedIsOld = true;
    private Optional<VisitSight> foreseen = Optional.empty();
    private List<Finding> foreseenFindings = List.of();
    private Optional<Position> dragged = Optional.empty();
    private final List<Question> asked = new ArrayList<>();
    private Question working = () -> {
    };
    private Scene scene = empty();
    private String trouble = "";
    private double text = USUAL_TEXT;

    /**
     * Begins with the visit that is on now.
     *
     * @param changed called after the scene has changed
     */
    CarPage(WorkingShop shop, Car car, Runnable changed) {
        this.shop = shop;
        this.car = car;
        this.changed = changed;
        shop.addListener(this);
        choose(usual());
    }

    /** Stops listening. */
    void dispose() {
        shop.removeListener(this);
        working.giveUp();
        asked.forEach(Question::giveUp);
    }

    private static Scene empty() {
        return new Scene("", new Box(0, 0, 4000, 3000), List.of(), List.of());
    }

    Car car() {
        return car;
    }

    WorkingShop shop() {
        return shop;
    }

    Scene scene() {
        return scene;
    }

    List<SceneNode> nodes() {
        return nodes.all();
    }

    Optional<Visit> visit() {
        return visit;
    }

    /** Returns what rests on what in the diagram. */
    Optional<Setup> setup() {
        return visit.map(Visit::getSetup);
    }

    /** Returns the visits of the car that can be drawn. */
    List<Visit> visits() {
        return car.getVisits().stream().filter(each -> each.getStage() != null && each.getSetup() != null).toList();
    }

    private Optional<Visit> usual() {
        List<Visit> all = visits();
        Optional<Visit> now = all.stream().filter(each -> Boolean.TRUE.equals(each.getCurrent())).reduce((a, b) -> b);
        return now.or(() -> all.stream().reduce((a, b) -> b));
    }

    /** Returns where new things go along the direction that a view does not show: as high as the supports, in the middle. */
    Vec3 usualPlace() {
        double height = sight().map(sight -> sight.standing().supports()).orElse(List.of()).stream()
                .mapToDouble(support -> support.inCarrier().z()).average().orElse(0);
        return new Vec3(0, 0, height);
    }

    /** Sets the height of texts, mm of the sheet, so that they can be read at every zoom. */
    void setText(double height) {
        if (height != text) {
            text = height;
            draw();
        }
    }

    /** Shows another visit. */
    void choose(Optional<Visit> other) {
        visit = other;
        worked = Optional.empty();
        workedIsOld = true;
        endPreview();
        work();
        draw();
    }

    /** Returns how things stand with the loads, in words; empty when all is as it should be. */
    String status() {
        if (visit.isEmpty()) {
            return Messages.Bar_noVisit;
        }
        if (dragged.isPresent()) {
            return NLS.bind(Messages.Bar_dragging, TypedPlace.text(dragged.get()));
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
    public void changed(ShopEvent event) {
        if (!event.kind().changesObjects()) {
            return;
        }
        if (visit.filter(each -> visits().contains(each)).isEmpty()) {
            choose(usual());
            return;
        }
        workedIsOld = true;
        work();
        draw();
    }

    @Override
    public void answered() {
        draw();
    }

    /** Asks for the loads as things are now. */
    private void work() {
        working.giveUp();
        trouble = "";
        visit.ifPresent(each -> working = shop.ask(new VisitSightKey(car.getId(), each.getId()), new Answer<Optional<VisitSight>>() {
            @Override
            public void is(Optional<VisitSight> value) {
                worked = value;
                workedIsOld = false;
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
    void foresee(String thingId, Position to) {
        dragged = Optional.of(to);
        Optional<Change> change = setup().flatMap(on -> Foresight.moved(shop.snapshot(), car.getId(), on.getId(), thingId, to));
        change.ifPresent(after -> {
            asked.forEach(Question::giveUp);
            asked.clear();
            String visitId = visit.orElseThrow().getId();
            asked.add(shop.ask(after, new VisitSightKey(car.getId(), visitId), (Answer<Optional<VisitSight>>) sight -> {
                foreseen = sight;
                draw();
            }));
            asked.add(shop.foresee(after, this::isVisit, (Answer<ShopAnswers>) answers -> {
                foreseenFindings = answers.findings();
                draw();
            }));
        });
        changed.run();
    }

    /** Shows things as they are again. */
    void endPreview() {
        asked.forEach(Question::giveUp);
        asked.clear();
        boolean shown = foreseen.isPresent() || dragged.isPresent();
        foreseen = Optional.empty();
        foreseenFindings = List.of();
        dragged = Optional.empty();
        if (shown) {
            draw();
        }
    }

    private boolean isVisit(Subject subject) {
        return subject.scope() == Scope.VISIT && subject.ownerId().equals(car.getId())
                && visit.map(Visit::getId).equals(subject.visitId());
    }

    private void draw() {
        scene = sight().map(sight -> new CarDrawing(UnitSystem.METRIC).draw(sight, text)).orElseGet(CarPage::empty);
        nodes.show(scene);
        changed.run();
    }

    private Optional<VisitSight> sight() {
        if (foreseen.isPresent()) {
            return foreseen.map(sight -> foreseenFindings.isEmpty() ? sight.withFindings(findings(), true)
                    : sight.withFindings(foreseenFindings, false));
        }
        if (!workedIsOld && worked.isPresent()) {
            return worked.map(sight -> sight.withFindings(findings(), shop.workingOut()));
        }
        sketching.update(shop.snapshot());
        return visit.flatMap(each -> sketching.read(new VisitSketchKey(car.getId(), each.getId()), Progress.NONE))
                .map(sketch -> worked.map(sketch::withNumbersOf).orElse(sketch).withFindings(findings(), shop.workingOut()));
    }

    private List<Finding> findings() {
        if (shop.state() == WorkingShop.State.HELD_BACK) {
            return List.of();
        }
        return shop.answers().stream().flatMap(answers -> answers.findings().stream()).filter(finding -> isVisit(finding.subject()))
                .toList();
    }
}
