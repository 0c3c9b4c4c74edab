package cradlewright.quantity;

import static cradlewright.quantity.QuantityFormatException.quote;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the words of a quantity in the form of the files: words parted by single blanks, symbols of units as they are. */
final class FileText {

    private static final int LONGEST = 200;
    private static final String UNCERTAINTY = "u";

    private final String text;
    private final String example;
    private final String[] words;
    private int next;

    /**
     * @param text the text of the file
     * @param example a well-formed text, for messages
     * @throws QuantityFormatException when there is no text, or blanks stand where none belong
     */
    FileText(String text, String example) {
        if (text == null || text.isBlank()) {
            throw new QuantityFormatException("nothing is written", "write it like " + example);
        }
        if (text.length() > LONGEST) {
            throw new QuantityFormatException(quote(text) + " is too long to be a quantity", "write it like " + example);
        }
        this.text = text;
        this.example = example;
        this.words = text.split(" ", -1);
        if (Arrays.stream(words).anyMatch(String::isEmpty)) {
            throw new QuantityFormatException(quote(text) + " has a blank too many",
                    "put one blank between the words and none at the ends");
        }
    }

    double number() {
        if (next == words.length) {
            throw new QuantityFormatException(quote(text) + " ends where a number is wanted", "write it like " + example);
        }
        return Numbers.parse(words[next++]);
    }

    Unit unit(Dimension dimension) {
        if (dimension == Dimension.RATIO && (atEnd() || atTail())) {
            return Unit.ONE;
        }
        if (atEnd() || atTail()) {
            throw new QuantityFormatException(quote(text) + " has no unit, " + dimension.one() + " is wanted",
                    "write one of " + Unit.list(dimension) + " after the number");
        }
        String word = words[next++];
        Unit unit = Unit.ofSymbol(word).orElseThrow(() -> unknown(word, dimension));
        if (unit.dimension() != dimension) {
            throw foreign(unit, dimension);
        }
        return unit;
    }

    private static QuantityFormatException unknown(String word, Dimension dimension) {
        Optional<Unit> meant = Unit.ofTyped(word).filter(unit -> unit.dimension() == dimension && unit != Unit.ONE);
        return meant.isPresent()
                ? new QuantityFormatException(quote(word) + " is not how files write this unit", "write " + meant.get().symbol())
                : new QuantityFormatException(quote(word) + " is not a known unit, " + dimension.one() + " is wanted",
                        "use " + Unit.list(dimension));
    }

    static QuantityFormatException foreign(Unit found, Dimension wanted) {
        boolean massAndForce = found.dimension() == Dimension.MASS && wanted == Dimension.FORCE
                || found.dimension() == Dimension.FORCE && wanted == Dimension.MASS;
        return new QuantityFormatException(
                found.symbol() + " is a unit of " + found.dimension().word() + ", " + wanted.one() + " is wanted",
                "use " + Unit.list(wanted) + (massAndForce ? "; mass and force are never turned into each other here" : ""));
    }

    OptionalDouble uncertainty() {
        if (atEnd() || !words[next].equals(UNCERTAINTY)) {
            return OptionalDouble.empty();
        }
        next++;
        double uncertainty = number();
        if (uncertainty < 0) {
            throw new QuantityFormatException(quote(text) + " has an uncertainty below zero", "write it without the minus sign");
        }
        return OptionalDouble.of(uncertainty);
    }

    Source source() {
        if (atEnd()) {
            return Source.UNSTATED;
        }
        String rest = rest();
        next = words.length;
        return Source.ofWord(rest).orElseThrow(() -> new QuantityFormatException(
                quote(rest) + " is neither an uncertainty nor a known source", "use u with a number, then " + sources()));
    }

    void end() {
        if (!atEnd()) {
            throw new QuantityFormatException(quote(rest()) + " stands after the end", "write it like " + example);
        }
    }

    static String sources() {
        return String.join(", ", Arrays.stream(Source.values()).filter(s -> s != Source.UNSTATED).map(Source::word).toList())
                + " or nothing";
    }

    static String tail(OptionalDouble uncertainty, Source source) {
        String given = uncertainty.isPresent() ? " " + UNCERTAINTY + " " + Numbers.text(uncertainty.getAsDouble()) : "";
        return source == Source.UNSTATED ? given : given + " " + source.word();
    }

    private boolean atEnd() {
        return next == words.length;
    }

    private boolean atTail() {
        return words[next].equals(UNCERTAINTY) || Source.ofWord(rest()).isPresent();
    }

    private String rest() {
        return String.join(" ", Arrays.asList(words).subList(next, words.length));
    }
}
