package cradlewright.ui.wizards;

import cradlewright.analysis.check.Subject;
import cradlewright.analysis.facts.Change;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.model.base.Condition;
import cradlewright.model.base.Named;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.Setup;
import cradlewright.model.fixture.SetupKind;
import cradlewright.model.io.IdSource;
import cradlewright.model.stock.Stock;
import cradlewright.model.stock.StockFactory;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Construction;
import cradlewright.model.vehicle.Mount;
import cradlewright.model.vehicle.MountState;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.PieceKind;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Loads a planned dolly with a shell that is not there, so that the checks can speak about the dolly before it is made. The shell rests
 * on all fixtures; its balance point lies over the middle of the dolly, half a metre over the fixtures.
 */
final class TrialLoad {

    private static final double BALANCE_POINT_ABOVE = 500;
    private static final double OVERHANG = 500;

    private final IdSource ids = IdSource.secure();
    private final DollyPlan plan;
    private final Dolly dolly = named(FixtureFactory.eINSTANCE.createDolly(), Messages.Trial_dolly);
    private final Car car = named(VehicleFactory.eINSTANCE.createCar(), Messages.Trial_car);
    private final Stock stock = StockFactory.eINSTANCE.createStock();

    /**
     * @param plan the dolly
     * @param mass what the heaviest shell weighs with all that stays on it, kg
     */
    TrialLoad(DollyPlan plan, double mass) {
        this.plan = plan;
        plan.fill(dolly, stock, ids);
        load(mass);
    }

    private void load(double mass) {
        VehicleFactory make = VehicleFactory.eINSTANCE;
        Part part = named(make.createPart(), Messages.Trial_shell);
        part.setMass(Measured.of(mass, Unit.KILOGRAM, Source.WEIGHED));
        part.setPosition(Position.of(plan.length() / 2, 0, plan.height() + BALANCE_POINT_ABOVE));
        Piece shell = named(make.createPiece(), Messages.Trial_shell);
        shell.setKind(PieceKind.SHELL);
        shell.getParts().add(part);
        double half = plan.width() / 2;
        for (double[] corner : new double[][] {{-OVERHANG, -half}, {plan.length() + OVERHANG, -half}, {plan.length() + OVERHANG, half},
            {-OVERHANG, half}}) {
            shell.getOutline().add(Position.of(corner[0], corner[1], 0));
        }
        car.setConstruction(Construction.SEPARATE_CHASSIS);
        car.getPieces().add(shell);
        Stage stage = named(make.createStage(), Messages.Car_allOn);
        stage.getOn().add(part);
        car.getStages().add(stage);
        Setup setup = setup(shell);
        car.getSetups().add(setup);
        Visit visit = named(make.createVisit(), Messages.Trial_shell);
        visit.setStage(stage);
        visit.setSetup(setup);
        visit.setCurrent(true);
        car.getVisits().add(visit);
    }

    private Setup setup(Piece shell) {
        Setup setup = named(FixtureFactory.eINSTANCE.createSetup(), Messages.Trial_setup);
        setup.setKind(SetupKind.ON_DOLLY);
        setup.setDolly(dolly);
        setup.getCarried().add(shell);
        setup.setShift(Position.of(0, 0, 0));
        setup.setCovered(false);
        setup.setOutdoors(false);
        for (Fixture fixture : dolly.getFixtures()) {
            Contact contact = named(FixtureFactory.eINSTANCE.createContact(), fixture.getName());
            Position below = fixture.getNode().getPosition();
            Mount mount = named(VehicleFactory.eINSTANCE.createMount(), fixture.getName());
            mount.setPosition(Position.of(below.x(), below.y(), plan.height()));
            mount.setCondition(Condition.SOUND);
            mount.setState(MountState.FREE);
            car.getMounts().add(mount);
            contact.setMount(mount);
            contact.setFixture(fixture);
            setup.getContacts().add(contact);
        }
        return setup;
    }

    /** Returns the records by which the shop would differ. */
    Change change() {
        List<Fact> facts = new ArrayList<>();
        List.of(stock, dolly, car).forEach(root -> facts.addAll(ShopImporter.importRoot(root)));
        return new Change(facts, Optional.empty());
    }

    /** Tells whether a check speaks about this dolly or what stands on it. */
    boolean isMeant(Subject subject) {
        return subject.ownerId().equals(dolly.getId()) || subject.ownerId().equals(car.getId());
    }

    private <T extends Named> T named(T object, String name) {
        object.setName(name);
        return ids.give(object);
    }
}
