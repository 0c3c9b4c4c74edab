package cradlewright.analysis.job;

import cradlewright.analysis.facts.Examination;
import cradlewright.analysis.facts.Fact;
import java.lang.reflect.RecordComponent;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Writes records as lines {@code path=value} that are the same wherever and whenever the same was said: sorted, numbers in SI units
 * with all their digits, things named by their ids. Lists of things with ids, and of ids, have no order of their own; other lists, as
 * shims on top of each other or corners of an outline, keep theirs.
 *
 * <p>It goes through the components of the records by itself, so that a component that is added later cannot be forgotten. What nobody
 * said leaves no line: files that do not use such a component keep their text.
 */
final class FactText {

    /**
     * Changes of these change nothing that stands, hangs or rolls; whether a doubt counts for a height too follows from where the doubt
     * comes from, and writing it would have undone every sign-off made before it was asked.
     */
    private static final Set<String> LEFT_OUT = Set.of("name", "onHand", "heightDoubted");

    private final List<String> lines = new ArrayList<>();
    private final Deque<String> referred = new ArrayDeque<>();

    /** Writes a value under a path. */
    void write(String path, Object value) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresent(present -> write(path, present));
        } else if (value instanceof OptionalInt optional) {
            optional.ifPresent(number -> line(path, Integer.toString(number)));
        } else if (value instanceof Collection<?> list) {
            writeList(path, list);
        } else if (value instanceof Record record) {
            writeRecord(path, record);
        } else if (value instanceof Double number) {
            // Minus nought and nought are one number.
            line(path, Double.toString(number + 0.0));
        } else if (value instanceof Enum<?> word) {
            line(path, word.name());
        } else {
            line(path, value.toString());
        }
    }

    private void writeList(String path, Collection<?> list) {
        int place = 0;
        for (Object element : list) {
            if (element instanceof Fact fact) {
                write(path + "[" + fact.id() + "]", fact);
            } else if (element instanceof String id) {
                write(path + "[]", id);
            } else {
                write(path + "[" + place + "]", element);
            }
            place++;
        }
    }

    private void writeRecord(String path, Record record) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (!LEFT_OUT.contains(component.getName()) && component.getType() != Examination.class) {
                Object value = value(record, component);
                noteReference(component.getName(), value);
                write(path + "." + component.getName(), value);
            }
        }
    }

    private void noteReference(String name, Object value) {
        if (name.endsWith("Id") && value instanceof Optional<?> optional) {
            optional.ifPresent(id -> referred.add(id.toString()));
        }
    }

    private static Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record of the shop that cannot be read: " + component, e);
        }
    }

    private void line(String path, String value) {
        lines.add(path + "=" + value.replace("\\", "\\\\").replace("\n", "\\n"));
    }

    /** Returns the id of a record that was referred to and not been asked for, taking it off the list; nothing when there is none. */
    Optional<String> nextReferred() {
        return Optional.ofNullable(referred.poll());
    }

    /** Returns all lines, sorted. */
    String text() {
        Collections.sort(lines);
        return String.join("\n", lines);
    }
}
