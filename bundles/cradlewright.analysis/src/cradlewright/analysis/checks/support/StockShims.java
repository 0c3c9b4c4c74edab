package cradlewright.analysis.checks.support;

import cradlewright.analysis.check.Trial;
import cradlewright.analysis.checks.Swap;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Stacks that can be laid from the shims on hand; every choice is looked at, so none is missed. */
final class StockShims {

    /** Pieces that a stack may have: common practice, no source. */
    private static final int MOST_PIECES = 5;

    /**
     * Shims to lay under a support.
     *
     * @param height of all together, m
     * @param pieces how many
     * @param words what to take
     * @param shims the same as records
     */
    record Stack(double height, int pieces, String words, List<ShimFacts> shims) {

        /** Copies the list. */
        Stack {
            shims = List.copyOf(shims);
        }

        /** Returns these shims laid under a support, which closes a gap that was measured there by as much. */
        Trial under(Support support, Standing standing) {
            List<ShimFacts> all = new ArrayList<>(support.shims().map(ShimStackFacts::shims).orElse(List.of()));
            all.addAll(shims);
            return Trial.records(Swap.contacts(standing, contact -> contact.id().equals(support.contactId()),
                    contact -> Swap.raised(contact.withShims(new ShimStackFacts(all)), height)));
        }

        private Stack with(StockFacts.Shim shim, int count) {
            List<ShimFacts> all = new ArrayList<>(shims);
            all.add(new ShimFacts(Optional.of(shim.id()), shim.thickness(), OptionalInt.of(count)));
            return new Stack(height + count * shim.thickness().orElseThrow().si(), pieces + count,
                    (words.isEmpty() ? "" : words + " and ") + count + " of " + shim.name(), all);
        }
    }

    private StockShims() {
    }

    /** Returns the stacks that may be added under a support, lowest first, fewest pieces first among equal heights. */
    static List<Stack> under(Support support, double highest, Reader reader) {
        List<StockFacts.Shim> shims = new ArrayList<>();
        for (String id : reader.read(new IdsKey<>(StockFacts.Shim.class))) {
            Optional<StockFacts.Shim> shim = reader.read(new FactKey<>(StockFacts.Shim.class, id));
            shim.filter(s -> s.thickness().isPresent() && s.thickness().get().si() > 0).ifPresent(shims::add);
        }
        int free = MOST_PIECES - support.shims().map(stack -> stack.pieces()).orElse(0);
        List<Stack> stacks = new ArrayList<>();
        lay(shims, 0, new Stack(0, 0, "", List.of()), free, highest, stacks);
        stacks.sort(Comparator.comparingDouble(Stack::height).thenComparingInt(Stack::pieces));
        return stacks;
    }

    private static void lay(List<StockFacts.Shim> shims, int from, Stack soFar, int free, double highest, List<Stack> stacks) {
        for (int i = from; i < shims.size(); i++) {
            StockFacts.Shim shim = shims.get(i);
            int onHand = Math.min(free, shim.onHand().orElse(free));
            for (int count = 1; count <= onHand; count++) {
                Stack stack = soFar.with(shim, count);
                if (stack.height > highest) {
                    break;
                }
                stacks.add(stack);
                lay(shims, i + 1, stack, free - count, highest, stacks);
            }
        }
    }
}
