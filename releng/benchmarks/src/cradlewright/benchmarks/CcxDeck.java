package cradlewright.benchmarks;

import cradlewright.mechanics.geometry.Vec3;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;

/**
 * Input of the other program for the same dolly: two-node beams of its user element U1, contacts as linear springs, the rigid
 * shell as linear equations of three movements.
 *
 * <p>What its version 2.20 needs: the element's stiffness across its second axis has a wrong sign and its shear strain as
 * well. The first axis is therefore the vertical one, and the shear factor so large that no shear strain is left. Where loads
 * act sideways
 * too, each member is {@link #paired}: two elements of half the area, each with one second moment along its sound axis.
 */
final class CcxDeck {

    /** Shear factor; also scales the torque that is printed. */
    static final double SHEAR_FACTOR = 1e5;

    private static final int SHELL_SHIFT = 9001;
    private static final int SHELL_TURN = 9002;
    private static final int PAD_NODE = 8000;
    private static final int SPRING = 8000;

    private final StringBuilder text = new StringBuilder();

    private CcxDeck() {
    }

    private CcxDeck line(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
        return this;
    }

    static int node(int index) {
        return index + 1;
    }

    private void head(GridDolly dolly) {
        line("*NODE,NSET=FRAME");
        for (int i = 0; i < dolly.nodes.size(); i++) {
            put(node(i), dolly.nodes.get(i));
        }
    }

    private void put(int number, Vec3 at) {
        line("%d,%.9g,%.9g,%.9g", number, at.x(), at.y(), at.z());
    }

    private void material() {
        line("*USER ELEMENT,TYPE=U1,NODES=2,INTEGRATION POINTS=2,MAXDOF=6");
        line("*MATERIAL,NAME=STEEL").line("*ELASTIC").line("%.9g,%.9g", GridDolly.E, GridDolly.NU);
    }

    private void section(String set, double area, double first, double second, Vec3 axis) {
        line("*BEAM SECTION,ELSET=%s,MATERIAL=STEEL,SECTION=GENERAL", set);
        line("%.9g,%.9g,0.,%.9g,%.9g", area, first, second, SHEAR_FACTOR);
        line("%.12g,%.12g,%.12g", axis.x(), axis.y(), axis.z());
    }

    /** Returns the model of the coupled problem without steps; springs only for the given contacts. */
    private static CcxDeck coupled(GridDolly dolly, BitSet springs) {
        CcxDeck deck = new CcxDeck();
        deck.head(dolly);
        deck.line("*NODE,NSET=PADS");
        for (int t = 0; t < dolly.touches.size(); t++) {
            if (dolly.touches.get(t).pad()) {
                deck.put(PAD_NODE + t, dolly.nodes.get(dolly.touches.get(t).node()));
            }
        }
        deck.line("*NODE,NSET=SHELL");
        deck.put(SHELL_SHIFT, Vec3.ZERO);
        deck.put(SHELL_TURN, Vec3.ZERO);
        deck.line("*ELEMENT,TYPE=U1,ELSET=BARS");
        for (int b = 0; b < dolly.bars.size(); b++) {
            deck.line("%d,%d,%d", b + 1, node(dolly.bars.get(b).from()), node(dolly.bars.get(b).to()));
        }
        deck.material();
        deck.section("BARS", dolly.tube.area(), dolly.tube.iy(), dolly.tube.iz(), Vec3.UP);
        springs.stream().forEach(t -> deck.spring(dolly.touches.get(t), t));
        for (int t = 0; t < dolly.touches.size(); t++) {
            if (dolly.touches.get(t).pad()) {
                Vec3 at = dolly.nodes.get(dolly.touches.get(t).node());
                deck.line("*EQUATION").line("4");
                deck.line("%d,3,1.,%d,3,-1.,%d,1,%.12g,%d,2,%.12g", PAD_NODE + t, SHELL_SHIFT, SHELL_TURN, -at.y(), SHELL_TURN,
                        at.x());
            }
        }
        // Nothing acts sideways, but the floor plan of the grid must stand still.
        deck.line("*BOUNDARY").line("PADS,1,2").line("%d,1,2", SHELL_SHIFT).line("%d,3", SHELL_TURN);
        deck.line("%d,1,2", node(0)).line("%d,6", node(0));
        return deck;
    }

    private void spring(GridDolly.Touch touch, int t) {
        if (touch.pad()) {
            line("*ELEMENT,TYPE=SPRING2,ELSET=S%d", t).line("%d,%d,%d", SPRING + t, PAD_NODE + t, node(touch.node()));
            line("*SPRING,ELSET=S%d", t).line("3,3");
        } else {
            line("*ELEMENT,TYPE=SPRING1,ELSET=S%d", t).line("%d,%d", SPRING + t, node(touch.node()));
            line("*SPRING,ELSET=S%d", t).line("3");
        }
        line("%.9g", touch.stiffness());
    }

    /** One case with the given contacts shut. */
    static String single(GridDolly dolly, GridDolly.Case loads, BitSet shut) {
        CcxDeck deck = coupled(dolly, shut);
        deck.step(dolly, loads, shut, shut);
        return deck.text.toString();
    }

    /** All cases one after another, each with its own contacts shut. */
    static String steps(GridDolly dolly, List<GridDolly.Case> cases, List<BitSet> shut) {
        BitSet all = new BitSet();
        all.set(0, dolly.touches.size());
        CcxDeck deck = coupled(dolly, all);
        BitSet before = all;
        for (int c = 0; c < cases.size(); c++) {
            deck.step(dolly, cases.get(c), shut.get(c), before);
            before = shut.get(c);
        }
        return deck.text.toString();
    }

    private void step(GridDolly dolly, GridDolly.Case loads, BitSet shut, BitSet before) {
        line("*STEP").line("*STATIC");
        change("REMOVE", before, shut);
        change("ADD=WITH STRAIN", shut, before);
        line("*CLOAD,OP=NEW");
        double[] down = dolly.ownWeight();
        down[loads.boxNode()] += loads.box();
        double[] force = new double[down.length];
        for (int i = 0; i < down.length; i++) {
            force[i] = -down[i];
        }
        shut.stream().forEach(t -> {
            GridDolly.Touch touch = dolly.touches.get(t);
            double pull = touch.stiffness() * touch.gap();
            force[touch.node()] += touch.pad() ? pull : -pull;
            if (touch.pad()) {
                line("%d,3,%.9g", PAD_NODE + t, -pull);
            }
        });
        for (int i = 0; i < force.length; i++) {
            line("%d,3,%.9g", node(i), force[i]);
        }
        line("%d,3,%.9g", SHELL_SHIFT, -loads.shell());
        line("%d,1,%.9g", SHELL_TURN, -loads.shell() * loads.y()).line("%d,2,%.9g", SHELL_TURN, loads.shell() * loads.x());
        print("BARS");
    }

    private void change(String how, BitSet from, BitSet without) {
        BitSet changed = (BitSet) from.clone();
        changed.andNot(without);
        if (!changed.isEmpty()) {
            line("*MODEL CHANGE,TYPE=ELEMENT,%s", how);
            changed.stream().forEach(t -> line("S%d", t));
        }
    }

    private void print(String... elements) {
        line("*NODE PRINT,NSET=FRAME").line("U");
        if (text.indexOf("NSET=PADS") >= 0) {
            line("*NODE PRINT,NSET=PADS").line("U");
        }
        for (String set : elements) {
            line("*EL PRINT,ELSET=%s", set).line("S");
        }
        line("*END STEP");
    }

    /** Returns the compression (N) of each contact that is shut, or minus its opening times its stiffness. */
    static double[] contactForces(GridDolly dolly, CcxOutput out) {
        double[] force = new double[dolly.touches.size()];
        for (int t = 0; t < force.length; t++) {
            GridDolly.Touch touch = dolly.touches.get(t);
            double frame = out.movement(node(touch.node()))[2];
            double closing = touch.pad() ? frame - out.movement(PAD_NODE + t)[2] : -frame;
            force[t] = touch.stiffness() * (closing - touch.gap());
        }
        return force;
    }

    /** The grid on springs and held sideways, any node loads, every member cut into several and paired. */
    static String paired(GridDolly dolly, Bilateral bilateral, int cuts) {
        CcxDeck deck = new CcxDeck();
        deck.head(dolly);
        deck.line("*NODE");
        int next = 10001;
        List<int[]> pieces = new ArrayList<>();
        for (GridDolly.Bar bar : dolly.bars) {
            int[] chain = new int[cuts + 1];
            chain[0] = node(bar.from());
            chain[cuts] = node(bar.to());
            Vec3 from = dolly.nodes.get(bar.from());
            Vec3 along = dolly.nodes.get(bar.to()).minus(from);
            for (int k = 1; k < cuts; k++) {
                chain[k] = next++;
                deck.put(chain[k], from.plus(along.times(k / (double) cuts)));
            }
            pieces.add(chain);
        }
        for (boolean sideways : new boolean[] {false, true}) {
            for (int b = 0; b < pieces.size(); b++) {
                deck.line("*ELEMENT,TYPE=U1,ELSET=%s", set(dolly, b, sideways));
                for (int k = 0; k < cuts; k++) {
                    deck.line("%d,%d,%d", piece(b, k, cuts, sideways), pieces.get(b)[k], pieces.get(b)[k + 1]);
                }
            }
        }
        deck.material();
        deck.section("UPRIGHT", dolly.tube.area() / 2, dolly.tube.iy(), 0, Vec3.UP);
        deck.section("SIDEX", dolly.tube.area() / 2, dolly.tube.iz(), 0, new Vec3(0, 1, 0));
        deck.section("SIDEY", dolly.tube.area() / 2, dolly.tube.iz(), 0, new Vec3(-1, 0, 0));
        bilateral.springs().forEach((n, k) -> {
            deck.line("*ELEMENT,TYPE=SPRING1,ELSET=B%d", n).line("%d,%d", SPRING + n, node(n));
            deck.line("*SPRING,ELSET=B%d", n).line("3").line("%.9g", k);
        });
        deck.line("*BOUNDARY");
        bilateral.heldSideways().forEach(n -> deck.line("%d,1,2", node(n)));
        deck.line("*STEP").line("*STATIC").line("*CLOAD");
        bilateral.loads().forEach((n, six) -> {
            for (int k = 0; k < 6; k++) {
                deck.line("%d,%d,%.9g", node(n), k + 1, six[k]);
            }
        });
        deck.print("UPRIGHT", "SIDEX", "SIDEY");
        return deck.text.toString();
    }

    private static String set(GridDolly dolly, int bar, boolean sideways) {
        GridDolly.Bar b = dolly.bars.get(bar);
        boolean alongX = dolly.nodes.get(b.to()).x() > dolly.nodes.get(b.from()).x();
        return !sideways ? "UPRIGHT" : alongX ? "SIDEX" : "SIDEY";
    }

    /** Returns the number of one piece of a member. */
    static int piece(int bar, int part, int cuts, boolean sideways) {
        return (sideways ? 20001 : 10001) + bar * cuts + part;
    }
}
