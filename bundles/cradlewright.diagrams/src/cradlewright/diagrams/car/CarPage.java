package cradlewright.diagrams.car;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.diagrams.Messages;
import cradlewright.diagrams.shared.Chooser;
import cradlewright.diagrams.shared.SceneEdits;
import cradlewright.diagrams.shared.ScenePage;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Setup;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Position;
import cradlewright.report.UnitSystem;
import cradlewright.report.car.CarDrawing;
import cradlewright.report.car.VisitSight;
import cradlewright.report.car.VisitSightKey;
import cradlewright.report.car.VisitSketchKey;
import cradlewright.report.scene.Scene;
import cradlewright.ui.shop.Answer;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.Nouns;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;

/** What the diagram of a car shows: the scene of the chosen visit. */
final class CarPage extends ScenePage<VisitSight> {

    private final Car car;
    private Optional<Visit> visit = Optional.empty();
    private List<Finding> foreseenFindings = List.of();

    /** Begins with the visit that is on now; {@code changed} is called after the scene has changed. */
    CarPage(WorkingShop shop, Car car, Runnable changed) {
        super(shop, car, changed);
        this.car = car;
        begin();
    }

    /** Returns what rests on what in the diagram. */
    private Optional<Setup> setup() {
        return visit.map(Visit::getSetup);
    }

    /** Returns the visits of the car that can be drawn. */
    private List<Visit> visits() {
        return car.getVisits().stream().filter(each -> each.getStage() != null && each.getSetup() != null).toList();
    }

    @Override
    public List<Chooser> choosers() {
        List<Visit> all = visits();
        return List.of(new Chooser(Messages.Bar_visit, all.stream().map(CarPage::name).toList(), visit.map(all::indexOf).orElse(-1),
                index -> choose(Optional.of(all.get(index)))));
    }

    private static String name(Visit visit) {
        return NLS.bind(Messages.Bar_as, Nouns.name(visit), Nouns.name(visit.getStage())) + ", " + Nouns.name(visit.getSetup());
    }

    private void choose(Optional<Visit> other) {
        visit = other;
        chosen();
    }

    @Override
    protected void chooseUsual() {
        visit = present(visits());
    }

    @Override
    protected boolean stillThere() {
        return visit.filter(each -> visits().contains(each)).isPresent();
    }

    @Override
    protected String nothing() {
        return visit.isEmpty() ? Messages.Bar_noVisit : "";
    }

    @Override
    public SceneEdits edits() {
        return new CarSceneEdits(shop().folder(), car, setup());
    }

    /** As high as the supports, in the middle. */
    @Override
    public Vec3 usualPlace() {
        double height = sight().map(sight -> sight.standing().supports()).orElse(List.of()).stream()
                .mapToDouble(support -> support.inCarrier().z()).average().orElse(0);
        return new Vec3(0, 0, height);
    }

    /** What holds a support is drawn with it. */
    @Override
    public String drawn(String objectId) {
        return setup().stream().flatMap(setup -> setup.getContacts().stream()).filter(contact -> holds(contact, objectId))
                .map(Contact::getId).findFirst().orElse(objectId);
    }

    private static boolean holds(Contact contact, String id) {
        return Stream.of(contact.getFixture(), contact.getStand(), contact.getTrestle(), contact.getArm(), contact.getStrap())
                .anyMatch(holder -> holder != null && id.equals(holder.getId()));
    }

    @Override
    protected Optional<? extends Key<Optional<VisitSight>>> question() {
        return visit.map(each -> new VisitSightKey(car.getId(), each.getId()));
    }

    @Override
    protected Optional<VisitSight> sketch(Engine engine) {
        return visit.flatMap(each -> engine.read(new VisitSketchKey(car.getId(), each.getId()), Progress.NONE));
    }

    @Override
    protected VisitSight withNumbersOf(VisitSight sketch, VisitSight before) {
        return sketch.withNumbersOf(before);
    }

    @Override
    protected VisitSight judged(VisitSight sight, boolean foreseen) {
        if (foreseen && !foreseenFindings.isEmpty()) {
            return sight.withFindings(foreseenFindings, false);
        }
        return sight.withFindings(findings(), foreseen || shop().workingOut());
    }

    private List<Finding> findings() {
        if (shop().state() == WorkingShop.State.HELD_BACK) {
            return List.of();
        }
        return shop().answers().stream().flatMap(answers -> answers.findings().stream()).filter(finding -> isVisit(finding.subject()))
                .toList();
    }

    private boolean isVisit(Subject subject) {
        return subject.scope() == Scope.VISIT && subject.ownerId().equals(car.getId())
                && visit.map(Visit::getId).equals(subject.visitId());
    }

    @Override
    protected Scene paint(VisitSight sight, UnitSystem units, double text) {
        return new CarDrawing(units).draw(sight, text);
    }

    @Override
    protected Optional<Change> moved(String thingId, Position to) {
        return setup().flatMap(on -> Foresight.moved(shop().snapshot(), car.getId(), on.getId(), thingId, to));
    }

    @Override
    protected void foreseeMore(Change change) {
        asked(shop().foresee(change, this::isVisit, (Answer<ShopAnswers>) answers -> {
            foreseenFindings = answers.findings();
            draw();
        }));
    }

    @Override
    protected void forgetMore() {
        foreseenFindings = List.of();
    }
}
