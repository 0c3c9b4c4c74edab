package cradlewright.analysis.job;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.TodayKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.HoldPointFacts;
import cradlewright.analysis.facts.SignOffFacts;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Whether a hold point of a car is signed on the day of the answers. Sign-offs of later days do not count; of the others the last in the
 * file does, since each is put behind those before.
 *
 * @param carId the car
 * @param holdPointId the hold point
 */
public record SignStateKey(String carId, String holdPointId) implements Key<SignState> {

    private static final String AGAIN = ": look at the car and sign again";

    @Override
    public SignState compute(Reader reader) {
        LocalDate today = reader.read(new TodayKey());
        List<SignOffFacts> signed = reader.read(new FactKey<>(HoldPointFacts.class, holdPointId)).map(HoldPointFacts::signOffs)
                .orElse(List.of()).stream().filter(signOff -> signOff.at().map(at -> !at.toLocalDate().isAfter(today)).orElse(true))
                .toList();
        return signed.isEmpty() ? SignState.open() : judge(signed.get(signed.size() - 1), reader);
    }

    private SignState judge(SignOffFacts last, Reader reader) {
        if (last.by().isEmpty()) {
            return SignState.unclear(last, "who signed" + AGAIN);
        }
        if (last.at().isEmpty()) {
            return SignState.unclear(last, "when " + last.by().get() + " signed" + AGAIN);
        }
        if (last.visitId().isEmpty() || last.digest().isEmpty()) {
            return SignState.unclear(last, "what " + last.by().get() + " signed for" + AGAIN);
        }
        if (!VisitDigestKey.sameForm(last.digest().get())) {
            return SignState.unclear(last, "whether all is as it was when " + last.by().get()
                    + " signed, because another version of the program wrote it down" + AGAIN);
        }
        Optional<String> now = reader.read(new VisitDigestKey(carId, last.visitId().get(), last.at().get()));
        SignState.Kind kind = now.equals(last.digest()) ? SignState.Kind.SIGNED : SignState.Kind.LAPSED;
        return new SignState(kind, Optional.of(last), Optional.empty());
    }
}
