package cradlewright.ui.wizards;

import cradlewright.model.base.Basis;
import cradlewright.model.base.Hold;
import cradlewright.model.base.Named;
import cradlewright.model.fixture.BoltedJoint;
import cradlewright.model.fixture.Brake;
import cradlewright.model.fixture.Castor;
import cradlewright.model.fixture.Dolly;
import cradlewright.model.fixture.DollyBuild;
import cradlewright.model.fixture.DollyNode;
import cradlewright.model.fixture.Fixture;
import cradlewright.model.fixture.FixtureFactory;
import cradlewright.model.fixture.HoleKind;
import cradlewright.model.fixture.Joint;
import cradlewright.model.fixture.Member;
import cradlewright.model.fixture.MemberRole;
import cradlewright.model.io.IdSource;
import cradlewright.model.io.StandardStock;
import cradlewright.model.stock.BoltType;
import cradlewright.model.stock.CastorType;
import cradlewright.model.stock.FoldShape;
import cradlewright.model.stock.FoldedSection;
import cradlewright.model.stock.PadType;
import cradlewright.model.stock.Steel;
import cradlewright.model.stock.Stock;
import cradlewright.model.stock.StockFactory;
import cradlewright.model.stock.StockItem;
import cradlewright.model.stock.Tread;
import cradlewright.quantity.Measured;
import cradlewright.quantity.Position;
import cradlewright.quantity.Source;
import cradlewright.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.osgi.util.NLS;

/**
 * A dolly that is to be, either bought or of the shop's own make. Bought: four castors and pairs of supports under a plate rating. Own:
 * two rails and three crossmembers, all one channel folded from one sheet; the castors sit under the ends of the rails; ends of rails and
 * of the middle crossmember are bolted, each with four bolts; fixtures in pairs on the rails. Lengths in mm, masses in kg.
 *
 * @param own whether it is of the shop's own make
 * @param length over the rails
 * @param width from rail to rail, middle to middle
 * @param height of the fixtures' tops over the floor
 * @param rail height of the folded channel; not used for a bought one
 * @param gauge thickness of its sheet; not used for a bought one
 * @param rows pairs of fixtures
 * @param wheel diameter of the wheels
 * @param castorHeight height of a castor over all
 * @param castorLoad what the plate of a castor says
 * @param plate what the plate of a bought dolly says
 * @param fixture what the drawing of a fixture says that it takes, N
 * @param mass what the dolly weighs; of a dolly of own make it is worked out when nothing is said
 */
record DollyPlan(boolean own, double length, double width, double height, double rail, double gauge, int rows, double wheel,
        double castorHeight, double castorLoad, Optional<Double> plate, Optional<Double> fixture,
        Optional<Double> mass) {

    static final String STEEL = "S355MC for folding, up to 8 mm";
    static final String BOLT = "M10 8.8";
    static final String PAD = "Cork pad 100 x 100 x 6";
    private static final double FLANGE_SHARE = 0.5;
    private static final double PITCH = 40;
    private static final double EDGE = 20;

    /** Polyurethane castors of 160 and 200 mm weigh about 4 and 5 kg: common practice, no source; kg/mm2. */
    private static final double MASS_OF_WHEEL = 1.4e-4;

    /** The wheel runs behind the swivel axis by about three tenths of its diameter: common practice, no source. */
    private static final double LEAD_OF_WHEEL = 0.3;

    /** Where the axes of the rails lie over the floor. */
    double axis() {
        return castorHeight + (own ? rail / 2 : 0);
    }

    /** Fills a dolly; what it is made of comes into a stock unless it is there. */
    void fill(Dolly dolly, Stock stock, IdSource ids) {
        new Work(dolly, stock, ids).run();
    }

    /** Fills one dolly. */
    private final class Work {

        private final FixtureFactory make = FixtureFactory.eINSTANCE;
        private final Dolly dolly;
        private final Stock stock;
        private final IdSource ids;
        private final StandardStock standards = StandardStock.load();
        private FoldedSection channel;
        private Steel steel;

        Work(Dolly dolly, Stock stock, IdSource ids) {
            this.dolly = dolly;
            this.stock = stock;
            this.ids = ids;
        }

        void run() {
            dolly.setBuild(own ? DollyBuild.OWN : DollyBuild.BOUGHT);
            plate.ifPresent(load -> {
                dolly.setRatedLoad(Measured.of(load, Unit.KILOGRAM, Source.PLATE));
                dolly.setBasis(Basis.RATED_LOAD);
            });
            mass.ifPresent(found -> {
                dolly.setMass(Measured.of(found, Unit.KILOGRAM, Source.WEIGHED));
                dolly.setBalancePoint(Position.of(length / 2, 0, axis()));
            });
            if (own) {
                steel = taken(STEEL, Steel.class);
                channel = channel();
            }
            PadType pad = taken(PAD, PadType.class);
            List<DollyNode> left = side(Messages.Dolly_left, -width / 2, pad);
            List<DollyNode> right = side(Messages.Dolly_right, width / 2, pad);
            if (own) {
                frame(left, right);
            }
            CastorType type = castorType();
            castor(Messages.Dolly_frontLeft, left.get(0), type);
            castor(Messages.Dolly_frontRight, right.get(0), type);
            castor(Messages.Dolly_rearLeft, left.get(left.size() - 1), type);
            castor(Messages.Dolly_rearRight, right.get(right.size() - 1), type);
        }

        /** Puts points along one side, with a fixture on each but the ends and the middle. */
        private List<DollyNode> side(String side, double across, PadType pad) {
            List<DollyNode> nodes = new ArrayList<>();
            String letter = across < 0 ? "L" : "R";
            nodes.add(node(NLS.bind(Messages.Dolly_end, side, Messages.Dolly_front), 0, across));
            int ahead = rows / 2;
            for (int row = 1; row <= rows; row++) {
                if (row == ahead + 1) {
                    nodes.add(node(NLS.bind(Messages.Dolly_end, side, Messages.Dolly_middle), length / 2, across));
                }
                DollyNode node = node(NLS.bind(Messages.Dolly_under, row + letter), place(row), across);
                nodes.add(node);
                fixture(row + letter, node, pad);
            }
            nodes.add(node(NLS.bind(Messages.Dolly_end, side, Messages.Dolly_rear), length, across));
            return nodes;
        }

        /** An even number of rows has none in the middle; of an odd one the middle row stands just behind the middle crossmember. */
        private double place(int row) {
            double share = (row - 0.5) / rows;
            return rows % 2 == 1 && row == rows / 2 + 1 ? length / 2 + 2 * EDGE : Math.rint(share * length);
        }

        private DollyNode node(String name, double along, double across) {
            DollyNode node = named(make.createDollyNode(), name);
            node.setPosition(Position.of(along, across, axis()));
            dolly.getNodes().add(node);
            return node;
        }

        private void fixture(String name, DollyNode node, PadType pad) {
            Fixture fixture = named(make.createFixture(), name);
            fixture.setNode(node);
            fixture.setHeight(Measured.of(height - axis(), Unit.MILLIMETRE, Source.DRAWING));
            fixture.setHold(Hold.RESTS);
            fixture.setPad(pad);
            DollyPlan.this.fixture.ifPresent(load -> {
                fixture.setRatedLoad(Measured.of(load, Unit.NEWTON, Source.DRAWING));
                fixture.setBasis(Basis.WORKING_LOAD_LIMIT);
            });
            dolly.getFixtures().add(fixture);
        }

        private void frame(List<DollyNode> left, List<DollyNode> right) {
            rail(Messages.Dolly_left, left);
            rail(Messages.Dolly_right, right);
            int middle = 1 + rows / 2;
            cross(Messages.Dolly_front, left.get(0), right.get(0));
            Member between = cross(Messages.Dolly_middle, left.get(middle), right.get(middle));
            between.setEndFrom(joint());
            between.setEndTo(joint());
            cross(Messages.Dolly_rear, left.get(left.size() - 1), right.get(right.size() - 1));
        }

        private void rail(String side, List<DollyNode> nodes) {
            for (int i = 1; i < nodes.size(); i++) {
                Member member = member(NLS.bind(Messages.Dolly_rail, side, i), nodes.get(i - 1), nodes.get(i), MemberRole.RAIL);
                // Between two crossmembers nothing holds the flange of a rail sideways.
                member.setUnbracedLength(Measured.of(length / 2, Unit.MILLIMETRE));
                if (i == 1) {
                    member.setEndFrom(joint());
                }
                if (i == nodes.size() - 1) {
                    member.setEndTo(joint());
                }
            }
        }

        private Member cross(String where, DollyNode from, DollyNode to) {
            return member(NLS.bind(Messages.Dolly_cross, where), from, to, MemberRole.CROSS);
        }

        private Member member(String name, DollyNode from, DollyNode to, MemberRole role) {
            Member member = named(make.createMember(), name);
            member.setFrom(from);
            member.setTo(to);
            member.setRole(role);
            member.setSection(channel);
            member.setSteel(steel);
            dolly.getMembers().add(member);
            return member;
        }

        private Joint joint() {
            BoltedJoint joint = named(make.createBoltedJoint(), NLS.bind(Messages.Dolly_joint, dolly.getJoints().size() + 1));
            joint.setBolt(taken(BOLT, BoltType.class));
            joint.setRows(2);
            joint.setColumns(2);
            joint.setPitch(drawn(PITCH));
            joint.setGauge(drawn(PITCH));
            joint.setE1(drawn(EDGE));
            joint.setE2(drawn(EDGE));
            joint.setPlateThickness(drawn(gauge));
            joint.setPlateSteel(steel);
            joint.setHoles(HoleKind.NORMAL);
            dolly.getJoints().add(joint);
            return joint;
        }

        private void castor(String name, DollyNode node, CastorType type) {
            Castor castor = named(make.createCastor(), name);
            castor.setNode(node);
            castor.setType(type);
            castor.setSwivel(true);
            castor.setBrake(Brake.WHEEL_AND_SWIVEL);
            dolly.getCastors().add(castor);
        }

        private FoldedSection channel() {
            double flange = rail * FLANGE_SHARE;
            String name = NLS.bind(Messages.Dolly_channel, new Object[] {plain(rail), plain(flange), plain(gauge)});
            return there(FoldedSection.class, section -> name.equals(section.getName())).orElseGet(() -> {
                FoldedSection section = added(StockFactory.eINSTANCE.createFoldedSection(), name, Messages.Dolly_drawing);
                section.setShape(FoldShape.CHANNEL);
                section.setHeight(Measured.of(rail, Unit.MILLIMETRE));
                section.setWidth(Measured.of(flange, Unit.MILLIMETRE));
                section.setThickness(Measured.of(gauge, Unit.MILLIMETRE));
                section.setInsideRadius(Measured.of(gauge, Unit.MILLIMETRE));
                return section;
            });
        }

        private CastorType castorType() {
            String name = NLS.bind(Messages.Dolly_castor, plain(wheel), plain(castorLoad));
            return there(CastorType.class, type -> name.equals(type.getName())).orElseGet(() -> {
                CastorType type = added(StockFactory.eINSTANCE.createCastorType(), name, Messages.Dolly_castorSource);
                type.setWheelDiameter(Measured.of(wheel, Unit.MILLIMETRE));
                type.setRatedLoad(Measured.of(castorLoad, Unit.KILOGRAM, Source.PLATE));
                type.setMass(Measured.of(Math.rint(wheel * wheel * MASS_OF_WHEEL), Unit.KILOGRAM, Source.GUESSED));
                type.setLead(Measured.of(Math.rint(wheel * LEAD_OF_WHEEL), Unit.MILLIMETRE, Source.GUESSED));
                type.setTread(Tread.POLYURETHANE);
                return type;
            });
        }

        private <T extends StockItem> T added(T item, String name, String source) {
            named(item, name).setSource(source);
            stock.getItems().add(item);
            return item;
        }

        private <T extends StockItem> T taken(String name, Class<T> type) {
            standards.take(standards.find(name).orElseThrow(), stock, ids);
            return there(type, item -> name.equals(item.getName())).orElseThrow();
        }

        private <T extends StockItem> Optional<T> there(Class<T> type, Predicate<T> wanted) {
            return stock.getItems().stream().filter(type::isInstance).map(type::cast).filter(wanted).findFirst();
        }

        private <T extends Named> T named(T object, String name) {
            object.setName(name);
            return ids.give(object);
        }
    }

    private static Measured drawn(double millimetres) {
        return Measured.of(millimetres, Unit.MILLIMETRE, Source.DRAWING);
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString(Math.round(number)) : Double.toString(number);
    }
}
