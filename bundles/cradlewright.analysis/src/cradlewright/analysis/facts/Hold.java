package cradlewright.analysis.facts;

/** How a support holds: it only pushes, it also takes shear, or it may pull as well. */
public enum Hold {
    RESTS, PINNED, BOLTED
}
