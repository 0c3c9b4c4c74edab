package cradlewright.analysis.load;

import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.load.ContactSetting.Stiffness;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactKind;
import cradlewright.mechanics.contact.ContactProblem;
import cradlewright.mechanics.contact.GradientBounds;
import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.contact.StaticsBounds;
import cradlewright.mechanics.coupled.CoupledProblem;
import cradlewright.mechanics.coupled.CoupledSolution;
import cradlewright.mechanics.coupled.StiffnessSweep;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.frame.FrameMember;
import cradlewright.mechanics.frame.FrameResult;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.Balance;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Solves one situation: as listed, at the unfavourable ends, over the stiffness of the shell, and what statics alone allow. */
final class LoadSolver {

    /** Twice the standard uncertainty: 19 times in 20. */
    private static final double COVERAGE = 2;
    /** Mass and the three coordinates of the balance point come first among the doubtful inputs. */
    private static final int BALANCE = Quantity.values().length;
    /** By how much mass (kg) or balance point (m) are moved to see what that does: loads follow it in proportion, sag nearly so. */
    private static final double STEP = 1e-3;

    private final ContactSetting setting;
    private final Situation situation;

    LoadSolver(ContactSetting setting, Situation situation) {
        this.setting = setting;
        this.situation = situation;
    }

    Loads solve(boolean factored) {
        CoupledProblem problem = factored ? setting.factored(situation, LoadsKey.OWN, LoadsKey.CARRIED) : setting.listed(situation);
        CoupledSolution solution = problem.solve();
        if (solution.status() == SolveStatus.NO_EQUILIBRIUM) {
            return Loads.none(situation, Loads.Outcome.FALLS, "no push of the supports can hold it: it falls over");
        }
        if (solution.status() != SolveStatus.OK) {
            return Loads.none(situation, Loads.Outcome.BROKE_OFF, "the calculation of the supports did not come to an end");
        }
        Ends ends = factored ? Ends.NONE : ends(solution);
        if (!ends.settled()) {
            return ends.falls() ? Loads.none(situation, Loads.Outcome.FALLS, "it may fall over at the unfavourable end of what is known")
                    : Loads.none(situation, Loads.Outcome.BROKE_OFF, "the calculation at the ends of what is known did not come to an end");
        }
        List<Carried> supports = setting.supports().stream().map(Support::contactId).map(id -> carried(id, solution, ends)).toList();
        List<Carried> castors = setting.floorContacts().stream().map(id -> carried(id, solution, ends)).toList();
        List<Carried> props = setting.props().stream().map(PropFacts::id).map(id -> carried(id, solution, ends)).toList();
        return new Loads(situation, Loads.Outcome.FOUND, "", supports, castors, props, factored ? members(solution) : List.of());
    }

    /**
     * What surrounds the listed answer: ends of what is known, the sweep over stiffness, statics.
     *
     * @param gradients at each stiffness within what is known of the piece, or rigid
     * @param sweep over every stiffness a piece may have of which nobody knows it
     */
    private record Ends(List<GradientBounds> gradients, Optional<StiffnessSweep> sweep, Optional<StaticsBounds> statics) {

        private static final Ends NONE = new Ends(List.of(), Optional.empty(), Optional.empty());

        /** Tells whether everything that was asked came to an end: a listed answer without its ends must never pass for one. */
        boolean settled() {
            return gradients.stream().allMatch(g -> g.status() == SolveStatus.OK && g.endStatus() == SolveStatus.OK)
                    && sweep.map(Ends::solved).orElse(true);
        }

        /** Bolts that statics alone cannot do without leave no bounds, but every stiffness its answer: whether they hold is asked after. */
        private static boolean solved(StiffnessSweep sweep) {
            return sweep.status() == SolveStatus.OK || sweep.status() == SolveStatus.NO_EQUILIBRIUM
                    && sweep.solutions().stream().allMatch(solution -> solution.status() == SolveStatus.OK);
        }

        boolean falls() {
            return gradients.stream().anyMatch(g -> g.endStatus() == SolveStatus.NO_EQUILIBRIUM);
        }

        /** Returns the least force that doubts leave at any stiffness, N. */
        double low(int index, double listed) {
            return gradients.stream().mapToDouble(g -> g.bound(index).low()).min().orElse(listed);
        }

        /** Returns the largest force that doubts leave at any stiffness, N. */
        double high(int index, double listed) {
            return gradients.stream().mapToDouble(g -> g.bound(index).high()).max().orElse(listed);
        }
    }

    /**
     * Returns the ends. Where it is known how stiff the piece is, mass, balance point and heights are all taken as it is stated and at
     * each end of torsion and bending, and the worst counts; in between a load goes one way with one stiffness as long as no contact
     * changes and no further support is redundant. Where it is not known, doubts count as on a rigid piece, and the sweep over every
     * stiffness comes on top.
     */
    private Ends ends(CoupledSolution listed) {
        Optional<ContactSetting.Known> known = setting.known();
        List<GradientBounds> gradients = known.map(k -> k.range().stream().map(Optional::of).map(this::doubts).toList())
                .orElseGet(() -> List.of(doubts(Optional.empty())));
        Optional<StiffnessSweep> sweep = known.isEmpty() && setting.twistMatters()
                ? Optional.of(StiffnessSweep.run(setting.softest(), ContactSetting.STIFFEST_SHELL, k -> setting.elastic(situation, k),
                listed))
                : Optional.empty();
        StaticsBounds statics = sweep.map(StiffnessSweep::bounds).orElseGet(listed.problem()::staticsBounds);
        return new Ends(gradients, sweep, Optional.of(statics).filter(s -> s.status() == SolveStatus.OK));
    }

    /** Returns what the doubts do, all together, to a piece of one stiffness. */
    private GradientBounds doubts(Optional<Stiffness> stiffness) {
        CoupledProblem problem = setting.problem(situation, stiffness);
        List<Support> heights = setting.doubtful();
        double[][] loads = new double[problem.matrices().rowCount()][BALANCE + heights.size()];
        double[][] gaps = gapSlopes(problem, heights, stiffness);
        for (Quantity quantity : Quantity.values()) {
            ContactProblem more = moved(problem, stiffness, quantity);
            putSlope(loads, quantity.ordinal(), problem.matrices().load(), more.load());
            putSlope(gaps, quantity.ordinal(), problem.matrices().gap(), more.gap());
        }
        return GradientBounds.of(problem.matrices(), loads, gaps, covariance(setting.carried(), heights.size()), COVERAGE);
    }

    /** Returns the problem with mass (kg) or balance point (m) raised by a step; a piece that gives sags otherwise as well. */
    private ContactProblem moved(CoupledProblem problem, Optional<Stiffness> stiffness, Quantity quantity) {
        Balance listed = setting.carried().balance();
        Balance there = switch (quantity) {
            case MASS -> new Balance(listed.mass() + STEP, listed.point());
            case X -> new Balance(listed.mass(), listed.point().plus(new Vec3(STEP, 0, 0)));
            case Y -> new Balance(listed.mass(), listed.point().plus(new Vec3(0, STEP, 0)));
            case Z -> new Balance(listed.mass(), listed.point().plus(new Vec3(0, 0, STEP)));
        };
        return setting.carrying(problem, situation, stiffness, there).matrices();
    }
    /** Change of the gaps with each doubtful one, in standard uncertainties; mass and balance point, which come first, change none. */
    private double[][] gapSlopes(CoupledProblem problem, List<Support> heights, Optional<Stiffness> stiffness) {
        double[][] slopes = new double[problem.matrices().size()][BALANCE + heights.size()];
        for (int a = 0; a < heights.size(); a++) {
            slopes[problem.indexOf(heights.get(a).contactId())][BALANCE + a] = heights.get(a).gapU();
        }
        setting.propsFollow(heights, stiffness).forEach((prop, follow) -> System.arraycopy(follow, 0, slopes[problem.indexOf(prop)],
                BALANCE, follow.length));
        return slopes;
    }

    private static void putSlope(double[][] slopes, int column, double[] listed, double[] more) {
        for (int row = 0; row < slopes.length; row++) {
            slopes[row][column] = (more[row] - listed[row]) / STEP;
        }
    }

    /** Mass and balance point as they are known, then each doubtful gap by itself. */
    private static double[][] covariance(EstimatedBalance carried, int heights) {
        Quantity[] quantities = Quantity.values();
        int inputs = BALANCE + heights;
        double[][] covariance = new double[inputs][inputs];
        for (int i = 0; i < BALANCE; i++) {
            for (int j = 0; j < BALANCE; j++) {
                covariance[i][j] = carried.covariance(quantities[i], quantities[j]);
            }
        }
        for (int i = BALANCE; i < inputs; i++) {
            covariance[i][i] = 1;
        }
        return covariance;
    }

    private Carried carried(String id, CoupledSolution solution, Ends ends) {
        int index = solution.problem().indexOf(id);
        double force = solution.force(id);
        // Where nobody knows the stiffness of the shell, it is a doubt apart from masses and heights: their steps add.
        double low = ends.low(index, force) - Math.max(0, force - ends.sweep.map(s -> s.least(id)).orElse(force));
        double high = ends.high(index, force) + Math.max(0, ends.sweep.map(s -> s.largest(id)).orElse(force) - force);
        double least = ends.statics.map(s -> s.least(index)).orElse(Double.NaN);
        double most = ends.statics.map(s -> s.largest(index)).orElse(Double.NaN);
        boolean pulls = solution.problem().matrices().kind(index) == ContactKind.HELD;
        return new Carried(id, setting.name(id), force, pulls ? low : Math.max(0, low), high, least, most, solution.shear(id).norm());
    }

    private List<MemberLoad> members(CoupledSolution solution) {
        List<MemberLoad> loads = new ArrayList<>();
        setting.frame().ifPresent(frame -> {
            FrameResult result = setting.dollyResult(solution, situation, LoadsKey.OWN);
            for (FrameMember member : result.loads().model().members()) {
                loads.add(new MemberLoad(member.name(), result.criticalStations(member.name()), result.nearEnd(member.name()),
                        result.farEnd(member.name()),
                        sag(result, member.name())));
            }
        });
        return loads;
    }

    /** Movement of the middle of a member against the middle of its ends, m. */
    private static double sag(FrameResult result, String member) {
        double length = result.loads().model().axes(member).length();
        Vec3 chord = result.motion(member, 0).translation().plus(result.motion(member, length).translation()).times(0.5);
        return result.motion(member, length / 2).translation().minus(chord).norm();
    }
}
