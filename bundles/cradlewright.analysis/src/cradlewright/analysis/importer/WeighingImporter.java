package cradlewright.analysis.importer;

import cradlewright.analysis.facts.Value;
import cradlewright.analysis.facts.WeighingFacts;
import cradlewright.model.vehicle.Weighing;
import cradlewright.model.vehicle.WeighingReading;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Source;
import cradlewright.quantity.SourceDefaults;
import java.util.Optional;

/** Reads weighings. */
final class WeighingImporter {

    /** Share of a reading that it is uncertain by when nobody said: common practice, no source. */
    private static final double SCALE = SourceDefaults.COMMON_PRACTICE.share(Source.WEIGHED).orElseThrow();

    private WeighingImporter() {
    }

    static WeighingFacts weighing(Weighing weighing) {
        return new WeighingFacts(Identity.id(weighing), Values.text(weighing.getMethod()).orElse("weighing"),
                Optional.ofNullable(weighing.getAt()),
                Identity.reference(weighing.getStage()), Values.text(weighing.getBy()),
                weighing.getReadings().stream().map(WeighingImporter::reading).toList());
    }

    private static WeighingFacts.Reading reading(WeighingReading reading) {
        return new WeighingFacts.Reading(Values.spot(reading.getPosition()), mass(reading.getMass()));
    }

    /** A number somebody entered as a reading came from a scale, whatever source stands beside it. */
    private static Optional<Value> mass(Measured shown) {
        return Values.si(shown).map(value -> value.u() > 0 ? value : new Value(value.si(), SCALE * value.si(), Source.WEIGHED));
    }
}
