package cradlewright.analysis.checks.stand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Input;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.engine.Engine;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Progress;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.importer.ShopImporter;
import cradlewright.model.base.Identified;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.GearStore;
import cradlewright.model.fixture.Setup;
import cradlewright.model.fixture.SetupKind;
import cradlewright.model.fixture.Stand;
import cradlewright.model.vehicle.Car;
import cradlewright.model.vehicle.Part;
import cradlewright.model.vehicle.Piece;
import cradlewright.model.vehicle.PieceKind;
import cradlewright.model.vehicle.Stage;
import cradlewright.model.vehicle.VehicleFactory;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * From what the files say of the gaps at four stands to the answer: 4000 N in the middle of a rectangle, each stand 1 kN/mm, a rigid body.
 * One millimetre at one stand moves 250 N (own derivation, checked by four equations of equilibrium and twist).
 */
class HeightsOfStandsTest {

    private static final VehicleFactory CARS = VehicleFactory.eINSTANCE;
    private static final FixtureFactory FIXTURES = FixtureFactory.eINSTANCE;
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    /** What the check answers. */
    private record Asked(Check check, Subject subject) implements Key<List<Finding>> {

        @Override
        public List<Finding> compute(Reader reader) {
            return check.examine(subject, reader);
        }
    }

    private static <T extends Identified> T with(T object, String id) {
        object.setId(id);
        return object;
    }

    private static Finding first(String gap, String others) {
        Part body = with(CARS.createPart(), "body");
        body.setMass(Measured.parse("407.886 kg u 0 weighed", Dimension.MASS));
        body.setPosition(Position.parse("0 0 400 mm u 0 measured"));
        Piece chassis = with(CARS.createPiece(), "chassis");
        chassis.setKind(PieceKind.CHASSIS);
        chassis.setTorsionalStiffness(Measured.parse("50000 N*m/deg u 0 measured", Dimension.TORSIONAL_STIFFNESS));
        chassis.getParts().add(body);
        GearStore gear = FIXTURES.createGearStore();
        Setup setup = with(FIXTURES.createSetup(), "setup");
        setup.setKind(SetupKind.ON_STANDS);
        setup.getCarried().add(chassis);
        String[] corners = {"-900 -500", "-900 500", "900 500", "900 -500"};
        for (int i = 0; i < corners.length; i++) {
            Stand stand = with(FIXTURES.createStand(), "stand" + i);
            gear.getItems().add(stand);
            Contact contact = with(FIXTURES.createContact(), "contact" + i);
            contact.setPoint(Position.parse(corners[i] + " 0 mm"));
            contact.setStand(stand);
            contact.setStiffness(Measured.parse("1 kN/mm", Dimension.STIFFNESS));
            contact.setGap(Measured.parse(i == 0 ? gap : others, Dimension.LENGTH));
            setup.getContacts().add(contact);
        }
        Stage stage = with(CARS.createStage(), "stage");
        stage.getOn().add(body);
        Visit visit = with(CARS.createVisit(), "visit");
        visit.setStage(stage);
        visit.setSetup(setup);
        Car car = with(CARS.createCar(), "car");
        car.getPieces().add(chassis);
        car.getSetups().add(setup);
        car.getStages().add(stage);
        car.getVisits().add(visit);
        Engine engine = new Engine();
        engine.update(ShopImporter.importShop(List.of(gear, car), DAY, 1));
        Subject subject = new Subject(Scope.VISIT, "car", Optional.of("visit"), "car, visit");
        return engine.read(new Asked(new StandIdleCheck(), subject), Progress.NONE).get(0);
    }

    private static Input heights(Finding finding) {
        return finding.inputs().stream().filter(input -> input.name().equals("give or take of heights that counts")).findFirst()
                .orElseThrow();
    }

    @Test
    void stopsWhereTheHeightsLeaveItTooLittle() {
        // 1000 - 250 * 2.8 = 300 N, less 2 * 250 * sqrt(0.5^2 + 3 * 0.1^2) = 264.575 N leaves 35.425 N; a tenth of the mean is 100 N.
        Finding finding = first("2.8 mm u 0.5 measured", "0 mm u 0.1 measured");
        assertEquals(Verdict.STOP, finding.verdict(), finding::toString);
        assertEquals(35.425, finding.capacity().orElseThrow().si(), 0.01);
        assertEquals(100, finding.demand().orElseThrow().si(), 0.01);
        assertEquals(Amount.length(0.001), heights(finding).amount());
    }

    @Test
    void holdsWhereTheyWereTakenCloser() {
        // 2 * 250 * 0.1 * 2 = 100 N leaves 200 N.
        Finding finding = first("2.8 mm u 0.1 measured", "0 mm u 0.1 measured");
        assertEquals(Verdict.HOLDS, finding.verdict(), finding::toString);
        assertEquals(200, finding.capacity().orElseThrow().si(), 0.01);
    }

    @Test
    void takesHeightsAsStatedWhereNobodyToldAndSaysSo() {
        Finding finding = first("2.8 mm measured", "0 mm measured");
        assertEquals(Verdict.HOLDS, finding.verdict(), finding::toString);
        assertEquals(300, finding.capacity().orElseThrow().si(), 0.01);
        assertEquals("nobody stated any: heights are taken as stated", heights(finding).origin());
    }
}
