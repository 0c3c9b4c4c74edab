package cradlewright.analysis.standing;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Engine.IdsKey;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CarFacts;
import cradlewright.analysis.facts.CarrierKind;
import cradlewright.analysis.facts.ContactFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.Fact;
import cradlewright.analysis.facts.FixtureFacts;
import cradlewright.analysis.facts.GearFacts;
import cradlewright.analysis.facts.Hold;
import cradlewright.analysis.facts.LiftPointFacts;
import cradlewright.analysis.facts.MountFacts;
import cradlewright.analysis.facts.PieceFacts;
import cradlewright.analysis.facts.PieceKind;
import cradlewright.analysis.facts.PlaceFacts;
import cradlewright.analysis.facts.PlacementFacts;
import cradlewright.analysis.facts.SetupFacts;
import cradlewright.analysis.facts.ShimStackFacts;
import cradlewright.analysis.facts.SlabFacts;
import cradlewright.analysis.facts.Spot;
import cradlewright.analysis.facts.StageFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.VisitFacts;
import cradlewright.analysis.standing.Compliances.Compliance;
import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Follows the references of one visit and notes what the files leave open. */
final class StandingResolver {

    private final Reader reader;
    private final CarFacts car;
    private final List<String> missing = new ArrayList<>();
    private final Map<String, Height> lowByHeight = new HashMap<>();

    StandingResolver(Reader reader, CarFacts car) {
        this.reader = reader;
        this.car = car;
    }

    Optional<Standing> resolve(String visitId) {
        Optional<VisitFacts> visit = CarFacts.find(car.visits(), visitId);
        Optional<StageFacts> stage = visit.flatMap(VisitFacts::stageId).flatMap(car::stage);
        Optional<SetupFacts> setup = visit.flatMap(VisitFacts::setupId).flatMap(car::setup);
        if (visit.isEmpty() || stage.isEmpty() || setup.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(resolve(visit.get(), stage.get(), setup.get()));
    }

    private Standing resolve(VisitFacts visit, StageFacts stage, SetupFacts setup) {
        Optional<DollyFacts> dolly = find(DollyFacts.class, setup.dollyId(), "the dolly of " + setup.name());
        Optional<GearFacts.Lift> lift = find(GearFacts.Lift.class, setup.liftId(), "the lift of " + setup.name());
        Optional<GearFacts.Hoist> hoist = find(GearFacts.Hoist.class, setup.hoistId(), "the hoist of " + setup.name());
        if (setup.kind() == CarrierKind.DOLLY && setup.dollyId().isEmpty()) {
            missing.add(setup.name() + ": which dolly it stands on");
        }
        if (setup.kind() == CarrierKind.LIFT && setup.liftId().isEmpty()) {
            missing.add(setup.name() + ": which lift it is on");
        }
        if (setup.kind() == CarrierKind.STRAPS && setup.liftId().isEmpty() && setup.hoistId().isEmpty()) {
            missing.add(setup.name() + ": which lift or hoist its straps hang from");
        }
        List<Support> supports = new ArrayList<>();
        for (ContactFacts contact : setup.contacts()) {
            support(contact, setup, dolly, lift).ifPresent(supports::add);
        }
        Optional<PlaceFacts> place = place(visit);
        Optional<SlabFacts> slab = place.flatMap(PlaceFacts::slabId).flatMap(id -> reader.read(new FactKey<>(SlabFacts.class, id)));
        return new Standing(car, visit, stage, setup, dolly, lift, hoist, withGaps(supports, dolly, setup), stillFast(setup), place, slab,
                missing);
    }

    private <T extends Fact> Optional<T> find(Class<T> type, Optional<String> id, String what) {
        Optional<T> found = id.flatMap(i -> reader.read(new FactKey<>(type, i)));
        if (id.isPresent() && found.isEmpty()) {
            missing.add(what + " (the file names one that is not in the shop)");
        }
        return found;
    }

    private Optional<PlaceFacts> place(VisitFacts visit) {
        for (String id : reader.read(new IdsKey<>(PlacementFacts.class))) {
            Optional<PlacementFacts> placement = reader.read(new FactKey<>(PlacementFacts.class, id));
            if (placement.flatMap(PlacementFacts::visitId).filter(visit.id()::equals).isPresent()) {
                return placement.flatMap(PlacementFacts::placeId).flatMap(place -> reader.read(new FactKey<>(PlaceFacts.class, place)));
            }
        }
        return Optional.empty();
    }

    private List<MountFacts> stillFast(SetupFacts setup) {
        boolean shell = carries(setup, PieceKind.SHELL);
        boolean chassis = carries(setup, PieceKind.CHASSIS);
        if (!shell || chassis || setup.kind() == CarrierKind.CHASSIS) {
            return List.of();
        }
        return car.mounts().stream().filter(mount -> mount.fast().orElse(false)).toList();
    }

    private boolean carries(SetupFacts setup, PieceKind kind) {
        return setup.pieceIds().stream().flatMap(id -> CarFacts.find(car.pieces(), id).stream()).map(PieceFacts::kind)
                .anyMatch(kind::equals);
    }

    private Optional<Support> support(ContactFacts contact, SetupFacts setup, Optional<DollyFacts> dolly, Optional<GearFacts.Lift> lift) {
        Optional<MountFacts> mount = contact.mountId().flatMap(car::mount);
        Optional<LiftPointFacts> liftPoint = contact.liftPointId().flatMap(car::liftPoint);
        Optional<Vec3> onCar = mount.flatMap(MountFacts::position).or(() -> liftPoint.flatMap(LiftPointFacts::position)).map(Spot::at)
                .or(contact::point);
        if (onCar.isEmpty()) {
            missing.add(contact.name() + ": where on the car it holds (measure the mount or lift point from the marks)");
            return Optional.empty();
        }
        Holder holder = holder(contact, dolly, lift);
        Optional<String> fixturePad = holder instanceof Holder.OnFixture on ? on.fixture().padId() : Optional.empty();
        Optional<String> padId = contact.padId().or(() -> fixturePad);
        Optional<StockFacts.Pad> pad = padId.flatMap(id -> reader.read(new FactKey<>(StockFacts.Pad.class, id)));
        if (padId.isPresent() && pad.isEmpty()) {
            missing.add(contact.name() + ": what its pad is (the file names one that is not in stock)");
        }
        Hold hold = contact.hold().orElseGet(() -> holder instanceof Holder.OnFixture on ? on.fixture().hold() : Hold.RESTS);
        Optional<ShimStackFacts> shims = contact.shims().or(() -> mount.filter(m -> setup.kind() == CarrierKind.DOLLY)
                .flatMap(MountFacts::onDolly));
        Compliance compliance = compliance(contact, holder, padId.isPresent(), pad);
        Vec3 inCarrier = Carriers.toCarrier(onCar.get(), setup);
        Vec3 normal = Carriers.turn(contact.normal(), setup);
        Height gap = contact.gap().map(Height::of).orElse(Height.NONE);
        Support support = new Support(contact.id(), contact.name(), onCar.get(), inCarrier, normal, hold, mount, liftPoint, holder, pad,
                compliance.value(), compliance.assumed(), gap.si(), gap.u(),
                contact.gap().isPresent() ? GapFrom.MEASURED : GapFrom.NOTHING, shims);
        // A height is short by the part of it that lies along the push; of a stop at the side no height tells the gap.
        low(support, contact, dolly, setup).filter(low -> support.holdsUp())
                .ifPresent(low -> lowByHeight.put(contact.id(), low.times(normal.z())));
        return Optional.of(support);
    }

    private Holder holder(ContactFacts contact, Optional<DollyFacts> dolly, Optional<GearFacts.Lift> lift) {
        if (contact.carrierId().isEmpty()) {
            return new Holder.Unknown();
        }
        String id = contact.carrierId().get();
        Optional<FixtureFacts> fixture = dolly.flatMap(d -> d.fixture(id));
        if (fixture.isPresent()) {
            return new Holder.OnFixture(fixture.get());
        }
        Optional<GearFacts.ArmFacts> arm = lift.flatMap(l -> CarFacts.find(l.arms(), id));
        if (arm.isPresent()) {
            return new Holder.OnArm(lift.get(), arm.get());
        }
        Optional<MountFacts> mount = car.mount(id);
        if (mount.isPresent()) {
            return new Holder.OnChassis(mount.get());
        }
        Optional<GearFacts> gear = reader.read(new FactKey<>(GearFacts.class, id));
        if (gear.isPresent()) {
            return gear.get() instanceof GearFacts.Strap strap ? new Holder.InStrap(strap) : new Holder.OnStand(gear.get());
        }
        missing.add(contact.name() + ": what it rests on (the file names something that is not in the shop)");
        return new Holder.Unknown();
    }

    private static Compliance compliance(ContactFacts contact, Holder holder, boolean padNamed, Optional<StockFacts.Pad> pad) {
        if (contact.compliance().isPresent()) {
            return new Compliance(contact.compliance().get().si(), false);
        }
        Compliance soft = pad.map(Compliances::ofPad)
                .orElseGet(() -> new Compliance(padNamed ? Compliances.UNKNOWN_PAD : Compliances.BARE_STEEL, true));
        if (holder instanceof Holder.OnFixture on && on.fixture().stiffness().isPresent()) {
            return soft.plus(new Compliance(1 / on.fixture().stiffness().get().si(), false));
        }
        if (holder instanceof Holder.OnArm on) {
            Compliance armAlone = Compliances.ofStiffness(on.arm().stiffness(), Compliances.UNKNOWN_ARM);
            return armAlone.plus(Compliances.ofStiffness(on.arm().padStiffness(), Compliances.UNKNOWN_PAD));
        }
        if (holder instanceof Holder.InStrap in) {
            return Compliances.ofStiffness(in.strap().stiffness(), Compliances.UNKNOWN_STRAP);
        }
        return soft;
    }

    /**
     * Returns the supports with the gaps that follow from heights, when nobody measured a gap and the heights of all are known. Measured
     * gaps count from where the others touch, heights from the floor: the two are never mixed, nor heights with none.
     */
    private List<Support> withGaps(List<Support> supports, Optional<DollyFacts> dolly, SetupFacts setup) {
        boolean measured = supports.stream().anyMatch(Support::gapKnown);
        if (measured || lowByHeight.size() < supports.size()) {
            return supports;
        }
        GapFrom from = gapFrom(dolly, setup);
        return supports.stream().map(support -> support.withGap(lowByHeight.get(support.contactId()), from)).toList();
    }

    private static GapFrom gapFrom(Optional<DollyFacts> dolly, SetupFacts setup) {
        if (setup.kind() == CarrierKind.CHASSIS) {
            return setup.shimTarget().filter(SetupFacts.ShimTarget.AS_FOUND::equals).map(target -> GapFrom.STACKS_AS_FOUND)
                    .orElse(GapFrom.STACKS_BY_DRAWING);
        }
        if (dolly.isEmpty()) {
            return GapFrom.SET_HEIGHTS;
        }
        return dolly.flatMap(DollyFacts::heights).map(taken -> switch (taken) {
            case STANDING -> GapFrom.STANDING_DOLLY;
            case DRAWING -> GapFrom.DRAWING;
        }).orElse(GapFrom.TAKEN_AS_STANDING);
    }

    /**
     * Returns by how much a support is low, as far as heights or stacks tell. Only the twist of these numbers acts on the forces, a
     * common offset or slope does not.
     */
    private static Optional<Height> low(Support support, ContactFacts contact, Optional<DollyFacts> dolly, SetupFacts setup) {
        if (support.holder() instanceof Holder.OnChassis on) {
            return setup.kind() == CarrierKind.CHASSIS ? lowOnChassis(support, on.mount(), setup) : Optional.empty();
        }
        // Beside fixtures of a dolly a stand would count from another floor than they do.
        boolean set = dolly.isEmpty() && (support.holder() instanceof Holder.OnStand || support.holder() instanceof Holder.OnArm);
        return set ? contact.height().flatMap(height -> lowOn(Height.of(height), support)) : lowOnFixture(support, dolly);
    }

    /**
     * Returns by how much the stack on the chassis is short. As found: shell and chassis had settled onto the stacks that were found, so
     * the faces lie as far apart as those were high. By the drawing: the faces lie where the places of the two mounts say; where one
     * mount stands for both, they meet.
     */
    private static Optional<Height> lowOnChassis(Support support, MountFacts below, SetupFacts setup) {
        Optional<Height> now = support.shims().flatMap(Height::of);
        Optional<Height> wanted = setup.shimTarget().flatMap(target -> switch (target) {
            case AS_FOUND -> support.mount().flatMap(MountFacts::asFound).flatMap(Height::of);
            case DRAWING -> below.position().map(spot -> apart(support, below, spot));
            case MEASURED -> Optional.<Height>empty();
        });
        return wanted.flatMap(height -> now.map(height::minus));
    }

    private static Height apart(Support support, MountFacts below, Spot spot) {
        boolean same = support.mount().filter(mount -> mount.id().equals(below.id())).isPresent();
        return same ? Height.NONE : Height.of(support.onCar(), place(support)).minus(Height.of(spot.at(), Optional.of(spot)));
    }

    /** Returns the place on the car as it was given; nothing for a bare point, of which nobody says what it is off by. */
    private static Optional<Spot> place(Support support) {
        return support.mount().flatMap(MountFacts::position).or(() -> support.liftPoint().flatMap(LiftPointFacts::position));
    }

    /** Returns height of the place on the car less that of what lies below it: the top of what carries, pad and shims. */
    private static Optional<Height> lowOn(Height top, Support support) {
        Optional<Height> stack = support.shims().isPresent() ? support.shims().flatMap(Height::of) : Optional.of(Height.NONE);
        Optional<Height> pad = support.pad().isPresent() ? support.pad().get().thickness().map(Height::of) : Optional.of(Height.NONE);
        Height face = Height.of(support.inCarrier(), place(support));
        return stack.flatMap(shims -> pad.map(thickness -> face.minus(top).minus(thickness).minus(shims)));
    }

    /** Returns height of the mount less the height of what stands below it. */
    private static Optional<Height> lowOnFixture(Support support, Optional<DollyFacts> dolly) {
        if (!(support.holder() instanceof Holder.OnFixture on) || on.fixture().height().isEmpty()) {
            return Optional.empty();
        }
        Optional<Vec3> base = dolly.flatMap(d -> d.base(on.fixture()));
        Height own = Height.of(on.fixture().height().get());
        return base.flatMap(foot -> lowOn(new Height(foot.z() + own.si() + on.fixture().offset().z(), own.variance()), support));
    }
}
