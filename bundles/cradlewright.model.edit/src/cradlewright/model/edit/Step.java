package cradlewright.model.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.Notifier;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * The smallest change that EMF reports: one feature of one object. What EMF changes along with it, such as taking an object
 * out of where it lay before, it reports as steps of their own; steps taken back in reverse order therefore lead exactly to
 * where they began.
 */
sealed interface Step {

    /** Returns where. */
    Slot slot();

    /** Returns the values that are here since. */
    List<Object> came();

    /** Returns the values that were here before. */
    List<Object> went();

    /** Takes the step back. */
    void undo();

    /** Takes the step again. */
    void redo();

    /** Returns what a notification that changes something reports. */
    static Step of(Notification told) {
        Slot slot = new Slot((Notifier) told.getNotifier(), (EStructuralFeature) told.getFeature());
        int position = told.getPosition();
        switch (told.getEventType()) {
            case Notification.SET:
            case Notification.UNSET:
                return new Value(slot, position, told.getOldValue(), told.getNewValue());
            case Notification.ADD:
                return new Elements(slot, true, List.of(position), one(told.getNewValue()));
            case Notification.ADD_MANY:
                List<Object> added = many(told.getNewValue());
                return new Elements(slot, true, from(position, added.size()), added);
            case Notification.REMOVE:
                return new Elements(slot, false, List.of(position), one(told.getOldValue()));
            case Notification.REMOVE_MANY:
                List<Object> removed = many(told.getOldValue());
                // Without positions the list was emptied.
                return new Elements(slot, false, told.getNewValue() instanceof int[] positions
                        ? IntStream.of(positions).boxed().toList() : from(0, removed.size()), removed);
            case Notification.MOVE:
                return new Move(slot, (Integer) told.getOldValue(), position);
            default:
                throw new IllegalArgumentException("unknown kind of change: " + told);
        }
    }

    private static List<Integer> from(int position, int count) {
        return IntStream.range(position, position + count).boxed().toList();
    }

    private static List<Object> one(Object value) {
        return Collections.singletonList(value);
    }

    private static List<Object> many(Object values) {
        return Collections.unmodifiableList(new ArrayList<>((List<?>) values));
    }

    private static void expect(boolean asLeft, Slot slot) {
        if (!asLeft) {
            throw new IllegalStateException("what lies at " + slot + " is not what the history left there");
        }
    }

    /**
     * A value became another: the single one, or that at a position of a list. No feature tells a value that was never set from
     * one that was set to the default.
     */
    record Value(Slot slot, int position, Object before, Object after) implements Step {

        @Override
        public List<Object> came() {
            return one(after);
        }

        @Override
        public List<Object> went() {
            return one(before);
        }

        @Override
        public void undo() {
            put(before);
        }

        @Override
        public void redo() {
            put(after);
        }

        private void put(Object value) {
            if (position == Notification.NO_INDEX) {
                slot.object().eSet(slot.feature(), value);
            } else {
                slot.list().set(position, value);
            }
        }
    }

    /** Values came into a list or left it; the positions ascend, counted in the list that holds them. */
    record Elements(Slot slot, boolean added, List<Integer> positions, List<Object> values) implements Step {

        @Override
        public List<Object> came() {
            return added ? values : List.of();
        }

        @Override
        public List<Object> went() {
            return added ? List.of() : values;
        }

        @Override
        public void undo() {
            if (added) {
                takeOut();
            } else {
                putIn();
            }
        }

        @Override
        public void redo() {
            if (added) {
                putIn();
            } else {
                takeOut();
            }
        }

        private void putIn() {
            EList<Object> list = slot.list();
            for (int i = 0; i < values.size(); i++) {
                list.add(positions.get(i), values.get(i));
            }
        }

        private void takeOut() {
            EList<Object> list = slot.list();
            for (int i = values.size() - 1; i >= 0; i--) {
                expect(Objects.equals(list.remove((int) positions.get(i)), values.get(i)), slot);
            }
        }
    }

    /** One value of a list changed its place. */
    record Move(Slot slot, int before, int after) implements Step {

        @Override
        public List<Object> came() {
            return List.of();
        }

        @Override
        public List<Object> went() {
            return List.of();
        }

        @Override
        public void undo() {
            slot.list().move(before, after);
        }

        @Override
        public void redo() {
            slot.list().move(after, before);
        }
    }
}
