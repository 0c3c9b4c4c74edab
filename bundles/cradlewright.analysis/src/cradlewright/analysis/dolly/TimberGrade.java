package cradlewright.analysis.dolly;

import cradlewright.analysis.facts.StockFacts;
import cradlewright.mechanics.timber.TimberClass;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The strength class of a timber in stock, read off its name as it is off the stamp. */
public final class TimberGrade {

    private TimberGrade() {
    }

    /** Returns the class that the name holds, for example C24 of {@code spruce C24}; nothing when it names none. */
    public static Optional<TimberClass> of(StockFacts.Timber timber) {
        String name = timber.name().toUpperCase(Locale.ROOT);
        return Stream.of(TimberClass.values()).filter(grade -> name.contains(grade.name())).findFirst();
    }
}
