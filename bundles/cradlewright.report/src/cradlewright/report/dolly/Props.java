package cradlewright.report.dolly;

import cradlewright.report.Words;
import cradlewright.report.scene.Pen;

/** End props with what they carry. */
final class Props implements Drawn {

    @Override
    public void draw(DollySight sight, Pen pen, Words words) {
        Bars bars = new Bars(sight, pen, words);
        sight.dolly().props().forEach(prop -> prop.at().ifPresent(at -> PropPicture.draw(prop, at, sight.dolly(), bars.number(prop.id()),
                pen)));
    }
}
