package cradlewright.report.dolly;

import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.load.Loads;
import cradlewright.report.UnitSystem;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.Item;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Scene;
import cradlewright.report.scene.TwoViews;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A dolly: from above, and below that from the left with the same x, front to the left, under it the sections of its members. The same
 * records and units always give the same drawing.
 */
public final class DollyDrawing {

    /** Texts that fit across the sheet: about nine points on a page. */
    private static final double TEXTS_ACROSS = 56;
    /** Heights of the font are whole multiples of this, mm, so that a small move does not change every text. */
    private static final double TEXT_STEP = 5;
    /** Length of a dolly of which nothing says how large it is, mm. */
    private static final double UNKNOWN_LENGTH = 3000;

    /** In the order of drawing; a text that is asked for earlier lies nearer to what it is about. */
    private static final List<Drawn> DRAWN = List.of(new Plate(), new FloorContacts(), new Members(), new Fixtures(), new Deflection(),
            new Joints(), new Props(), new Corners(), new Floor());

    private final Words words;

    /** Makes drawings with numbers in these units. */
    public DollyDrawing(UnitSystem units) {
        words = new Words(units);
    }

    /** Draws a dolly for a page. */
    public Scene draw(DollySight sight) {
        Box reach = sight.dolly().nodes().stream().map(NodeFacts::at).flatMap(Optional::stream).map(Projection.PLAN::at).map(Box::of)
                .reduce(Box.EMPTY, Box::union);
        double length = reach.isEmpty() ? UNKNOWN_LENGTH : Math.max(reach.width(), 2 * reach.height());
        return draw(sight, Math.max(TEXT_STEP, Math.ceil(length / TEXTS_ACROSS / TEXT_STEP) * TEXT_STEP));
    }

    /**
     * Draws a dolly.
     *
     * @param text height of the font, mm of the real thing, above zero; marks and bars are as large as it says
     */
    public Scene draw(DollySight sight, double text) {
        String foot = sight.stand().map(DollyDrawing::shown).orElse("empty");
        return new TwoViews(words.units(), text).draw(sight.dolly().name() + ", from above and from the left; " + foot, foot,
                projection -> view(sight, projection, text));
    }

    private static String shown(DollyStand stand) {
        String what = stand.standing().car().name() + ", " + stand.standing().visit().name();
        String when = stand.chosen().map(situation -> situation.words()).orElse("worst of all situations");
        String open = stand.outdated() ? "being worked out again" : stand.open().map(DollyDrawing::why).orElse("");
        return Words.join(what + ": " + when, open);
    }

    private static String why(Loads open) {
        return open.situation().words() + ": " + (open.outcome() == Loads.Outcome.FALLS ? "STOP, it falls over"
                : "no loads (" + open.reason() + ")");
    }

    private List<Item> view(DollySight sight, Projection projection, double text) {
        Pen pen = new Pen(projection, text);
        DRAWN.forEach(drawn -> drawn.draw(sight, pen, words));
        List<Item> items = new ArrayList<>(pen.finish());
        if (projection == Projection.SIDE && !items.isEmpty()) {
            Box room = items.stream().map(Item::box).reduce(Box.EMPTY, Box::union);
            items.addAll(new Sections(sight, text).draw(Math.max(room.left(), pen.reach().left()), room.bottom() + 1.5 * text));
        }
        return items;
    }
}
