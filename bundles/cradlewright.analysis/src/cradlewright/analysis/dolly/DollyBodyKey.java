package cradlewright.analysis.dolly;

import cradlewright.analysis.engine.Engine.FactKey;
import cradlewright.analysis.engine.Key;
import cradlewright.analysis.engine.Reader;
import cradlewright.analysis.facts.CastorFacts;
import cradlewright.analysis.facts.DollyFacts;
import cradlewright.analysis.facts.EndRelease;
import cradlewright.analysis.facts.MemberFacts;
import cradlewright.analysis.facts.NodeFacts;
import cradlewright.analysis.facts.StockFacts;
import cradlewright.analysis.facts.Value;
import cradlewright.mechanics.frame.Dof;
import cradlewright.mechanics.frame.FrameMember;
import cradlewright.mechanics.frame.FrameModel;
import cradlewright.mechanics.frame.FrameStructure;
import cradlewright.mechanics.frame.LooseStructureException;
import cradlewright.mechanics.frame.MemberSection;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.section.SectionProperties;
import cradlewright.mechanics.steel.Steel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The body of a dolly.
 *
 * @param dollyId the dolly
 */
public record DollyBodyKey(String dollyId) implements Key<DollyBody> {

    /** Below this share of a member's length across, its up direction is taken along x instead: the member stands upright. */
    private static final double UPRIGHT = 1e-6;
    /** Shear modulus of softwood over its modulus along the grain, EN 338 (from memory). */
    private static final double TIMBER_SHEAR_SHARE = 1.0 / 16;

    /** Twist stiffness that stands in for a pin, N*m/rad: a turn by one degree takes less than 0.2 N*m, which no castor feels. */
    private static final double PIN = 10;

    @Override
    public DollyBody compute(Reader reader) {
        Optional<DollyFacts> dolly = reader.read(new FactKey<>(DollyFacts.class, dollyId));
        return dolly.map(facts -> new Assembly(reader, facts).body())
                .orElseGet(() -> new DollyBody(Optional.empty(), 0, Optional.empty(), 0, List.of("the dolly itself"), List.of(),
                        Optional.empty()));
    }

    private static final class Assembly {
        private final Reader reader;
        private final DollyFacts dolly;
        private final List<String> missing = new ArrayList<>();
        private final Map<MemberFacts, Double> memberMasses = new HashMap<>();
        private double mass;
        private Vec3 moment = Vec3.ZERO;

        Assembly(Reader reader, DollyFacts dolly) {
            this.reader = reader;
            this.dolly = dolly;
        }

        DollyBody body() {
            Optional<FrameModel> model = dolly.members().isEmpty() ? Optional.empty() : model();
            double castorMass = addCastors();
            double frameMass = mass;
            Optional<Vec3> centre = frameMass > 0 ? Optional.of(moment.times(1 / frameMass)) : Optional.empty();
            double own = dolly.mass().map(Value::si).orElse(frameMass);
            Optional<Vec3> balance = dolly.balancePoint().or(() -> centre).or(this::middleOfCastors);
            if (own <= 0) {
                missing.add("mass of the dolly: weigh it, or read it off its plate");
            }
            if (model.isEmpty()) {
                return new DollyBody(Optional.empty(), own, balance, castorMass, missing, List.of(), Optional.empty());
            }
            try {
                return new DollyBody(Optional.of(FrameStructure.freeBody(model.get())), own, balance, castorMass, missing, List.of(),
                        rocking());
            } catch (LooseStructureException e) {
                return new DollyBody(Optional.empty(), own, balance, castorMass, missing, names(e.members()), Optional.empty());
            } catch (IllegalArgumentException e) {
                missing.add("members that make a frame: " + e.getMessage());
                return new DollyBody(Optional.empty(), own, balance, castorMass, missing, List.of(), Optional.empty());
            }
        }

        /** Returns the rocking end; called only where every member has its ends, its section and its material. */
        private Optional<RockingEnd> rocking() {
            return new RockingEndFinder(dolly).find(memberMasses::get, this::castorMass);
        }

        private double castorMass(CastorFacts castor) {
            return castor.typeId().flatMap(id -> reader.read(new FactKey<>(StockFacts.CastorType.class, id)))
                    .flatMap(StockFacts.CastorType::mass)
                    .map(Value::si).orElse(0.0);
        }

        private List<String> names(List<String> memberIds) {
            return dolly.members().stream().filter(member -> memberIds.contains(member.id())).map(MemberFacts::name).toList();
        }

        private Optional<Vec3> middleOfCastors() {
            List<Vec3> points = dolly.castors().stream().flatMap(castor -> castor.nodeId().stream()).flatMap(id -> dolly.node(id).stream())
                    .flatMap(node -> node.at().stream()).toList();
            return points.stream().reduce(Vec3::plus).map(sum -> sum.times(1.0 / points.size()));
        }

        private double addCastors() {
            double sum = 0;
            for (CastorFacts castor : dolly.castors()) {
                Optional<StockFacts.CastorType> type = castor.typeId()
                        .flatMap(id -> reader.read(new FactKey<>(StockFacts.CastorType.class, id)));
                Optional<Vec3> at = castor.nodeId().flatMap(dolly::node).flatMap(NodeFacts::at);
                Optional<Value> m = type.flatMap(StockFacts.CastorType::mass);
                if (m.isEmpty() && dolly.mass().isEmpty()) {
                    missing.add(castor.name() + ": mass of its type (weigh one, or weigh the whole dolly)");
                }
                if (m.isPresent() && at.isPresent()) {
                    sum += m.get().si();
                    mass += m.get().si();
                    moment = moment.plus(at.get().times(m.get().si()));
                }
            }
            return sum;
        }

        private Optional<FrameModel> model() {
            FrameModel.Builder builder = FrameModel.builder();
            Set<String> used = new HashSet<>();
            List<FrameMember> members = new ArrayList<>();
            for (MemberFacts member : dolly.members()) {
                Optional<FrameMember> framed = member(member);
                framed.ifPresent(m -> {
                    members.add(m);
                    used.add(m.from());
                    used.add(m.to());
                });
            }
            if (members.size() < dolly.members().size()) {
                return Optional.empty();
            }
            for (NodeFacts node : dolly.nodes()) {
                if (used.contains(node.id())) {
                    builder.node(node.id(), node.at().orElseThrow());
                }
            }
            members.forEach(builder::member);
            try {
                return Optional.of(builder.build());
            } catch (IllegalArgumentException e) {
                missing.add("members that make a frame: " + e.getMessage());
                return Optional.empty();
            }
        }

        private Optional<FrameMember> member(MemberFacts member) {
            Optional<Vec3> from = member.fromId().flatMap(dolly::node).flatMap(NodeFacts::at);
            Optional<Vec3> to = member.toId().flatMap(dolly::node).flatMap(NodeFacts::at);
            Optional<SectionShape> shape = member.sectionId().flatMap(id -> reader.read(new SectionKey(id)));
            if (from.isEmpty() || to.isEmpty()) {
                missing.add(member.name() + ": a place for both of its ends");
                return Optional.empty();
            }
            if (shape.isEmpty()) {
                missing.add(member.name() + ": a section with all its measures");
                return Optional.empty();
            }
            Vec3 along = to.get().minus(from.get());
            if (along.norm() == 0) {
                missing.add(member.name() + ": two ends that do not lie in one place");
                return Optional.empty();
            }
            Optional<Material> material = material(member, shape.get());
            if (material.isEmpty()) {
                missing.add(member.name() + ": what its timber is (strength class)");
                return Optional.empty();
            }
            double memberMass = material.get().density * shape.get().properties().area() * along.norm();
            mass += memberMass;
            memberMasses.put(member, memberMass);
            moment = moment.plus(from.get().plus(to.get()).times(memberMass / 2));
            MemberSection section = section(shape.get().properties(), material.get());
            boolean turns = member.releaseFrom().turns() || member.releaseTo().turns();
            FrameMember framed = FrameMember.of(member.id(), member.fromId().orElseThrow(), member.toId().orElseThrow(),
                    turns ? pinned(section, along.norm()) : section, up(member, along)).withDensity(material.get().density);
            return Optional.of(framed.releasedNear(released(member.releaseFrom())).releasedFar(released(member.releaseTo())));
        }

        /** A hinge passes no bending about the member's horizontal axis. */
        private static Dof[] released(EndRelease release) {
            return release.hinge() ? new Dof[] {Dof.RY} : new Dof[0];
        }

        /**
         * A member with a pin along it passes no twist. What lies beyond the pin would then turn freely as long as no castor touches, and
         * a structure that is held at one node only could not be worked out: so the member keeps a twist stiffness of {@link #PIN}.
         */
        private static MemberSection pinned(MemberSection s, double length) {
            return s.withTorsionConstant(PIN * length / s.g());
        }

        private static Vec3 up(MemberFacts member, Vec3 along) {
            Vec3 wanted = member.up().orElse(Vec3.UP);
            return wanted.cross(along.unit()).norm() > UPRIGHT ? wanted : new Vec3(1, 0, 0);
        }

        private record Material(double e, double g, double density) {
        }

        private Optional<Material> material(MemberFacts member, SectionShape shape) {
            if (!shape.timber()) {
                return Optional.of(new Material(Steel.E, Steel.G, Steel.DENSITY));
            }
            return member.sectionId().flatMap(id -> reader.read(new FactKey<>(StockFacts.TimberRail.class, id)))
                    .flatMap(StockFacts.TimberRail::timberId).flatMap(id -> reader.read(new FactKey<>(StockFacts.Timber.class, id)))
                    .flatMap(TimberGrade::of).map(c -> new Material(c.meanModulus(), c.meanModulus() * TIMBER_SHEAR_SHARE,
                    c.meanDensity()));
        }

        private static MemberSection section(SectionProperties p, Material m) {
            return new MemberSection(m.e, m.g, p.area(), p.iy(), p.iz(), p.torsion().constant(), p.shearY().deflection(),
                    p.shearZ().deflection()).withShearCentre(p.torsion().shearCentreY() - p.moments().centroidY(),
                    p.torsion().shearCentreZ() - p.moments().centroidZ());
        }
    }
}
