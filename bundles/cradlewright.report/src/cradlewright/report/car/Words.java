package cradlewright.report.car;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.BalanceWords;
import cradlewright.report.UnitSystem;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Numbers and conditions in words, in the units of the reader. */
record Words(UnitSystem units) {

    /** Joins what is not empty. */
    static String join(String... parts) {
        return Stream.of(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining("; "));
    }

    String force(double newtons) {
        return units.text(Amount.force(newtons));
    }

    String mass(double kilograms) {
        return units.text(Amount.mass(kilograms));
    }

    String length(double metres) {
        return units.text(Amount.length(metres));
    }

    /** Returns a length, or that nobody measured it. */
    String length(Optional<Value> value) {
        return value.map(v -> length(v.si())).orElse("not measured");
    }

    /** Returns where a place on the car is. */
    String place(Optional<Spot> spot) {
        return spot.map(Spot::at).map(this::place).orElse("not measured");
    }

    /** Returns where a place on the car is, from the zero of its marks. */
    String place(Vec3 at) {
        return BalanceWords.along(at.x(), units) + ", " + BalanceWords.across(at.y(), units) + ", " + length(at.z()) + " up";
    }

    static String condition(Condition condition) {
        return switch (condition) {
            case SOUND -> "sound";
            case THIN -> "thin";
            case HOLED -> "holed";
            case REPAIRED -> "repaired";
            case NOT_LOOKED_AT -> "not looked at";
        };
    }

    /** Returns a name, with the condition unless it is sound. */
    static String named(String name, Condition condition) {
        return condition == Condition.SOUND ? name : name + ": " + condition(condition);
    }

    static String hold(Hold hold) {
        return switch (hold) {
            case RESTS -> "rests";
            case PINNED -> "pinned";
            case BOLTED -> "bolted";
        };
    }
}
