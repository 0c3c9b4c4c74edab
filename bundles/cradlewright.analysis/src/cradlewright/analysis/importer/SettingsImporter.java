package cradlewright.analysis.importer;

import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.mechanics.formula.Require;
import cradlewright.model.base.Settings;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Unit;

/** Reads what the shop has settled; common practice stands in, one by one, for what it has not. */
final class SettingsImporter {

    private static final double STEEPEST = 45;

    private SettingsImporter() {
    }

    /**
     * Returns the settings.
     *
     * @param settings null when the shop has settled nothing
     * @throws IllegalArgumentException naming the setting when one is out of range
     */
    static SettingsFacts settings(Settings settings) {
        SettingsFacts common = SettingsFacts.commonPractice();
        if (settings == null) {
            return common;
        }
        try {
            return new SettingsFacts(own(settings.getPersonMass(), common.personMass()),
                    own(settings.getLeanForce(), common.leanForce()), own(settings.getBarForce(), common.barForce()),
                    own(settings.getRequiredRatio(), common.requiredRatio()),
                    own(settings.getTightMargin(), common.tightMargin()),
                    own(settings.getJointFactor(), common.jointFactor()), own(settings.getStepHeight(), common.step()),
                    own(settings.getFloorUnevenness(), common.unevenness()), slope(settings.getSlope(), common.slope()),
                    own(settings.getWalkingSpeed(), common.walkingSpeed()), tolerance(settings, common.shimTolerance()),
                    friction(settings, common.friction()));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("the settings of the shop cannot be used: " + e.getMessage(), e);
        }
    }

    private static SettingsFacts.ShimTolerance tolerance(Settings settings, SettingsFacts.ShimTolerance common) {
        return new SettingsFacts.ShimTolerance(own(settings.getStoringTolerance(), common.storing()),
                own(settings.getWorkingTolerance(), common.working()), own(settings.getWeldingTolerance(), common.welding()));
    }

    /** Returns the range; where the shop names one end only, the usual value is the other unless it lies beyond. */
    private static SettingsFacts.Friction friction(Settings settings, SettingsFacts.Friction common) {
        double low = own(settings.getFrictionLow(), Math.min(common.low(), own(settings.getFrictionHigh(), common.low())));
        return new SettingsFacts.Friction(low, own(settings.getFrictionHigh(), Math.max(common.high(), low)));
    }

    private static double own(Measured measured, double common) {
        return Values.number(measured).orElse(common);
    }

    /** Returns rise over run. The angle is judged first, because the tangent repeats itself every 180 degrees. */
    private static double slope(Measured angle, double common) {
        if (angle == null) {
            return common;
        }
        Require.within(angle.in(Unit.DEGREE), 0, STEEPEST, "slope of the floor in degrees");
        return Math.tan(angle.si());
    }
}
