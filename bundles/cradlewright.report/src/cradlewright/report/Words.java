package cradlewright.report;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Numbers and conditions in words, in the units of the reader. */
public record Words(UnitSystem units) {

    /** Joins what is not empty. */
    public static String join(String... parts) {
        return Stream.of(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining("; "));
    }

    public String force(double newtons) {
        return units.text(Amount.force(newtons));
    }

    public String mass(double kilograms) {
        return units.text(Amount.mass(kilograms));
    }

    public String length(double metres) {
        return units.text(Amount.length(metres));
    }

    /** Returns a length, or that nobody measured it. */
    public String length(Optional<Value> value) {
        return value.map(v -> length(v.si())).orElse("not measured");
    }

    /** Returns where a place on the car is. */
    public String place(Optional<Spot> spot) {
        return spot.map(Spot::at).map(this::place).orElse("not measured");
    }

    /** Returns where a place on the car is, from the zero of its marks. */
    public String place(Vec3 at) {
        return BalanceWords.along(at.x(), units) + ", " + BalanceWords.across(at.y(), units) + ", " + length(at.z()) + " up";
    }

    public static String condition(Condition condition) {
        return switch (condition) {
            case SOUND -> "sound";
            case THIN -> "thin";
            case HOLED -> "holed";
            case REPAIRED -> "repaired";
            case NOT_LOOKED_AT -> "not looked at";
        };
    }

    /** Returns a name, with the condition unless it is sound. */
    public static String named(String name, Condition condition) {
        return condition == Condition.SOUND ? name : name + ": " + condition(condition);
    }

    public static String hold(Hold hold) {
        return switch (hold) {
            case RESTS -> "rests";
            case PINNED -> "pinned";
            case BOLTED -> "bolted";
        };
    }
}
