package cradlewright.analysis.facts;

/** A record of the shop that other records name by its id; two equal records mean that nothing changed. */
public interface Fact {

    /** Returns the id that is unique in the shop. */
    String id();

    /** Returns what people call it; never empty, the importer falls back on the kind. */
    String name();
}
