package cradlewright.report.car;

import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.TippingLine;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.ShimFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.load.Carried;
import cradlewright.analysis.load.Loads;
import cradlewright.analysis.standing.Holder;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.analysis.standing.Weight;
import cradlewright.report.dolly.DollyStock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything that the drawing of a visit shows, as records.
 *
 * @param standing what stands or hangs on what
 * @param weight what is carried
 * @param loads what each support and castor carries at rest, with the masses as listed
 * @param tipping the lines over which it would tip
 * @param findings the answers about this visit
 * @param stock what its parts are of, by id
 * @param outdated whether the loads are those from before an edit
 * @param judgedBefore whether the answers are those from before an edit
 */
public record VisitSight(Standing standing, Weight weight, Loads loads, List<TippingLine> tipping, List<Finding> findings,
        Map<String, StockFacts> stock, boolean outdated, boolean judgedBefore) {

    /** Copies lists and map. */
    public VisitSight {
        tipping = List.copyOf(tipping);
        findings = List.copyOf(findings);
        stock = Map.copyOf(stock);
    }

    /**
     * Returns this with the answers about the visit.
     *
     * @param old whether they are those from before an edit
     */
    public VisitSight withFindings(List<Finding> answers, boolean old) {
        return new VisitSight(standing, weight, loads, tipping, answers, stock, outdated, old);
    }

    /** Returns this with loads that are worked out for it. */
    VisitSight withLoads(Loads worked) {
        return new VisitSight(standing, weight, worked, tipping, findings, stock, false, judgedBefore);
    }

    /** Returns what is there now with the loads and answers of before, until new ones are worked out. */
    public VisitSight withNumbersOf(VisitSight before) {
        return new VisitSight(standing, weight, before.loads, tipping, before.findings, stock, true, true);
    }

    static Map<String, StockFacts> stock(Standing standing, Reader reader) {
        Stream<String> ofDolly = standing.dolly().stream().flatMap(DollyStock::ids);
        Stream<String> ofSupports = standing.supports().stream().flatMap(support -> support.shims().stream())
                .map(ShimStackFacts::shims).flatMap(List::stream).map(ShimFacts::stockId).flatMap(Optional::stream);
        return DollyStock.read(Stream.concat(ofDolly, ofSupports), reader);
    }

    /** Returns what is kept in stock under an id, if it is of that sort. */
    <T extends StockFacts> Optional<T> stock(Class<T> type, Optional<String> id) {
        return id.map(stock::get).filter(type::isInstance).map(type::cast);
    }

    /** Returns what a support carries; nothing when that is not known. */
    Optional<Carried> carried(Support support) {
        return loads.found() ? loads.support(support.contactId()) : Optional.empty();
    }

    /** Returns the gravest answer about one support: about its contact, its mount or lift point, or what holds it. */
    Optional<Verdict> verdict(Support support) {
        List<String> ids = Stream.concat(Stream.of(support.contactId(), support.objectId()), holder(support).stream()).toList();
        return findings.stream().filter(finding -> ids.contains(finding.objectId())).map(Finding::verdict).reduce(Verdict::worse);
    }

    private static Optional<String> holder(Support support) {
        if (support.holder() instanceof Holder.OnFixture on) {
            return Optional.of(on.fixture().id());
        }
        if (support.holder() instanceof Holder.OnStand on) {
            return Optional.of(on.stand().id());
        }
        if (support.holder() instanceof Holder.OnArm on) {
            return Optional.of(on.arm().id());
        }
        return support.holder() instanceof Holder.InStrap in ? Optional.of(in.strap().id()) : Optional.empty();
    }
}
