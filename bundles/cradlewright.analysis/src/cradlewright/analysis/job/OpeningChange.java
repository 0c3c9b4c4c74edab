package cradlewright.analysis.job;

import cradlewright.analysis.facts.ApertureFacts;
import cradlewright.analysis.facts.Value;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * An opening before and after something was done to the shell.
 *
 * @param opening which one
 * @param before the last reading from before the day, or the first of the day
 * @param after the last reading behind that one, from the day on
 */
public record OpeningChange(String opening, ApertureFacts.Reading before, Optional<ApertureFacts.Reading> after) {

    /** Returns the openings that were measured before the work of a day began, by name; readings without a time do not count. */
    public static List<OpeningChange> over(LocalDate day, List<ApertureFacts.Reading> readings) {
        Map<String, List<ApertureFacts.Reading>> byOpening = readings.stream().filter(reading -> reading.at().isPresent())
                .sorted(Comparator.comparing(OpeningChange::moment))
                .collect(Collectors.groupingBy(reading -> reading.aperture().orElse("an opening without a name"), TreeMap::new,
                        Collectors.toList()));
        List<OpeningChange> changes = new ArrayList<>();
        byOpening.forEach((opening, all) -> before(day, all).ifPresent(before -> changes.add(new OpeningChange(opening, before,
                last(all.stream().filter(reading -> moment(reading).isAfter(moment(before)) && !date(reading).isBefore(day)).toList())))));
        return changes;
    }

    private static Optional<ApertureFacts.Reading> before(LocalDate day, List<ApertureFacts.Reading> all) {
        return last(all.stream().filter(reading -> date(reading).isBefore(day)).toList())
                .or(() -> all.stream().filter(reading -> date(reading).equals(day)).findFirst());
    }

    private static Optional<ApertureFacts.Reading> last(List<ApertureFacts.Reading> all) {
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    private static LocalDateTime moment(ApertureFacts.Reading reading) {
        return reading.at().orElseThrow();
    }

    private static LocalDate date(ApertureFacts.Reading reading) {
        return moment(reading).toLocalDate();
    }

    /** Tells whether the same diagonals were measured after as before, so that they can be compared. */
    public boolean comparable() {
        return !before.diagonals().isEmpty() && before.diagonals().size() == then().size();
    }

    /** Returns by how much the diagonal that changed most has changed, m. */
    public double largest() {
        return diagonals().mapToDouble(this::change).max().orElse(0);
    }

    /**
     * Tells whether a diagonal has changed by more than two readings may differ although nothing moved: twice the root of the sum of the
     * squares of their uncertainties, or what they differ by anyway.
     *
     * @param least what two readings differ by anyway, m
     */
    public boolean moved(double least) {
        return diagonals().anyMatch(i -> change(i) > Math.max(least, Value.COVERAGE * Math.hypot(before.diagonals().get(i).u(),
                then().get(i).u())));
    }

    private IntStream diagonals() {
        return IntStream.range(0, Math.min(before.diagonals().size(), then().size()));
    }

    private double change(int i) {
        return Math.abs(then().get(i).si() - before.diagonals().get(i).si());
    }

    private List<Value> then() {
        return after.map(ApertureFacts.Reading::diagonals).orElse(List.of());
    }
}
