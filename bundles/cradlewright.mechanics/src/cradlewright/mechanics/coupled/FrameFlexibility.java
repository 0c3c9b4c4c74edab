package cradlewright.mechanics.coupled;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

import cradlewright.mechanics.formula.Require;
import cradlewright.mechanics.frame.CondensedFrame;
import cradlewright.mechanics.frame.ContactDof;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.frame.FramePoint;
import cradlewright.mechanics.frame.FrameResult;
import cradlewright.mechanics.frame.FrameStructure;
import cradlewright.mechanics.frame.LoadCase;
import cradlewright.mechanics.frame.LoadedFrame;
import cradlewright.mechanics.frame.ShellSpine;

/**
 * A frame as an elastic body. The structure is condensed once per set of contacts and shared by all load cases derived with
 * {@link #withLoads}; the sag under a load pattern is worked out once and shared by all multiples derived with
 * {@link #times}.
 */
public final class FrameFlexibility implements Flexibility {

    private static final double PLACE_TOLERANCE = 1e-6;

    private final FrameStructure structure;
    private final LoadCase pattern;
    private final ForceMoment resultant;
    private final double factor;
    private final Function<UnitAction, FramePoint> places;
    private final Map<List<UnitAction>, CondensedFrame> condensed;
    private final Map<List<UnitAction>, LoadedFrame> loaded;

    private FrameFlexibility(FrameStructure structure, LoadCase pattern, Function<UnitAction, FramePoint> places,
            Map<List<UnitAction>, CondensedFrame> condensed) {
        this.structure = structure;
        this.pattern = Objects.requireNonNull(pattern, "loads");
        this.resultant = pattern.resultant();
        this.factor = 1;
        this.places = places;
        this.condensed = condensed;
        this.loaded = new ConcurrentHashMap<>();
    }

    private FrameFlexibility(FrameFlexibility other, double factor) {
        structure = other.structure;
        pattern = other.pattern;
        resultant = other.resultant;
        this.factor = factor;
        places = other.places;
        condensed = other.condensed;
        loaded = other.loaded;
    }

    /**
     * A frame with loads that are not contacts.
     *
     * @param structure a free body
     * @param loads its weight and what lies on it
     * @param places where on the frame each contact action stands, within 1e-6 m of its point
     * @throws IllegalArgumentException for a frame on supports
     */
    public static FrameFlexibility of(FrameStructure structure, LoadCase loads, Function<UnitAction, FramePoint> places) {
        if (!structure.isFreeBody()) {
            throw new IllegalArgumentException("a body between contacts must be free, found a frame on supports");
        }
        return new FrameFlexibility(structure, loads, Objects.requireNonNull(places, "places"), new ConcurrentHashMap<>());
    }

    /** A shell as an elastic spine, its mounts on rigid arms. */
    public static FrameFlexibility of(ShellSpine shell, LoadCase loads) {
        return of(shell.freeBody(), loads, action -> shell.pointAt(action.point()));
    }

    /** Returns the same frame under other loads. */
    public FrameFlexibility withLoads(LoadCase other) {
        return new FrameFlexibility(structure, other, places, condensed);
    }

    /** Returns the same frame under a multiple of its loads; throws IllegalArgumentException if the factor is not finite. */
    public FrameFlexibility times(double multiple) {
        return new FrameFlexibility(this, Require.finite(multiple, "load factor") * factor);
    }

    @Override
    public Condensed condense(List<UnitAction> actions) {
        LoadedFrame frame = frame(actions);
        return new Condensed(frame.frame().flexibility(), frame.sag(factor));
    }

    @Override
    public ForceMoment loads() {
        return resultant.times(factor);
    }

    /**
     * Returns movements and internal forces of the frame in a coupled solution.
     *
     * @param body the id under which this frame takes part
     */
    public FrameResult result(CoupledSolution solution, String body) {
        return frame(solution.problem().actionsOn(body)).result(solution.forcesOn(body), factor);
    }

    private LoadedFrame frame(List<UnitAction> actions) {
        List<UnitAction> key = List.copyOf(actions);
        return loaded.computeIfAbsent(key, list -> condensed
                .computeIfAbsent(list, l -> structure.condense(l.stream().map(this::dof).toList())).under(pattern));
    }

    private ContactDof dof(UnitAction action) {
        FramePoint place = places.apply(action);
        if (place == null) {
            throw new IllegalArgumentException("contact " + action.contact() + " has no place on the frame");
        }
        double off = structure.model().position(place).minus(action.point()).norm();
        if (off > PLACE_TOLERANCE) {
            throw new IllegalArgumentException("contact " + action.contact() + " stands " + off
                    + " m from its place on the frame");
        }
        return ContactDof.push(place, action.direction());
    }
}
