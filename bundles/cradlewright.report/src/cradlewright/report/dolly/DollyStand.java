package cradlewright.report.dolly;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.load.DollyShape;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.List;
import java.util.Optional;

/**
 * What stands on a dolly, and what that does to it.
 *
 * @param standing the car as it stands
 * @param situations all that may happen
 * @param chosen the one that is shown; nothing for the worst of all for each part
 * @param loads what is carried in each situation that is shown
 * @param shape how the dolly bends, in the situation shown in which it bends most; nothing when that is not known
 * @param uses the answers about its parts
 * @param outdated whether the numbers are those from before an edit
 */
public record DollyStand(Standing standing, List<Situation> situations, Optional<Situation> chosen, List<Loads> loads,
        Optional<DollyShape> shape, List<Finding> uses, boolean outdated) {

    /** Copies the lists. */
    public DollyStand {
        situations = List.copyOf(situations);
        loads = List.copyOf(loads);
        uses = List.copyOf(uses);
    }

    /** Returns this standing with the numbers of before. */
    DollyStand withNumbersOf(DollyStand before) {
        return new DollyStand(standing, situations, chosen, before.loads, before.shape, before.uses, true);
    }

    /** Tells whether the worst of all situations is shown. */
    boolean worst() {
        return chosen.isEmpty();
    }

    /** Returns what a castor, foot or prop carries. */
    Optional<DollyCarried> carried(String id) {
        return DollyCarried.most(loads, id);
    }

    /** Returns what a fixture carries; nothing when nothing stands on it. */
    Optional<DollyCarried> carried(FixtureFacts fixture) {
        return support(fixture).map(Support::contactId).flatMap(this::carried);
    }

    /** Returns the support of the car that stands on a fixture. */
    Optional<Support> support(FixtureFacts fixture) {
        return standing.supports().stream().filter(support -> support.fixture().filter(fixture::equals).isPresent()).findFirst();
    }

    /** Returns how far a thing is used. */
    Use use(String id) {
        return Use.of(uses.stream().filter(finding -> finding.objectId().equals(id)).toList());
    }

    /** Returns the first situation without an answer. */
    Optional<Loads> open() {
        return loads.stream().filter(answer -> !answer.found()).findFirst();
    }
}
