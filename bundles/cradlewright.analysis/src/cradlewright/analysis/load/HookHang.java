package cradlewright.analysis.load;

import cradlewright.analysis.standing.Support;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How something hangs whose straps meet in one hook: they lean, so each pulls harder than what hangs in it, and to the side.
 *
 * @param legs what each leg gets; none while something is missing or it does not stay hanging
 * @param stays whether it stays hanging with its straps as long as they are
 * @param slack whether any one leg may go slack and the others still hold it: more than three in one hook
 * @param weight what hangs in the hook at most, 19 times in 20, N
 * @param tilt how far it hangs tilted from level with everything as listed, rad
 * @param tiltAtMost the same, 19 times in 20, rad
 * @param missing by the id of the contact, what must be known before anything can be said about the leg there
 */
public record HookHang(List<Leg> legs, boolean stays, boolean slack, double weight, double tilt, double tiltAtMost,
        Map<String, List<String>> missing) {

    /** Tilt beyond which what is loose slides and straps slip along: 5 degrees, common practice, no source. */
    public static final double MUCH_TILT = Math.toRadians(5);
    /** Tilt beyond which nothing is lifted, for straps slip off their lift points: 20 degrees, common practice, no source. */
    public static final double MOST_TILT = Math.toRadians(20);

    /**
     * What one leg gets.
     *
     * @param contactId where it holds
     * @param pull along the leg with everything as listed, N; of four legs as if two or three of them carried all
     * @param low the least that it may pull, 19 times in 20, N; zero where it may be one that goes slack
     * @param high the most, 19 times in 20, N
     * @param lean from upright, at most, 19 times in 20, rad
     */
    public record Leg(String contactId, double pull, double low, double high, double lean) {
    }

    /** Copies the collections. */
    public HookHang {
        legs = List.copyOf(legs);
        missing = Map.copyOf(missing);
    }

    static HookHang unknown(boolean slack, Map<String, List<String>> missing) {
        return new HookHang(List.of(), true, slack, 0, 0, 0, missing);
    }

    static HookHang falling() {
        return new HookHang(List.of(), false, false, 0, 0, 0, Map.of());
    }

    /** Tells whether the lengths of the straps settle how it hangs, or that it does not stay; then nobody need ask how it would stand. */
    public boolean settled() {
        return !stays || !legs.isEmpty();
    }

    /** Tells whether anything follows from how it hangs: pulls, that it does not stay, or what must be known first. */
    public boolean answers() {
        return settled() || !missing.isEmpty();
    }

    /** Returns what is missing to say anything about these supports. */
    public List<String> missingAt(List<Support> supports) {
        LinkedHashSet<String> all = new LinkedHashSet<>();
        supports.forEach(support -> all.addAll(missing.getOrDefault(support.contactId(), List.of())));
        return List.copyOf(all);
    }

    /** Returns the leg at a support. */
    public Optional<Leg> leg(Support support) {
        return legs.stream().filter(leg -> leg.contactId().equals(support.contactId())).findFirst();
    }
}
