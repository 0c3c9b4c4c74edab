package cradlewright.ui.parts;

import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Where the parts and temporary loads of a car are on a day, as far as its visits say. */
final class WhereNow {

    private WhereNow() {
    }

    /** Returns the words for each id; one that is missing is where nobody said. */
    static Map<String, String> of(CarFacts car, LocalDate day) {
        Map<String, Set<String>> found = new LinkedHashMap<>();
        Set<String> off = new LinkedHashSet<>();
        for (VisitFacts visit : car.visitsOn(day)) {
            visit.setupId().flatMap(car::setup).ifPresent(setup -> visit.stageId().flatMap(car::stage).ifPresent(stage -> {
                note(car, setup, stage, found, off);
                stage.loadIds().forEach(id -> found.computeIfAbsent(id, key -> new LinkedHashSet<>()).add(setup.name()));
            }));
        }
        Map<String, String> words = off.stream().collect(Collectors.toMap(id -> id, id -> Messages.Where_off));
        found.forEach((id, places) -> words.put(id, String.join(", ", places)));
        return words;
    }

    private static void note(CarFacts car, SetupFacts setup, StageFacts stage, Map<String, Set<String>> found, Set<String> off) {
        for (PieceFacts piece : car.pieces()) {
            if (setup.pieceIds().contains(piece.id())) {
                for (PartFacts part : piece.parts()) {
                    if (stage.partIds().contains(part.id())) {
                        found.computeIfAbsent(part.id(), key -> new LinkedHashSet<>()).add(setup.name());
                    } else {
                        off.add(part.id());
                    }
                }
            }
        }
    }
}
