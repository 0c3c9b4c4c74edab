package cradlewright.analysis.checks.stand;

import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A stand, trestle or trailer of a standing with the contacts that rest on it.
 *
 * @param gear the stand
 * @param contactIds what rests on it
 */
record StandUse(GearFacts gear, List<String> contactIds) {

    static List<StandUse> of(Standing standing) {
        Map<GearFacts, List<String>> contacts = new LinkedHashMap<>();
        for (Support support : standing.supports()) {
            if (support.holder() instanceof Holder.OnStand on) {
                contacts.computeIfAbsent(on.stand(), stand -> new ArrayList<>()).add(support.contactId());
            }
        }
        return contacts.entrySet().stream().map(use -> new StandUse(use.getKey(), List.copyOf(use.getValue()))).toList();
    }
}
