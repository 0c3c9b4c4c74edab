package cradlewright.analysis.importer;

import static cradlewright.analysis.importer.Identity.each;
import static cradlewright.analysis.importer.Identity.id;
import static cradlewright.analysis.importer.Identity.name;

import cradlewright.analysis.facts.ApertureFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.model.vehicle.ApertureReading;
import cradlewright.model.vehicle.Car;
import cradlewright.quantity.Measured;
import java.util.List;
import java.util.Optional;

/** Reads what somebody measured at the openings of a car. */
final class ApertureImporter {

    private ApertureImporter() {
    }

    /** Returns the readings; nothing when nobody measured yet. */
    static Optional<ApertureFacts> readings(Car car) {
        List<ApertureFacts.Reading> readings = each(car.getApertureReadings(), ApertureImporter::reading);
        return readings.isEmpty() ? Optional.empty()
                : Optional.of(new ApertureFacts(ApertureFacts.idFor(id(car)), name(car), id(car), readings));
    }

    private static ApertureFacts.Reading reading(ApertureReading reading) {
        return new ApertureFacts.Reading(id(reading), Values.text(reading.getAperture()), Optional.ofNullable(reading.getAt()),
                Values.text(reading.getBy()), values(reading.getDiagonals()), values(reading.getGaps()));
    }

    private static List<Value> values(List<Measured> measured) {
        return measured.stream().map(Values::si).flatMap(Optional::stream).toList();
    }
}
