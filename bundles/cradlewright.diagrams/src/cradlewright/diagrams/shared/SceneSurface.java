package cradlewright.diagrams.shared;


/** What the parts of the diagram have in common. */
public interface SceneSurface {

    /** Multiples to which a move goes, mm; zero for none. */
    double grid();

    /** Pixels for a mm of the sheet. */
    double zoom();

    /** What is shown. */
    ScenePage<?> page();

    /** Colours and fonts. */
    Paints paints();

    /** Paints items. */
    ScenePainter painter();

    /** Tells the person why something typed or dragged was not taken. */
    void tell(String message);
}
