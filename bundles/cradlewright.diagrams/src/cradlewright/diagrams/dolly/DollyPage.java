package cradlewright.diagrams.dolly;

import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.load.Situation;
import cradlewright.diagrams.Messages;
import cradlewright.diagrams.shared.Chooser;
import cradlewright.diagrams.shared.SceneEdits;
import cradlewright.diagrams.shared.ScenePage;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.io.IdSource;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Position;
import cradlewright.report.UnitSystem;
import cradlewright.report.dolly.DollyDrawing;
import cradlewright.report.dolly.DollySight;
import cradlewright.report.dolly.DollySightKey;
import cradlewright.report.dolly.DollySketchKey;
import cradlewright.report.dolly.DollySketchKey.VisitOn;
import cradlewright.report.dolly.DollyStand;
import cradlewright.report.scene.Scene;
import cradlewright.ui.shop.WorkingShop;
import cradlewright.ui.words.Nouns;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.osgi.util.NLS;

/** What the diagram of a dolly shows: the dolly empty, or under a visit in one situation or the worst of all. */
final class DollyPage extends ScenePage<DollySight> {

    private final Dolly dolly;
    private Optional<Visit> visit = Optional.empty();
    private Optional<String> situationId = Optional.empty();
    private List<Situation> situations = List.of();

    /** Begins with the visit that is on now, in the worst of all situations; {@code changed} is called after the scene has changed. */
    DollyPage(WorkingShop shop, Dolly dolly, Runnable changed) {
        super(shop, dolly, changed);
        this.dolly = dolly;
        begin();
    }

    /** Returns the visits that stand on this dolly. */
    private List<Visit> visits() {
        return shop().folder().cars().stream().flatMap(car -> car.getVisits().stream())
                .filter(each -> each.getStage() != null && each.getSetup() != null && each.getSetup().getDolly() == dolly).toList();
    }

    @Override
    public List<Chooser> choosers() {
        List<Visit> all = visits();
        List<String> names = new ArrayList<>(all.stream().map(DollyPage::name).toList());
        names.add(Messages.Bar_empty);
        List<String> happens = new ArrayList<>(List.of(Messages.Bar_worst));
        situations.forEach(situation -> happens.add(situation.words()));
        int chosen = 0;
        for (int i = 0; i < situations.size(); i++) {
            chosen = situationId.filter(situations.get(i).id()::equals).isPresent() ? i + 1 : chosen;
        }
        return List.of(new Chooser(Messages.Bar_under, names, visit.map(all::indexOf).orElse(all.size()),
                index -> choose(index < all.size() ? Optional.of(all.get(index)) : Optional.empty(), situationId)),
                new Chooser(Messages.Bar_situation, happens, chosen,
                        index -> choose(visit, index > 0 ? Optional.of(situations.get(index - 1).id()) : Optional.empty())));
    }

    private static String name(Visit visit) {
        return Nouns.name(visit.eContainer()) + ", " + NLS.bind(Messages.Bar_as, Nouns.name(visit), Nouns.name(visit.getStage()));
    }

    private void choose(Optional<Visit> other, Optional<String> happens) {
        visit = other;
        situationId = happens;
        chosen();
    }

    @Override
    protected void chooseUsual() {
        visit = present(visits());
        situationId = Optional.empty();
    }

    @Override
    protected boolean stillThere() {
        return visit.map(each -> visits().contains(each)).orElse(true);
    }

    @Override
    protected String nothing() {
        return dolly.getNodes().isEmpty() ? Messages.Bar_noCorners : "";
    }

    @Override
    public SceneEdits edits() {
        return new DollyEdits(shop().folder(), dolly, IdSource.secure());
    }

    /** As high as the corners where members end, in the middle. */
    @Override
    public Vec3 usualPlace() {
        Stream<DollyNode> ends = dolly.getMembers().stream().flatMap(member -> Stream.of(member.getFrom(), member.getTo()));
        List<DollyNode> nodes = dolly.getMembers().isEmpty() ? dolly.getNodes() : ends.filter(Objects::nonNull).toList();
        double height = nodes.stream().map(DollyNode::getPosition).filter(Objects::nonNull).mapToDouble(at -> at.si()[2]).min().orElse(0);
        return new Vec3(0, 0, height);
    }

    /** What stands on a fixture is drawn with it. */
    @Override
    public String drawn(String objectId) {
        return visit.stream().flatMap(each -> each.getSetup().getContacts().stream())
                .filter(contact -> contact.getFixture() != null && contact.getId().equals(objectId)).map(Contact::getFixture)
                .map(fixture -> fixture.getId()).findFirst().orElse(objectId);
    }

    private DollySketchKey key() {
        Optional<VisitOn> on = visit.map(each -> new VisitOn(((Car) each.eContainer()).getId(), each.getId()));
        return new DollySketchKey(dolly.getId(), on, situationId);
    }

    @Override
    protected Optional<? extends Key<Optional<DollySight>>> question() {
        return Optional.of(new DollySightKey(key()));
    }

    @Override
    protected Optional<DollySight> sketch(Engine engine) {
        return engine.read(key(), Progress.NONE);
    }

    @Override
    protected DollySight withNumbersOf(DollySight sketch, DollySight before) {
        return sketch.withNumbersOf(before);
    }

    @Override
    protected DollySight judged(DollySight sight, boolean foreseen) {
        situations = sight.stand().map(DollyStand::situations).orElse(List.of());
        return sight;
    }

    @Override
    protected Scene paint(DollySight sight, UnitSystem units, double text) {
        return new DollyDrawing(units).draw(sight, text);
    }

    @Override
    protected Optional<Change> moved(String thingId, Position to) {
        return DollyForesight.moved(shop().snapshot(), dolly.getId(), thingId, DollyPlace.metres(to)).map(Change::of);
    }
}
