package cradlewright.analysis.checks.place;

import cradlewright.analysis.check.Amount;
import cradlewright.analysis.check.CheckInfo;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.FindingBuilder;
import cradlewright.analysis.check.Remedy;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.check.Verdict;
import cradlewright.analysis.checks.Cautions;
import cradlewright.analysis.checks.Stated;
import cradlewright.analysis.checks.VisitCheck;
import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.PartFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.analysis.standing.Standing;
import cradlewright.analysis.standing.Support;
import cradlewright.quantity.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Does everything that goes through the booth stand its heat: pads, castors, parts that are on? */
public final class BoothTemperatureCheck extends VisitCheck {

    /** Degrees between Kelvin, in which amounts are kept, and Celsius, in which limits are written. */
    private static final double ZERO_CELSIUS = 273.15;

    /** Creates the check. */
    public BoothTemperatureCheck() {
        super(new CheckInfo("place.booth-heat", "Does everything that goes through the booth stand its heat?", "makers' limits",
                Cautions.DATA + " No fuel, gas or battery goes into a booth.",
                List.of("temperature of the booth", "temperature limit of pads, castors and parts"), List.of()));
    }

    @Override
    protected List<Finding> examine(Standing standing, Subject subject, Reader reader) {
        Optional<PlaceFacts> booth = standing.place().filter(place -> place.kind() == PlaceFacts.Kind.BOOTH);
        if (booth.isEmpty()) {
            return List.of();
        }
        if (booth.get().temperature().isEmpty()) {
            return List.of(finding(subject, booth.get().id(), booth.get().name()).cantSay("How hot the booth gets is not in the files.",
                    List.of("highest temperature of the booth: read it off its controller")));
        }
        double heat = booth.get().temperature().get().high();
        List<Finding> findings = new ArrayList<>();
        for (Support support : standing.supports()) {
            support.pad().ifPresent(pad ->
                    findings.add(judge(subject, support.objectId(), support.name() + ", " + pad.name(), heat, pad.temperatureLimit())));
        }
        for (CastorFacts castor : standing.dolly().map(DollyFacts::castors).orElse(List.of())) {
            Optional<StockFacts.CastorType> type = castor.typeId().flatMap(id ->
                    reader.read(new FactKey<>(StockFacts.CastorType.class, id)));
            findings.add(judge(subject, castor.id(), "castor " + castor.name(), heat,
                    type.flatMap(StockFacts.CastorType::temperatureLimit)));
        }
        for (PartFacts part : partsOn(standing)) {
            part.temperatureLimit().ifPresent(limit -> findings.add(judge(subject, part.id(), part.name(), heat, Optional.of(limit))));
        }
        return findings;
    }

    private static List<PartFacts> partsOn(Standing standing) {
        CarFacts car = standing.car();
        return car.pieces().stream().filter(piece -> standing.setup().pieceIds().contains(piece.id())).map(PieceFacts::parts)
                .flatMap(List::stream).filter(part -> standing.stage().partIds().contains(part.id())).toList();
    }

    private Finding judge(Subject subject, String id, String name, double heat, Optional<Value> limit) {
        FindingBuilder finding = finding(subject, id, name);
        if (limit.isEmpty()) {
            return finding.cantSay("How much heat this stands is not in the files.",
                    List.of("temperature limit of " + name + ": see the maker's sheet"));
        }
        finding.against(new Amount(heat + ZERO_CELSIUS, Dimension.TEMPERATURE), new Amount(limit.get().low() + ZERO_CELSIUS,
                Dimension.TEMPERATURE), "limit of heat, " + new Stated(limit.get(), Dimension.TEMPERATURE).origin());
        if (heat > limit.get().low()) {
            return finding.remedy(Remedy.advice("Take it off or change it before the shell goes into the booth."))
                    .say(Verdict.STOP, "The booth gets hotter than this stands.");
        }
        return finding.say(Verdict.HOLDS, "Stands the heat of the booth.");
    }
}
