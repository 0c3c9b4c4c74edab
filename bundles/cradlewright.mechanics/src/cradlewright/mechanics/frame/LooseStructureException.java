package cradlewright.mechanics.frame;

import java.util.List;

/** A frame, or a part of it, can move without resistance: parts hang loose or a mechanism has been made by hinges. */
public final class LooseStructureException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final List<String> nodes;
    private final List<String> members;

    LooseStructureException(String what, List<String> nodes, List<String> members) {
        super(what + ": nodes " + nodes + ", members " + members);
        this.nodes = List.copyOf(nodes);
        this.members = List.copyOf(members);
    }

    /** Returns the names of the nodes that can move. */
    public List<String> nodes() {
        return nodes;
    }

    /** Returns the names of the members that can move. */
    public List<String> members() {
        return members;
    }
}
