package cradlewright.ui.properties;

import cradlewright.quantity.Dimension;
import cradlewright.quantity.Direction;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.QuantityFormatException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;

/**
 * How values of a data type are written and read. Text that cannot be read is a {@link QuantityFormatException}, which says what is wrong
 * and how to write it.
 *
 * @param write turns a value into text
 * @param read turns text into a value; null is not known
 */
record Typing(Function<Object, String> write, Function<String, Object> read) {

    private static final int LONGEST = 2000;
    private static final int AXES = 3;

    String write(Object value) {
        return write.apply(value);
    }

    Object read(String text) {
        return read.apply(text.strip());
    }

    /** Returns the way to type a detail that is no quantity, no position and nothing to choose from. */
    static Typing of(EStructuralFeature feature, Habits habits) {
        Typing one = single(feature, habits);
        return feature.isMany() ? several(one) : one;
    }

    private static Typing single(EStructuralFeature feature, Habits habits) {
        Class<?> held = feature.getEType().getInstanceClass();
        if (held == Integer.class) {
            return orNothing(Object::toString, Typing::whole);
        }
        if (held == Direction.class) {
            return orNothing(value -> direction((Direction) value, habits), text -> direction(text, habits));
        }
        if (held == LocalDate.class || held == LocalDateTime.class) {
            EDataType type = (EDataType) feature.getEType();
            return orNothing(value -> EcoreUtil.convertToString(type, value),
                    text -> EcoreUtil.createFromString(type, text.replace(' ', 'T')));
        }
        if (held == Measured.class || held == Position.class) {
            QuantityTyping typing = quantity(feature, habits);
            return orNothing(value -> Phrase.write(Known.of(value), habits), text -> typing.read(Phrase.of(text)).raw());
        }
        return orNothing(value -> (String) value, Typing::words);
    }

    /** Returns the way to type a quantity or a position. */
    static QuantityTyping quantity(EStructuralFeature feature, Habits habits) {
        return feature.getEType().getInstanceClass() == Position.class ? QuantityTyping.place(habits)
                : QuantityTyping.amount(habits, Dimensions.of(feature));
    }

    private static Typing orNothing(Function<Object, String> write, Function<String, Object> read) {
        return new Typing(write, text -> text.isEmpty() ? null : read.apply(text));
    }

    private static Typing several(Typing one) {
        return new Typing(values -> ((List<?>) values).stream().map(one::write).collect(Collectors.joining("; ")), text -> {
            List<Object> values = new ArrayList<>();
            for (String each : text.split(";")) {
                Object value = one.read(each);
                if (value != null) {
                    values.add(value);
                }
            }
            return values;
        });
    }

    private static Object whole(String text) {
        try {
            return Integer.valueOf(text);
        } catch (NumberFormatException e) {
            throw new QuantityFormatException(NLS.bind(Messages.Count_what, quote(text)), Messages.Count_how);
        }
    }

    private static Object words(String text) {
        if (text.length() > LONGEST) {
            throw new QuantityFormatException(NLS.bind(Messages.Text_long, text.length()), NLS.bind(Messages.Text_longHow, LONGEST));
        }
        return text.replaceAll("\\p{Cntrl}", " ");
    }

    private static String direction(Direction value, Habits habits) {
        return habits.plain(value.x()) + " " + habits.plain(value.y()) + " " + habits.plain(value.z());
    }

    private static Object direction(String text, Habits habits) {
        List<String> three = List.of(text.split("[,;]?\\s+"));
        if (three.size() != AXES) {
            throw new QuantityFormatException(NLS.bind(Messages.Direction_what, quote(text)), Messages.Direction_how);
        }
        double[] parts = three.stream().mapToDouble(each -> habits.read(each, Dimension.RATIO).value()).toArray();
        if (parts[0] == 0 && parts[1] == 0 && parts[2] == 0) {
            throw new QuantityFormatException(NLS.bind(Messages.Direction_what, quote(text)), Messages.Direction_how);
        }
        return new Direction(parts[0], parts[1], parts[2]);
    }

    private static String quote(String text) {
        return "\"" + text + "\"";
    }
}
