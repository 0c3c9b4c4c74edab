package cradlewright.analysis.writeback;

import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.geometry.Vec3;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One number, word or link in which two records of the same object differ.
 *
 * @param ownerId the object
 * @param place record and component, for example {@code ContactFacts.padId}
 * @param after what it is in the second record
 */
record Difference(String ownerId, String place, Object after) {

    /** Numbers that differ by less than this share are the same number that was converted to and fro. */
    private static final double CONVERTED = 1e-9;

    /**
     * Returns every difference of two records of one object and of the objects inside it. A list whose objects are not the same ones in
     * the same order is one difference as a whole.
     */
    static List<Difference> between(Fact before, Fact after) {
        List<Difference> found = new ArrayList<>();
        if (before.getClass() != after.getClass()) {
            found.add(new Difference(before.id(), "Fact", after));
            return found;
        }
        for (RecordComponent component : before.getClass().getRecordComponents()) {
            compare(before, component, value(component, before), value(component, after), found);
        }
        return found;
    }

    private static void compare(Fact owner, RecordComponent component, Object before, Object after, List<Difference> found) {
        if (same(before, after)) {
            return;
        }
        if (before instanceof List<?> one && after instanceof List<?> other && ids(one).isPresent() && ids(one).equals(ids(other))) {
            for (int i = 0; i < one.size(); i++) {
                found.addAll(between((Fact) one.get(i), (Fact) other.get(i)));
            }
            return;
        }
        found.add(new Difference(owner.id(), owner.getClass().getSimpleName() + "." + component.getName(), after));
    }

    private static Optional<List<String>> ids(List<?> objects) {
        return objects.stream().allMatch(Fact.class::isInstance)
                ? Optional.of(objects.stream().map(object -> ((Fact) object).id()).toList()) : Optional.empty();
    }

    private static boolean same(Object before, Object after) {
        if (before instanceof Optional<?> one && after instanceof Optional<?> other && one.isPresent() && other.isPresent()) {
            return same(one.get(), other.get());
        }
        if (before instanceof Value one && after instanceof Value other) {
            return close(one.si(), other.si()) && close(one.u(), other.u()) && one.source() == other.source();
        }
        if (before instanceof Vec3 one && after instanceof Vec3 other) {
            return close(one.x(), other.x()) && close(one.y(), other.y()) && close(one.z(), other.z());
        }
        return before.equals(after);
    }

    private static boolean close(double one, double other) {
        return Math.abs(one - other) <= CONVERTED * Math.max(1, Math.abs(one));
    }

    private static Object value(RecordComponent component, Fact fact) {
        try {
            return component.getAccessor().invoke(fact);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record does not give its own component " + component, e);
        }
    }
}
