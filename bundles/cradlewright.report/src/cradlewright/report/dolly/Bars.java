package cradlewright.report.dolly;

import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.FootFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.standing.Support;
import cradlewright.report.Words;
import cradlewright.report.scene.Box;
import cradlewright.report.scene.LabelPlacer.Side;
import cradlewright.report.scene.LoadBar;
import cradlewright.report.scene.Pen;
import cradlewright.report.scene.Projection;
import cradlewright.report.scene.Shape;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What castors, feet and fixtures carry, as bars and in words. In one situation the number is that with the masses as listed; of the worst
 * of all situations it is the upper end, 19 times in 20.
 */
final class Bars {

    /** Length of the longest bar in heights of the font. */
    private static final double LONGEST = 3;
    /** The same over the breadth of the dolly. */
    private static final double SHARE = 0.2;
    private static final double TEXT = 0.85;

    private final DollySight sight;
    private final Pen pen;
    private final Words words;
    private final double perNewton;

    Bars(DollySight sight, Pen pen, Words words) {
        this.sight = sight;
        this.pen = pen;
        this.words = words;
        Stream<Optional<DollyCarried>> all = Stream.of(sight.dolly().castors().stream().map(CastorFacts::id).map(this::carried),
                sight.dolly().feet().stream().map(FootFacts::id).map(this::carried),
                sight.dolly().fixtures().stream().map(this::carried)).flatMap(each -> each);
        double largest = all.flatMap(Optional::stream).mapToDouble(this::force).max().orElse(0);
        perNewton = longest() / Math.max(largest, LoadBar.NOTHING);
    }

    /** Bars of opposite fixtures leave room for numbers between them. */
    private double longest() {
        Box reach = sight.dolly().nodes().stream().map(NodeFacts::at).flatMap(Optional::stream).map(Projection.PLAN::at).map(Box::of)
                .reduce(Box.EMPTY, Box::union);
        double most = LONGEST * pen.text();
        return reach.height() > 0 ? Math.min(most, SHARE * reach.height()) : most;
    }

    private Optional<DollyCarried> carried(String id) {
        return sight.worked().flatMap(stand -> stand.carried(id));
    }

    private Optional<DollyCarried> carried(FixtureFacts fixture) {
        return sight.worked().flatMap(stand -> stand.carried(fixture));
    }

    private boolean worst() {
        return sight.worked().filter(DollyStand::worst).isPresent();
    }

    private double force(DollyCarried most) {
        return worst() ? most.carried().high() : most.carried().force();
    }

    /** Returns what a castor or foot carries in one line; empty while the dolly is. */
    String sentence(String id) {
        return sight.worked().map(stand -> Words.join(carried(id).map(this::range).orElse("load not known"),
                stand.use(id).gravest().map(finding -> stand.use(id).sentence(words.units())).orElse(""))).orElse("");
    }

    /** Returns what a fixture carries in one line. */
    String sentence(FixtureFacts fixture) {
        return sight.worked().map(stand -> stand.support(fixture).isEmpty() ? "nothing stands on it"
                : carried(fixture).map(this::range).orElse("load not known")).orElse("");
    }

    private String range(DollyCarried most) {
        Carried carried = most.carried();
        return "carries " + words.force(carried.force()) + ", from " + words.force(carried.low()) + " to " + words.force(carried.high())
                + " 19 times in 20; " + most.situation().words();
    }

    /** Returns what something carries as one number. */
    String number(String id) {
        return number(carried(id));
    }

    private String number(Optional<DollyCarried> carried) {
        return carried.map(this::force).map(force -> (worst() ? "up to " : "") + words.force(force)).orElse("load not known");
    }

    /** Draws the bar of a castor or foot, away from the dolly, with its number; nothing while the dolly is empty. */
    void outward(Pen.ItemPen item, String id, String name, Shape.Point at, double reach) {
        sight.worked().ifPresent(stand -> {
            boolean up = at.y() < 0;
            bar(item, name, carried(id), verdict(stand, id), at.moved(0, up ? -reach : reach), up);
        });
    }

    /** Draws the bar of a fixture, into the dolly, with its number; nothing where nothing stands. */
    void inward(Pen.ItemPen item, FixtureFacts fixture, Shape.Point at, double reach) {
        sight.worked().ifPresent(stand -> stand.support(fixture).ifPresent(support -> {
            boolean up = at.y() > 0;
            bar(item, fixture.name(), carried(fixture), verdict(stand, support, fixture), at.moved(0, up ? -reach : reach), up);
        }));
    }

    private static Optional<Verdict> verdict(DollyStand stand, String id) {
        return stand.use(id).gravest().map(finding -> finding.verdict());
    }

    private static Optional<Verdict> verdict(DollyStand stand, Support support, FixtureFacts fixture) {
        return Stream.of(support.contactId(), support.objectId(), fixture.id()).flatMap(id -> verdict(stand, id).stream())
                .reduce(Verdict::worse);
    }

    private void bar(Pen.ItemPen item, String name, Optional<DollyCarried> carried, Optional<Verdict> verdict, Shape.Point at, boolean up) {
        Optional<Double> force = carried.map(this::force);
        double length = LoadBar.length(force, perNewton, pen.text());
        LoadBar.draw(item, LoadBar.role(force, verdict), LoadBar.upright(at, length, up, pen.text()), pen.text());
        boolean old = sight.worked().filter(DollyStand::outdated).isPresent();
        String word = verdict.filter(v -> v != Verdict.HOLDS).map(v -> " " + v.word()).orElse("");
        item.text(at.moved(0, up ? -length : length), 0, TEXT, up ? Side.ABOVE : Side.BELOW, name + word,
                List.of(number(carried) + (old && force.isPresent() ? " (old)" : "")));
    }
}
