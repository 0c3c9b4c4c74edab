package cradlewright.analysis.job;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Engine.SettingsKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.ApertureFacts;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.VisitFacts;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A fingerprint of everything that the answers about a visit rest on: which parts and loads are on with their masses and places, what
 * rests on what with shims and pads, the body mounts, lift points, cut zones and braces of the car, the dolly, the gear and the stock that
 * they name, where it stands, what the shop has settled otherwise than common practice, and the readings of scales and openings. Names,
 * the days of the visit, examinations and how many shims are left are not in it.
 *
 * <p>The value is the number of the form, a colon, and the SHA-256 of the text of {@link FactText} as hexadecimal digits. Nothing when
 * the visit, its stage or its setup is not there.
 *
 * @param carId the car
 * @param visitId the visit
 * @param until readings taken later are left out: whoever signed could not know them, and new readings do not undo what was signed
 */
public record VisitDigestKey(String carId, String visitId, LocalDateTime until) implements Key<Optional<String>> {

    /** Grows when the text is made in another way, so that a sign-off of an older form is not taken for one whose inputs changed. */
    private static final String FORM = "2:";

    @Override
    public Optional<String> compute(Reader reader) {
        return reader.read(new FactKey<>(CarFacts.class, carId)).flatMap(car -> digest(car, reader));
    }

    /** Tells whether a fingerprint was made in the way of this program. */
    static boolean sameForm(String digest) {
        return digest.startsWith(FORM);
    }

    private Optional<String> digest(CarFacts car, Reader reader) {
        Optional<VisitFacts> visit = CarFacts.find(car.visits(), visitId);
        Optional<StageFacts> stage = visit.flatMap(VisitFacts::stageId).flatMap(car::stage);
        Optional<SetupFacts> setup = visit.flatMap(VisitFacts::setupId).flatMap(car::setup);
        if (stage.isEmpty() || setup.isEmpty()) {
            return Optional.empty();
        }
        FactText text = new FactText();
        writeCar(text, car, stage.get(), setup.get());
        car.weighings().stream().filter(weighing -> weighing.stageId().equals(Optional.of(stage.get().id())) && known(weighing.at()))
                .forEach(weighing -> text.write("weighings", List.of(weighing)));
        writePlace(text, reader);
        writeSettings(text, reader.read(new SettingsKey()));
        reader.read(new FactKey<>(ApertureFacts.class, ApertureFacts.idFor(carId))).ifPresent(openings -> writeReadings(text, openings));
        writeReferred(text, reader);
        return Optional.of(FORM + sha256(text.text()));
    }

    private static void writeCar(FactText text, CarFacts car, StageFacts stage, SetupFacts setup) {
        text.write("chassis", car.separateChassis());
        text.write("stage", stage);
        text.write("setup", setup);
        for (PieceFacts piece : car.pieces()) {
            PieceFacts on = new PieceFacts(piece.id(), piece.name(), piece.kind(), piece.torsionalStiffness(), piece.bendingStiffness(),
                    piece.outline(), piece.parts().stream().filter(part -> stage.partIds().contains(part.id())).toList());
            if (setup.pieceIds().contains(piece.id()) || !on.parts().isEmpty()) {
                text.write("pieces", List.of(on));
            }
        }
        text.write("loads", car.temporaryLoads().stream().filter(load -> stage.loadIds().contains(load.id())).toList());
        text.write("mounts", car.mounts());
        text.write("liftPoints", car.liftPoints());
        text.write("workPoints", car.workPoints());
        text.write("cutZones", car.cutZones());
        text.write("braces", car.braces());
    }

    private void writePlace(FactText text, Reader reader) {
        for (String id : reader.read(new IdsKey<>(PlacementFacts.class))) {
            reader.read(new FactKey<>(PlacementFacts.class, id))
                    .filter(placement -> placement.visitId().filter(visitId::equals).isPresent())
                    .ifPresent(placement -> text.write("placement", placement));
        }
    }

    private static void writeSettings(FactText text, SettingsFacts settings) {
        FactText usual = new FactText();
        usual.write("settings", SettingsFacts.commonPractice());
        FactText own = new FactText();
        own.write("settings", settings);
        Set<String> common = new HashSet<>(usual.text().lines().toList());
        own.text().lines().filter(line -> !common.contains(line)).forEach(line -> text.write("settled", line));
    }

    private void writeReadings(FactText text, ApertureFacts openings) {
        openings.readings().stream().filter(reading -> known(reading.at()))
                .forEach(reading -> text.write("readings[" + reading.id() + "]", reading));
    }

    private boolean known(Optional<LocalDateTime> at) {
        return at.map(moment -> !moment.isAfter(until)).orElse(true);
    }

    private static void writeReferred(FactText text, Reader reader) {
        Set<String> written = new HashSet<>();
        for (Optional<String> id = text.nextReferred(); id.isPresent(); id = text.nextReferred()) {
            if (written.add(id.get())) {
                reader.read(new FactKey<>(Fact.class, id.get()))
                        .ifPresent(fact -> text.write(fact.getClass().getSimpleName() + "[" + fact.id() + "]", fact));
            }
        }
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
