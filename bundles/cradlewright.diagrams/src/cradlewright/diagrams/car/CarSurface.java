package cradlewright.diagrams.car;

import cradlewright.diagrams.shared.Paints;
import cradlewright.diagrams.shared.ScenePainter;

/** What the parts of the diagram have in common. */
interface CarSurface {

    /** Multiples to which a move goes, mm; zero for none. */
    double grid();

    /** Pixels for a mm of the sheet. */
    double zoom();

    /** What is shown. */
    CarPage page();

    /** Colours and fonts. */
    Paints paints();

    /** Paints items. */
    ScenePainter painter();

    /** Tells the person why something typed or dragged was not taken. */
    void tell(String message);
}
