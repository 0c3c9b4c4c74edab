package cradlewright.report.car;

import cradlewright.report.Words;
import cradlewright.report.scene.Pen;

/** Draws one sort of thing of a visit into one view. */
interface Drawn {

    /** Draws every one of them that can be seen there. */
    void draw(VisitSight sight, Pen pen, Words words);
}
