package cradlewright.report.sheet;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.facts.Condition;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WeighingFacts;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.lookup.SupportCard;
import cradlewright.analysis.lookup.SupportLoads;
import cradlewright.analysis.run.ShopAnswers;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.report.BalanceWords;
import cradlewright.report.UnitSystem;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** Everything about a support: what it is, what lies on it, what it carries, who looked, what there is to say about it. */
public final class SupportSheet {

    private static final Map<Hold, String> HOLDS = Map.of(Hold.RESTS, "rests", Hold.PINNED, "pinned", Hold.BOLTED, "bolted");
    private static final Map<Condition, String> CONDITIONS = Map.of(Condition.SOUND, "sound", Condition.THIN, "thin", Condition.HOLED,
            "holed", Condition.REPAIRED, "repaired", Condition.NOT_LOOKED_AT, "not looked at");
    private static final String NOBODY_WROTE = "nobody wrote it down";

    private final UnitSystem units;

    /** Makes a writer that shows numbers in these units. */
    public SupportSheet(UnitSystem units) {
        this.units = units;
    }

    /**
     * Writes all supports of a name.
     *
     * @param asked the name that somebody asked for
     * @param cards what was found; may be none
     * @param answers the answers of the shop; nothing while they are not worked out
     */
    public Sheet write(String asked, List<SupportCard> cards, Optional<ShopAnswers> answers) {
        SheetBuilder out = new SheetBuilder();
        if (cards.isEmpty()) {
            return out.sentence("No body mount or support is called " + asked
                    + ". Names are those of the cars' files, such as 2L.").build();
        }
        cards.forEach(card -> write(card, answers, out));
        CautionLines.add(out, List.of(), cards.stream().flatMap(card -> about(card, answers).stream()).toList());
        return out.build();
    }

    private void write(SupportCard card, Optional<ShopAnswers> answers, SheetBuilder out) {
        out.title(card.car().name() + ", " + card.name() + card.held().map(held -> ", " + held.visit().name()).orElse(""));
        card.held().ifPresentOrElse(held -> held(held, card, out), () -> out.row("held by", "nothing today"));
        card.mount().ifPresent(mount -> mount(mount, card, out));
        card.held().flatMap(held -> held.support().liftPoint()).ifPresent(point -> liftPoint(point, out));
        card.held().ifPresent(held -> carries(held.carries(), out));
        card.weighings().forEach(weighing -> out.row("weighed", weighed(weighing)));
        told(about(card, answers), answers.isPresent(), out);
    }

    private void held(SupportCard.Held held, SupportCard card, SheetBuilder out) {
        Support support = held.support();
        String carrier = held.carrier().isEmpty() || held.carrier().equals(support.holder().name()) ? "" : " of " + held.carrier();
        out.row("held by", support.holder().name() + carrier + ", " + HOLDS.get(support.hold()));
        out.inner("place", place(support.onCar()));
        support.fixture().ifPresent(fixture -> fixture(fixture, card, out));
        out.inner("pad", support.pad().map(StockFacts.Pad::name).orElse("none named"));
        out.inner("shims", support.shims().map(stack -> stack(stack, card)).orElse("none named"));
        out.inner("low by", support.gapKnown() ? units.text(Amount.length(support.gap())) + ", " + support.gapFrom().words() : "not known");
    }

    private void fixture(FixtureFacts fixture, SupportCard card, SheetBuilder out) {
        out.inner("bolt", bolt(fixture.boltId(), fixture.boltCount(), card));
        fixture.capacity().ifPresent(pull -> out.inner("may pull", force(pull.si()) + ", " + pull.source().word()));
        fixture.height().ifPresent(height -> out.inner("height", length(height)));
    }

    private void mount(MountFacts mount, SupportCard card, SheetBuilder out) {
        out.row("mount", CONDITIONS.get(mount.condition()) + mount.fast().map(fast -> fast ? ", still bolted to the chassis" : ", free")
                .orElse(""));
        out.inner("sheet", mount.sheet().map(this::length).orElse(""));
        out.inner("bolt", bolt(mount.boltId(), mount.boltCount(), card));
        if (card.held().isEmpty()) {
            out.inner("place", mount.position().map(spot -> place(spot.at())).orElse(NOBODY_WROTE));
        }
        out.row("stacks", "as found: " + stack(mount.asFound(), card));
        out.inner("on dolly", stack(mount.onDolly(), card)).inner("as built", stack(mount.asBuilt(), card));
    }

    private void liftPoint(LiftPointFacts point, SheetBuilder out) {
        out.row("lift point", CONDITIONS.get(point.condition()) + point.lookedAt().map(day -> ", looked at on " + day).orElse(""));
        out.inner("sheet", point.sheet().map(this::length).orElse(""));
        point.capacity().ifPresent(capacity -> out.inner("takes", force(capacity.si()) + ", " + capacity.source().word()));
    }

    private void carries(SupportLoads loads, SheetBuilder out) {
        loads.atRest().ifPresent(rest -> {
            Carried carried = rest.carried();
            out.row("carries", force(carried.force()) + " at rest, " + force(carried.low()) + " to " + force(carried.high())
                    + " within give or take");
            if (!Double.isNaN(carried.least())) {
                out.inner("bounds", force(carried.least()) + " to " + force(carried.most()) + " whatever gives way below it");
            }
        });
        loads.most().ifPresent(most -> out.inner("at most", force(most.carried().high()) + ", " + most.situation().words()));
        loads.least().ifPresent(least -> out.inner("at least", force(least.carried().low()) + ", " + least.situation().words()));
        out.inner("not known", loads.open());
    }

    private static String weighed(WeighingFacts weighing) {
        return weighing.name() + weighing.at().map(at -> ", " + at.toLocalDate()).orElse("")
                + weighing.by().map(by -> ", scales read by " + by).orElse(", nobody wrote down who read the scales");
    }

    private void told(List<Finding> about, boolean worked, SheetBuilder out) {
        if (!worked) {
            out.row("answers", "being worked out");
            return;
        }
        ReasonRows.addAll(out, about, units);
        if (about.isEmpty()) {
            out.row("answers", "no question was asked about it alone");
        }
    }

    private static List<Finding> about(SupportCard card, Optional<ShopAnswers> answers) {
        Set<String> ids = card.objectIds().collect(Collectors.toCollection(HashSet::new));
        return answers.stream().flatMap(all -> all.findings().stream()).filter(finding -> ids.contains(finding.objectId()))
                .filter(finding -> card.concerns(finding.subject()))
                .sorted((a, b) -> b.verdict().compareTo(a.verdict())).toList();
    }

    private String stack(Optional<ShimStackFacts> stack, SupportCard card) {
        return stack.map(there -> stack(there, card)).orElse(NOBODY_WROTE);
    }

    private String stack(ShimStackFacts stack, SupportCard card) {
        if (stack.shims().isEmpty()) {
            return "no shims";
        }
        String height = stack.height().map(metres -> units.text(Amount.length(metres))).orElse("height not known");
        return height + ": " + stack.shims().stream().map(shim -> shim(shim, card)).collect(Collectors.joining(" + "));
    }

    private String shim(ShimFacts shim, SupportCard card) {
        String what = shim.stockId().map(id -> card.stock().getOrDefault(id, "a shim that is not in stock"))
                .orElseGet(() -> shim.thickness().map(this::length).orElse("loose shim, thickness not known"));
        return (shim.count().isPresent() ? shim.count().getAsInt() : "?") + " x " + what;
    }

    private static String bolt(Optional<String> id, OptionalInt count, SupportCard card) {
        return id.map(bolt -> (count.isPresent() ? count.getAsInt() : "?") + " x "
                + card.stock().getOrDefault(bolt, "a bolt that is not in stock")).orElse("");
    }

    private String place(Vec3 at) {
        return BalanceWords.along(at.x(), units) + ", " + BalanceWords.across(at.y(), units);
    }

    private String length(Value value) {
        return units.text(Amount.length(value.si())) + ", " + value.source().word();
    }

    private String force(double newtons) {
        return units.text(Amount.force(Math.rint(newtons)));
    }
}
