package cradlewright.analysis.checks;

import cradlewright.analysis.check.Check;
import cradlewright.analysis.check.CheckCatalogue;
import cradlewright.analysis.checks.castor.CastorBrakeCheck;
import cradlewright.analysis.checks.castor.CastorCountCheck;
import cradlewright.analysis.checks.castor.CastorLoadCheck;
import cradlewright.analysis.checks.castor.CastorPushCheck;
import cradlewright.analysis.checks.castor.CastorRunAwayCheck;
import cradlewright.analysis.checks.castor.CastorStandingCheck;
import cradlewright.analysis.checks.castor.CastorStepCheck;
import cradlewright.analysis.checks.castor.CastorUnevenCheck;
import cradlewright.analysis.checks.data.MissingMassCheck;
import cradlewright.analysis.checks.data.VisitResolvedCheck;
import cradlewright.analysis.checks.data.WeighedCheck;
import cradlewright.analysis.checks.data.WorkPointCheck;
import cradlewright.analysis.checks.dolly.DollyRatedCheck;
import cradlewright.analysis.checks.dolly.LooseCheck;
import cradlewright.analysis.checks.dolly.MemberShearCheck;
import cradlewright.analysis.checks.dolly.MemberStrengthCheck;
import cradlewright.analysis.checks.dolly.SidewaysCheck;
import cradlewright.analysis.checks.dolly.SlenderCheck;
import cradlewright.analysis.checks.dolly.SteelNamedCheck;
import cradlewright.analysis.checks.dolly.StrongerCheck;
import cradlewright.analysis.checks.dolly.StrutCheck;
import cradlewright.analysis.checks.dolly.TimberRailCheck;
import cradlewright.analysis.checks.dolly.TwistCheck;
import cradlewright.analysis.checks.floor.FloorCompareCheck;
import cradlewright.analysis.checks.floor.FloorPunchingCheck;
import cradlewright.analysis.checks.floor.FloorSlabCheck;
import cradlewright.analysis.checks.gear.ExaminationCheck;
import cradlewright.analysis.checks.gear.GearInUseCheck;
import cradlewright.analysis.checks.gear.GearTwiceCheck;
import cradlewright.analysis.checks.gear.RatingCheck;
import cradlewright.analysis.checks.gear.TagCheck;
import cradlewright.analysis.checks.job.BackLateCheck;
import cradlewright.analysis.checks.job.GearBookedOverdueCheck;
import cradlewright.analysis.checks.job.HoldPointCheck;
import cradlewright.analysis.checks.job.OrderCheck;
import cradlewright.analysis.checks.job.ReadingsAtHoldCheck;
import cradlewright.analysis.checks.job.SignOffLapsedCheck;
import cradlewright.analysis.checks.job.TwoPeopleCheck;
import cradlewright.analysis.checks.joint.BearingCheck;
import cradlewright.analysis.checks.joint.BoltStrengthCheck;
import cradlewright.analysis.checks.joint.MissingJointCheck;
import cradlewright.analysis.checks.joint.PunchingCheck;
import cradlewright.analysis.checks.joint.SpacingCheck;
import cradlewright.analysis.checks.joint.WeldCheck;
import cradlewright.analysis.checks.lift.ArmLoadCheck;
import cradlewright.analysis.checks.lift.ArmReachCheck;
import cradlewright.analysis.checks.lift.GuessedMassCheck;
import cradlewright.analysis.checks.lift.HangingCheck;
import cradlewright.analysis.checks.lift.LiftShareCheck;
import cradlewright.analysis.checks.lift.LiftTotalCheck;
import cradlewright.analysis.checks.lift.PadLightCheck;
import cradlewright.analysis.checks.lift.PointCapacityCheck;
import cradlewright.analysis.checks.lift.RollCheck;
import cradlewright.analysis.checks.lift.ScaleStopCheck;
import cradlewright.analysis.checks.lift.StillFastCheck;
import cradlewright.analysis.checks.lift.StrapLoadCheck;
import cradlewright.analysis.checks.place.BoothTemperatureCheck;
import cradlewright.analysis.checks.place.OutdoorsCheck;
import cradlewright.analysis.checks.stand.StandIdleCheck;
import cradlewright.analysis.checks.stand.StandLoadCheck;
import cradlewright.analysis.checks.support.ChassisGapCheck;
import cradlewright.analysis.checks.support.CutBracedCheck;
import cradlewright.analysis.checks.support.PadPressureCheck;
import cradlewright.analysis.checks.support.PropLoadCheck;
import cradlewright.analysis.checks.support.ShimShortCheck;
import cradlewright.analysis.checks.support.ShimStackCheck;
import cradlewright.analysis.checks.support.SupportBesideCheck;
import cradlewright.analysis.checks.support.SupportConditionCheck;
import cradlewright.analysis.checks.support.SupportHeldCheck;
import cradlewright.analysis.checks.support.SupportInCutCheck;
import cradlewright.analysis.checks.support.SupportLeanCheck;
import cradlewright.analysis.checks.support.SupportLiftOffCheck;
import cradlewright.analysis.checks.support.SupportLightCheck;
import cradlewright.analysis.checks.support.SupportLoadCheck;
import cradlewright.analysis.checks.support.SupportRankCheck;
import cradlewright.analysis.checks.support.SupportSlideCheck;
import cradlewright.analysis.checks.tip.TipKerbCheck;
import cradlewright.analysis.checks.tip.TipOnDollyCheck;
import cradlewright.analysis.checks.tip.TipOnFloorCheck;
import cradlewright.analysis.checks.tip.TipSlopeCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The checks that come with the program, in the order in which people read them. */
public final class BuiltInChecks {

    private static final List<Check> ALL = List.of(
            new VisitResolvedCheck(), new MissingMassCheck(), new WorkPointCheck(), new WeighedCheck(),
            new SupportRankCheck(), new SupportLoadCheck(), new SupportLightCheck(), new SupportHeldCheck(), new SupportSlideCheck(),
                    new SupportLeanCheck(), new SupportBesideCheck(), new PropLoadCheck(),
            new SupportLiftOffCheck(), new ShimShortCheck(), new PadPressureCheck(),
            new StillFastCheck(), new GuessedMassCheck(), new LiftTotalCheck(), new LiftShareCheck(), new ArmReachCheck(),
            new HangingCheck(),
            new PadLightCheck(), new ArmLoadCheck(), new PointCapacityCheck(), new StrapLoadCheck(), new RollCheck(), new ScaleStopCheck(),
            new StandLoadCheck(), new StandIdleCheck(), new RatingCheck(), new TagCheck(),
            new SupportConditionCheck(), new SupportInCutCheck(), new CutBracedCheck(), new ShimStackCheck(), new ChassisGapCheck(),
            new BoothTemperatureCheck(), new OutdoorsCheck(),
            new CastorCountCheck(), new CastorLoadCheck(), new CastorUnevenCheck(),
            new CastorStepCheck(), new CastorPushCheck(), new CastorRunAwayCheck(), new CastorBrakeCheck(), new CastorStandingCheck(),
            new TipOnDollyCheck(), new TipOnFloorCheck(), new TipSlopeCheck(), new TipKerbCheck(),
            new FloorSlabCheck(), new FloorCompareCheck(), new FloorPunchingCheck(), new DollyRatedCheck(),
            new LooseCheck(), new SteelNamedCheck(), new MemberStrengthCheck(), new MemberShearCheck(), new SidewaysCheck(),
            new StrutCheck(),
            new SlenderCheck(), new TimberRailCheck(), new TwistCheck(), new StrongerCheck(),
            new BoltStrengthCheck(), new BearingCheck(), new PunchingCheck(), new SpacingCheck(), new WeldCheck(), new MissingJointCheck(),
            new ExaminationCheck(), new GearInUseCheck(), new GearTwiceCheck(),
            new HoldPointCheck(), new SignOffLapsedCheck(), new OrderCheck(), new TwoPeopleCheck(), new GearBookedOverdueCheck(),
            new ReadingsAtHoldCheck(), new BackLateCheck());

    private BuiltInChecks() {
    }

    /** Returns them, and after them what other bundles contribute, as a catalogue. */
    public static CheckCatalogue catalogue() {
        List<Check> all = new ArrayList<>(ALL);
        all.addAll(ContributedChecks.all(ALL.stream().map(check -> check.info().id()).collect(Collectors.toSet())));
        return new CheckCatalogue(all);
    }
}
