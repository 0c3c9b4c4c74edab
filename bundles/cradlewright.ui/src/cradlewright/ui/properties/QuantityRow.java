package cradlewright.ui.properties;

import cradlewright.quantity.Position;
import cradlewright.quantity.QuantityFormatException;
import cradlewright.quantity.Source;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;

/** A quantity or a position: value, give or take and source beside each other, each of which can be edited for itself. */
public final class QuantityRow extends Row {

    private final QuantityTyping typing;

    /**
     * Makes the row.
     *
     * @param feature holds a quantity or a position
     */
    public QuantityRow(Chosen chosen, EStructuralFeature feature) {
        super(chosen, feature);
        this.typing = Typing.quantity(feature, chosen.habits());
    }

    /** Tells whether it is a position. */
    boolean place() {
        return feature().getEType().getInstanceClass() == Position.class;
    }

    /** Returns the value with its unit; empty when it is not known or when they differ. */
    public String value() {
        return shared(known -> known.show(habits())).orElse("");
    }

    /** Returns the give or take with its unit; empty when none was given or when they differ. */
    public String giveOrTake() {
        return shared(this::giveOrTake).orElse("");
    }

    /** Returns the give or take that the source alone tells; empty when one was given, or when the source tells none. */
    public String usual() {
        return shared(known -> known.giveOrTake().isPresent() || known.usual().isEmpty() ? ""
                : habits().showDifference(known.usual().getAsDouble(), known.dimension())).orElse("");
    }

    /** Returns what the give or take is about, in words. */
    String aboutGiveOrTake() {
        return usual().isEmpty() ? NLS.bind(Messages.Name_giveOrTake, label())
                : NLS.bind(Messages.Give_usual, usual(), source().map(Source::word).orElse(""));
    }

    /** Returns the source that all of them have; nothing when they differ or the value is not known. */
    public Optional<Source> source() {
        return shared(Known::source);
    }

    /** Returns the give or take of one thing as a number, the usual one where none was given; null when it has none. */
    public Double knownSize() {
        return knowns().get(0).map(known -> known.giveOrTake().isPresent() ? known.giveOrTake() : known.usual())
                .filter(OptionalDouble::isPresent).map(OptionalDouble::getAsDouble).orElse(null);
    }

    /**
     * Reads a value as it is typed, perhaps with how well it is known: {@code 285 kg +- 8, weighed}.
     *
     * @throws QuantityFormatException when the words cannot be understood in one way
     */
    public static Object read(EStructuralFeature feature, Habits habits, String text) {
        return Typing.quantity(feature, habits).read(Phrase.of(text)).raw();
    }

    /** Writes a value as it could be typed; the inverse of {@link #read}. */
    public static String write(Object value, Habits habits) {
        return Phrase.write(Known.of(value), habits);
    }

    /** Tells whether any of them has a value, so that there is something to know more or less well. */
    public boolean anyKnown() {
        return knowns().stream().anyMatch(Optional::isPresent);
    }

    /** Tells whether what one of the three fields shows differs among the things chosen. */
    boolean differ(Function<Known, ?> what) {
        return knowns().stream().map(known -> known.map(what)).distinct().count() > 1;
    }

    private String giveOrTake(Known known) {
        return known.giveOrTake().isPresent() ? habits().showDifference(known.giveOrTake().getAsDouble(), known.dimension()) : "";
    }

    private <T> Optional<T> shared(Function<Known, T> what) {
        List<Optional<T>> all = knowns().stream().map(known -> known.<T>map(what)).distinct().toList();
        return all.size() == 1 ? all.get(0) : Optional.empty();
    }

    private List<Optional<Known>> knowns() {
        return chosen().objects().stream().map(each -> Optional.ofNullable(each.eGet(feature())).map(Known::of)).toList();
    }

    /** Judges what is being typed for the value, perhaps with how well it is known: {@code 285 kg +- 8, weighed}; nothing is not known. */
    public Reply typeValue(String text) {
        if (text.equals(value())) {
            return Reply.nothing();
        }
        if (text.isBlank()) {
            return chosen().change(feature(), old -> null, "");
        }
        return understand(() -> {
            Phrase phrase = Phrase.of(text);
            Known fresh = typing.read(phrase);
            String shown = Phrase.write(fresh, habits());
            String understood = shown.equals(text.strip()) ? "" : NLS.bind(Messages.Page_reads, text.strip(), shown);
            String remark = Stream.of(understood, stillKnown(phrase)).filter(words -> !words.isEmpty()).collect(Collectors.joining(". "));
            return chosen().change(feature(), old -> old == null ? fresh.raw() : take(Known.of(old), fresh), remark);
        });
    }

    private String stillKnown(Phrase phrase) {
        return phrase.source().isPresent() ? "" : stillKnown(phrase.giveOrTake().isPresent());
    }

    /** Says how a new value counts as known, so that nobody keeps "weighed" for what was not weighed anew without seeing it. */
    String stillKnown() {
        return stillKnown(false);
    }

    private String stillKnown(boolean giveOrTakeSaid) {
        Optional<Source> kept = source().filter(before -> before != Source.UNSTATED);
        String size = giveOrTakeSaid || giveOrTake().isEmpty() ? "" : " ± " + giveOrTake();
        return kept.map(before -> NLS.bind(Messages.Page_stillKnown, before.word() + size)).orElse("");
    }

    /** How well it is known stays as it was where nothing was said about it. */
    private Object take(Known old, Known fresh) {
        Known all = fresh.with(fresh.uncertainty().isPresent() ? fresh.uncertainty() : old.uncertainty(),
                fresh.source() == Source.UNSTATED ? old.source() : fresh.source());
        return typing.keepingWhatReadsTheSame(old, all).raw();
    }

    /** Judges what is being typed for the give or take; nothing typed is none given. */
    public Reply typeGiveOrTake(String text) {
        if (text.equals(giveOrTake())) {
            return Reply.nothing();
        }
        if (!anyKnown()) {
            return Reply.refused(Messages.Give_none + "; " + Messages.Give_how + ".");
        }
        return understand(() -> {
            OptionalDouble uncertainty = text.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(typing.giveOrTake(text) / Known.TWICE);
            UnaryOperator<Known> edit = known -> giveOrTakeReads(known, text) ? known : known.with(uncertainty, known.source());
            return chosen().change(feature(), each(edit), "");
        });
    }

    private boolean giveOrTakeReads(Known known, String text) {
        return giveOrTake(known).equals(text.strip());
    }

    /** Gives all values that are known another source. */
    public Reply choose(Source source) {
        return chosen().change(feature(), each(known -> known.with(known.uncertainty(), source)), "");
    }

    private static UnaryOperator<Object> each(UnaryOperator<Known> edit) {
        return old -> old == null ? null : edit.apply(Known.of(old)).raw();
    }

    private static Reply understand(Supplier<Reply> reading) {
        try {
            return reading.get();
        } catch (QuantityFormatException e) {
            return Reply.refused(e.what() + "; " + e.mend() + ".");
        }
    }
}
