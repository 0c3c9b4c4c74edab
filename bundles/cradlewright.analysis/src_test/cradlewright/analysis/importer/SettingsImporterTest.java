package cradlewright.analysis.importer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cradlewright.analysis.facts.SettingsFacts;
import cradlewright.model.base.BaseFactory;
import cradlewright.model.base.Settings;
import cradlewright.quantity.Dimension;
import cradlewright.quantity.Measured;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;

/** The settings of the shop and what stands in for the open ones. */
class SettingsImporterTest {

    private static final SettingsFacts COMMON = SettingsFacts.commonPractice();

    private final Settings settings = BaseFactory.eINSTANCE.createSettings();

    private void refused(BiConsumer<Settings, Measured> setting, String text, Dimension dimension, String named) {
        Settings wrong = BaseFactory.eINSTANCE.createSettings();
        setting.accept(wrong, Measured.parse(text, dimension));
        String message = assertThrows(IllegalArgumentException.class, () -> SettingsImporter.settings(wrong)).getMessage();
        assertTrue(message.contains(named), message);
    }

    @Test
    void commonPracticeStandsInForWhatIsOpen() {
        assertEquals(COMMON, SettingsImporter.settings(null));
        assertEquals(COMMON, SettingsImporter.settings(settings));
    }

    @Test
    void eachSettingReplacesOnlyItself() {
        settings.setPersonMass(Measured.parse("100 kg", Dimension.MASS));
        settings.setWorkingTolerance(Measured.parse("1.5 mm", Dimension.LENGTH));
        assertEquals(new SettingsFacts(100, COMMON.leanForce(), COMMON.barForce(), COMMON.requiredRatio(), COMMON.tightMargin(),
                COMMON.jointFactor(), COMMON.step(), COMMON.unevenness(), COMMON.slope(), COMMON.walkingSpeed(),
                new SettingsFacts.ShimTolerance(COMMON.shimTolerance().storing(), 0.0015, COMMON.shimTolerance().welding()),
                COMMON.friction()),
                SettingsImporter.settings(settings));
    }

    @Test
    void oneEndOfTheFrictionTakesTheOtherAlongWhereItMust() {
        settings.setFrictionLow(Measured.parse("0.2", Dimension.RATIO));
        assertEquals(new SettingsFacts.Friction(0.2, 0.3), SettingsImporter.settings(settings).friction());
        settings.setFrictionLow(Measured.parse("0.4", Dimension.RATIO));
        assertEquals(new SettingsFacts.Friction(0.4, 0.4), SettingsImporter.settings(settings).friction());
        settings.setFrictionHigh(Measured.parse("0.5", Dimension.RATIO));
        assertEquals(new SettingsFacts.Friction(0.4, 0.5), SettingsImporter.settings(settings).friction());
        settings.setFrictionLow(null);
        settings.setFrictionHigh(Measured.parse("0.25", Dimension.RATIO));
        assertEquals(new SettingsFacts.Friction(0.25, 0.25), SettingsImporter.settings(settings).friction());
        refused(Settings::setFrictionLow, "2.1", Dimension.RATIO, "friction");
    }

    @Test
    void theSlopeBecomesRiseOverRun() {
        // tan 30 degrees = 1/sqrt 3, exact.
        settings.setSlope(Measured.parse("30 deg", Dimension.ANGLE));
        assertEquals(1 / Math.sqrt(3), SettingsImporter.settings(settings).slope(), 1e-15);
    }

    @Test
    void settingsOutOfRangeAreNamed() {
        refused(Settings::setPersonMass, "0 kg", Dimension.MASS, "mass of a person");
        refused(Settings::setLeanForce, "-1 N", Dimension.FORCE, "leaning force");
        refused(Settings::setRequiredRatio, "0.9", Dimension.RATIO, "required ratio");
        refused(Settings::setTightMargin, "60 %", Dimension.RATIO, "TIGHT");
        refused(Settings::setWeldingTolerance, "0 mm", Dimension.LENGTH, "welding");
        refused(Settings::setSlope, "46 deg", Dimension.ANGLE, "slope of the floor");
        // Half a turn further the tangent would be that of 1 degree.
        refused(Settings::setSlope, "181 deg", Dimension.ANGLE, "slope of the floor");
    }
}
