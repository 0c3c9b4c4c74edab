package cradlewright.report.dolly;

import cradlewright.report.Words;
import cradlewright.report.scene.Pen;

/** Draws one sort of thing of a dolly into one view. */
interface Drawn {

    /** Draws every one of them that can be seen there. */
    void draw(DollySight sight, Pen pen, Words words);
}
