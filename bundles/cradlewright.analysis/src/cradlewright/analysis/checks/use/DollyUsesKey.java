package cradlewright.analysis.checks.use;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.Finding;
import cradlewright.analysis.check.Scope;
import cradlewright.analysis.check.Subject;
import cradlewright.analysis.checks.castor.CastorLoadCheck;
import cradlewright.analysis.checks.dolly.DollyRatedCheck;
import cradlewright.analysis.checks.dolly.MemberShearCheck;
import cradlewright.analysis.checks.dolly.MemberStrengthCheck;
import cradlewright.analysis.checks.dolly.SidewaysCheck;
import cradlewright.analysis.checks.dolly.StrutCheck;
import cradlewright.analysis.checks.dolly.TimberRailCheck;
import cradlewright.analysis.checks.joint.BearingCheck;
import cradlewright.analysis.checks.joint.BoltStrengthCheck;
import cradlewright.analysis.checks.joint.PunchingCheck;
import cradlewright.analysis.checks.joint.WeldCheck;
import cradlewright.analysis.checks.support.SupportLoadCheck;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.load.Situation;
import cradlewright.analysis.run.FindingsKey;
import java.util.List;
import java.util.Optional;

/**
 * How far members, joints, castors and fixtures of a dolly are used under a car: the answers of the checks of its strength.
 *
 * @param carId the car that stands on it
 * @param visitId the visit
 * @param situation what happens; nothing for the worst of all situations
 */
public record DollyUsesKey(String carId, String visitId, Optional<Situation> situation) implements Key<List<Finding>> {

    private static final List<Check> ASKED = List.of(new MemberStrengthCheck(), new MemberShearCheck(), new SidewaysCheck(),
            new StrutCheck(), new TimberRailCheck(), new BoltStrengthCheck(), new BearingCheck(), new PunchingCheck(), new WeldCheck(),
            new CastorLoadCheck(), new SupportLoadCheck(), new DollyRatedCheck());

    @Override
    public List<Finding> compute(Reader reader) {
        Subject subject = new Subject(Scope.VISIT, carId, Optional.of(visitId), "");
        Reader filtered = new OneSituation(reader, situation);
        return ASKED.stream().flatMap(check -> new FindingsKey(check, subject).compute(filtered).stream()).toList();
    }
}
