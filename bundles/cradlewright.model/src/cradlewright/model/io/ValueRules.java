package cradlewright.model.io;

import cradlewright.model.base.Named;
import cradlewright.model.base.Settings;
import cradlewright.model.base.Shop;
import cradlewright.model.fixture.Contact;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.Lift;
import cradlewright.model.fixture.LiftArm;
import cradlewright.model.fixture.Member;
import cradlewright.model.job.Booking;
import cradlewright.model.job.Operation;
import cradlewright.model.job.Wait;
import cradlewright.model.stock.FoldedSection;
import cradlewright.model.stock.HollowSection;
import cradlewright.model.stock.RoundTube;
import cradlewright.model.vehicle.CutZone;
import cradlewright.model.vehicle.Shim;
import cradlewright.model.vehicle.Visit;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Finds values that cannot be true whatever the car: a thickness of nothing, a mass below zero, a length of a thousand
 * kilometres, a range whose end lies before its beginning, work that belongs to no car. A missing value is no mistake. Signs
 * and sizes stand beside the nouns in the metamodel.
 */
public final class ValueRules {

    private static final String MEASURE_AGAIN = "look it up again, or delete the value: missing means not known";

    private final ShopFile file;
    private final List<ReadProblem> problems = new ArrayList<>();

    private ValueRules(ShopFile file) {
        this.file = file;
    }

    /** Judges all files of a shop as they are now. */
    public static List<ReadProblem> check(ShopFolder shop) {
        return shop.files().stream().flatMap(file -> check(file).stream()).toList();
    }

    /** Judges one file as it is now. */
    public static List<ReadProblem> check(ShopFile file) {
        ValueRules rules = new ValueRules(file);
        file.root().ifPresent(top -> Contents.walk(top, rules::judge));
        rules.problems.addAll(WorkRules.check(file));
        return List.copyOf(rules.problems);
    }

    /**
     * Returns the mistakes and warnings that an object would have with another value of one feature and does not have now. The object
     * stays as it is; what a value means together with other objects of its file is not judged.
     *
     * @param value null for not known
     */
    public static List<ReadProblem> foresee(ShopFile file, EObject object, EStructuralFeature feature, Object value) {
        EObject likeness = likeness(object);
        ValueRules now = new ValueRules(file);
        now.judge(likeness);
        List<String> known = now.problems.stream().map(ReadProblem::what).toList();
        likeness.eSet(feature, value);
        ValueRules then = new ValueRules(file);
        then.judge(likeness);
        return then.problems.stream().filter(problem -> !known.contains(problem.what())).toList();
    }

    /** Returns a new object with the values and single references of another, in no file. */
    private static EObject likeness(EObject object) {
        EObject likeness = EcoreUtil.create(object.eClass());
        for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
            boolean single = feature instanceof EReference reference && !reference.isContainment() && !reference.isMany();
            if (feature instanceof EAttribute || single) {
                likeness.eSet(feature, object.eGet(feature, false));
            }
        }
        return likeness;
    }

    private void judge(EObject object) {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            Object value = object.eGet(attribute);
            if (value instanceof List<?> values) {
                values.forEach(each -> judge(object, attribute, each));
            } else if (value != null) {
                judge(object, attribute, value);
            }
        }
        if (object instanceof Named named && (named.getName() == null || named.getName().isBlank())) {
            add(object, "name", "the name is missing", "give it the name it has in the shop", Severity.WARNING);
        }
        judgeTogether(object);
    }

    private void judge(EObject object, EAttribute attribute, Object value) {
        if (value instanceof Measured measured) {
            sign(object, attribute, measured.value(), measured.text());
            size(object, attribute, measured.value(), measured.text());
            measured.uncertainty().ifPresent(u -> size(object, attribute, u, measured.text()));
            if (measured.dimension() == Dimension.TEMPERATURE && measured.si() < 0) {
                error(object, attribute.getName(),
                        Words.of(attribute) + " is " + measured.text() + ", colder than anything can be", MEASURE_AGAIN);
            }
        } else if (value instanceof Position position) {
            double farthest = Math.max(Math.abs(position.x()), Math.max(Math.abs(position.y()), Math.abs(position.z())));
            size(object, attribute, Math.max(farthest, position.uncertainty().orElse(0)), position.text());
        } else if (value instanceof Integer number) {
            sign(object, attribute, number, number.toString());
        }
    }

    private void sign(EObject object, EAttribute attribute, double value, String text) {
        if (value <= 0 && Rules.wantsPositive(attribute)) {
            error(object, attribute.getName(), Words.of(attribute) + " is " + text + ", more than 0 is wanted", MEASURE_AGAIN);
        } else if (value < 0 && Rules.refusesNegative(attribute)) {
            error(object, attribute.getName(), Words.of(attribute) + " is " + text + ", 0 or more is wanted", MEASURE_AGAIN);
        }
    }

    private void size(EObject object, EAttribute attribute, double value, String text) {
        OptionalDouble most = Rules.most(attribute.getEAttributeType());
        if (most.isPresent() && Math.abs(value) > most.getAsDouble()) {
            error(object, attribute.getName(), Words.of(attribute) + " is " + text + ", beyond anything in a shop (the limit is "
                    + (long) most.getAsDouble() + ")", "check digits, exponent and unit");
        }
    }

    private void judgeTogether(EObject object) {
        if (object instanceof Shop shop) {
            zone(shop);
        } else if (object instanceof Settings settings) {
            order(object, "frictionHigh", settings.getFrictionLow(), settings.getFrictionHigh());
        } else if (object instanceof Lift lift) {
            order(object, "frontRearHigh", lift.getFrontRearLow(), lift.getFrontRearHigh());
        } else if (object instanceof LiftArm arm) {
            order(object, "reachMax", arm.getReachMin(), arm.getReachMax());
        } else if (object instanceof Operation operation) {
            order(object, "likely", operation.getBest(), operation.getLikely());
            order(object, "worst", operation.getLikely(), operation.getWorst());
            order(object, "worst", operation.getBest(), operation.getWorst());
        } else if (object instanceof Visit visit) {
            dates(object, "to", visit.getFrom(), visit.getTo());
        } else if (object instanceof Booking booking) {
            dates(object, "to", booking.getFrom(), booking.getTo());
        } else if (object instanceof Wait wait) {
            dates(object, "until", wait.getSince(), wait.getUntil());
        } else if (object instanceof CutZone zone) {
            corners(zone);
        } else {
            judgeParts(object);
        }
    }

    private void judgeParts(EObject object) {
        if (object instanceof HollowSection hollow) {
            walls(object, hollow.getThickness(), hollow.getHeight());
            walls(object, hollow.getThickness(), hollow.getWidth());
        } else if (object instanceof RoundTube tube) {
            walls(object, tube.getThickness(), tube.getDiameter());
        } else if (object instanceof FoldedSection folded) {
            if (folded.getPoints().stream().anyMatch(point -> point.x() != 0)) {
                error(object, "points", "a point of the outline has an x other than 0", "write 0, then y and z of the point");
            }
        } else if (object instanceof Shim shim) {
            oneOf(object, "shim or a loose thickness", shim.getShim(), shim.getLoose());
        } else if (object instanceof Fixture fixture) {
            oneOf(object, "node or a member", fixture.getNode(), fixture.getMember());
        } else if (object instanceof Contact contact) {
            oneOf(object, "mount, a lift point or a point of the car", contact.getMount(), contact.getLiftPoint(),
                    contact.getPoint());
            oneOf(object, "fixture, a stand, a trestle, an arm, a strap or a chassis mount below", contact.getFixture(),
                    contact.getStand(), contact.getTrestle(), contact.getArm(), contact.getStrap(), contact.getChassisMount());
        } else if (object instanceof Member member && member.getFrom() != null && member.getFrom() == member.getTo()) {
            error(object, "to", "the member begins and ends at the same node", "choose another node for one end");
        }
    }

    private void zone(Shop shop) {
        try {
            if (shop.getZone() != null) {
                ZoneId.of(shop.getZone());
            }
        } catch (DateTimeException e) {
            error(shop, "zone", "the time zone " + Words.quote(shop.getZone()) + " is not known",
                    "write a name of the tz database, as in Etc/UTC");
        }
    }

    private void order(EObject object, String feature, Measured low, Measured high) {
        if (low != null && high != null && low.si() > high.si()) {
            error(object, feature, low.text() + " to " + high.text() + " is a range whose end lies before its beginning",
                    "exchange or correct the two");
        }
    }

    private <T extends Comparable<? super T>> void dates(EObject object, String feature, T from, T to) {
        if (from != null && to != null && from.compareTo(to) > 0) {
            error(object, feature, from + " to " + to + " ends before it begins", "exchange or correct the two");
        }
    }

    private void corners(CutZone zone) {
        Position low = zone.getLow();
        Position high = zone.getHigh();
        if (low != null && high != null && (low.x() > high.x() || low.y() > high.y() || low.z() > high.z())) {
            error(zone, "high", "the high corner " + high.text() + " has a smaller number than the low corner " + low.text(),
                    "write the least x, y and z into low and the largest into high");
        }
    }

    private void walls(EObject object, Measured thickness, Measured outside) {
        if (thickness != null && outside != null && 2 * thickness.si() >= outside.si()) {
            error(object, "thickness", "two walls of " + thickness.text() + " leave no hollow in " + outside.text(),
                    "check the thickness and the outside size");
        }
    }

    private void oneOf(EObject object, String choice, Object... choices) {
        long given = Stream.of(choices).filter(Objects::nonNull).count();
        if (given > 1) {
            error(object, "", given + " are named where there can be only one: a " + choice, "keep one and delete the others");
        } else if (given == 0) {
            add(object, "", "nothing is named where there must be one: a " + choice, "name it", Severity.WARNING);
        }
    }

    private void error(EObject object, String feature, String what, String mend) {
        add(object, feature, what, mend, Severity.ERROR);
    }

    private void add(EObject object, String feature, String what, String mend, Severity severity) {
        problems.add(file.problem(object, feature, what, mend, severity));
    }
}
