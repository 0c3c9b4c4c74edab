package cradlewright.analysis.standing;

import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.MountFacts;
import java.util.Optional;

/** What is below, or above, a carried piece at one contact. */
public sealed interface Holder {

    /** Returns what people call it. */
    String name();

    /** A fixture on a dolly. */
    record OnFixture(FixtureFacts fixture) implements Holder {
        @Override
        public String name() {
            return fixture.name();
        }
    }

    /** A stand, trestle or trailer. */
    record OnStand(GearFacts stand) implements Holder {
        @Override
        public String name() {
            return stand.name();
        }
    }

    /** An arm of a lift. */
    record OnArm(GearFacts.Lift lift, GearFacts.ArmFacts arm) implements Holder {
        @Override
        public String name() {
            return arm.name();
        }
    }

    /** A strap that hangs from an arm of a lift or from a hoist. */
    record InStrap(GearFacts.Strap strap) implements Holder {
        @Override
        public String name() {
            return strap.name();
        }
    }

    /** A body mount of the chassis below. */
    record OnChassis(MountFacts mount) implements Holder {
        @Override
        public String name() {
            return "chassis at " + mount.name();
        }
    }

    /** The file does not say, or names something that is not there. */
    record Unknown() implements Holder {
        @Override
        public String name() {
            return "nothing named";
        }
    }

    /** Returns the tag of lifting gear; nothing for a fixture or the chassis. */
    default Optional<Examination> examination() {
        if (this instanceof OnStand on) {
            return Optional.of(on.stand().examination());
        }
        if (this instanceof OnArm on) {
            return Optional.of(on.lift().examination());
        }
        if (this instanceof InStrap in) {
            return Optional.of(in.strap().examination());
        }
        return Optional.empty();
    }
}
