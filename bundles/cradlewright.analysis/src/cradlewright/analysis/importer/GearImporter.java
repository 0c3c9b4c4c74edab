package cradlewright.analysis.importer;

import static cradlewright.analysis.importer.Identity.each;
import static cradlewright.analysis.importer.Identity.id;
import static cradlewright.analysis.importer.Identity.name;

import cradlewright.analysis.facts.GearFacts;
import cradlewright.model.fixture.BoomHole;
import cradlewright.model.fixture.Gear;
import cradlewright.model.fixture.Hoist;
import cradlewright.model.fixture.Lift;
import cradlewright.model.fixture.LiftArm;
import cradlewright.model.fixture.Stand;
import cradlewright.model.fixture.Strap;
import cradlewright.model.fixture.StrapMode;
import cradlewright.model.fixture.Trailer;
import cradlewright.model.fixture.Trestle;
import java.util.Optional;

/** Reads lifting gear. */
final class GearImporter {

    private GearImporter() {
    }

    static GearFacts gear(Gear gear) {
        if (gear instanceof Lift lift) {
            return lift(lift);
        }
        if (gear instanceof Hoist hoist) {
            return new GearFacts.Hoist(id(hoist), name(hoist), Words.examination(hoist), Values.rating(hoist.getRatedLoad()),
                    each(hoist.getBoomHoles(), GearImporter::hole));
        }
        if (gear instanceof Strap strap) {
            return new GearFacts.Strap(id(strap), name(strap), Words.examination(strap), Values.rating(strap.getWorkingLoadLimit()),
                    Values.si(strap.getLength()), mode(strap.getMode()), Values.si(strap.getStiffness()),
                    Values.count(strap.getLegs()));
        }
        if (gear instanceof Stand stand) {
            return new GearFacts.Stand(id(stand), name(stand), Words.examination(stand), Values.rating(stand.getRatedLoad()),
                    Optional.ofNullable(stand.getPerPair()), Values.si(stand.getLowest()), Values.si(stand.getStep()),
                    Values.count(stand.getPinCount()));
        }
        if (gear instanceof Trestle trestle) {
            return new GearFacts.Trestle(id(trestle), name(trestle), Words.examination(trestle),
                    Values.rating(trestle.getRatedLoad()));
        }
        if (gear instanceof Trailer trailer) {
            return new GearFacts.Trailer(id(trailer), name(trailer), Words.examination(trailer),
                    Values.rating(trailer.getRatedLoad()));
        }
        throw new IllegalArgumentException("no record for gear of the class " + gear.eClass().getName());
    }

    private static GearFacts.Lift lift(Lift lift) {
        return new GearFacts.Lift(id(lift), name(lift), Words.examination(lift), Values.rating(lift.getRatedLoad()),
                Values.number(lift.getFrontRearLow()), Values.number(lift.getFrontRearHigh()),
                each(lift.getArms(), GearImporter::arm));
    }

    private static GearFacts.ArmFacts arm(LiftArm arm) {
        return new GearFacts.ArmFacts(id(arm), name(arm), Values.point(arm.getPivot()), Values.si(arm.getReachMin()),
                Values.si(arm.getReachMax()), Values.si(arm.getAzimuthFrom()), Values.si(arm.getAzimuthTo()),
                Values.rating(arm.getRatedLoad()), Values.si(arm.getStiffness()), Values.si(arm.getPadStiffness()));
    }

    private static GearFacts.HoleFacts hole(BoomHole hole) {
        return new GearFacts.HoleFacts(id(hole), name(hole), Values.point(hole.getPosition()), Values.rating(hole.getRatedLoad()));
    }

    /** Returns how a strap is slung; choked when nobody said, because it carries least that way. */
    private static GearFacts.Mode mode(StrapMode mode) {
        if (mode == null) {
            return GearFacts.Mode.CHOKED;
        }
        return switch (mode) {
            case STRAIGHT -> GearFacts.Mode.STRAIGHT;
            case CHOKED -> GearFacts.Mode.CHOKED;
            case BASKET -> GearFacts.Mode.BASKET;
        };
    }
}
