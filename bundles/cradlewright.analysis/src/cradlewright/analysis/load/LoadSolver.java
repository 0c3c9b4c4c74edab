package cradlewright.analysis.load;

import cradlewright.analysis.facts.PropFacts;
import cradlewright.analysis.standing.Support;
import cradlewright.mechanics.contact.ContactKind;
import cradlewright.mechanics.contact.GradientBounds;
import cradlewright.mechanics.contact.SolveStatus;
import cradlewright.mechanics.contact.StaticsBounds;
import cradlewright.mechanics.coupled.Body;
import cradlewright.mechanics.coupled.CoupledProblem;
import cradlewright.mechanics.coupled.CoupledSolution;
import cradlewright.mechanics.coupled.StiffnessSweep;
import cradlewright.mechanics.formula.Constants;
import cradlewright.mechanics.frame.ForceMoment;
import cradlewright.mechanics.frame.FrameMember;
import cradlewright.mechanics.frame.FrameResult;
import cradlewright.mechanics.geometry.Vec3;
import cradlewright.mechanics.mass.EstimatedBalance;
import cradlewright.mechanics.mass.EstimatedBalance.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Solves one situation: as listed, at the unfavourable ends, over the stiffness of the shell, and what statics alone allow. */
final class LoadSolver {

    /** Twice the standard uncertainty: 19 times in 20. */
    private static final double COVERAGE = 2;
    /** Mass and the three coordinates of the balance point come first among the doubtful inputs. */
    private static final int BALANCE = Quantity.values().length;

    private final ContactSetting setting;
    private final Situation situation;

    LoadSolver(ContactSetting setting, Situation situation) {
        this.setting = setting;
        this.situation = situation;
    }

    Loads solve(boolean factored) {
        CoupledProblem problem = factored ? setting.factored(situation, LoadsKey.OWN, LoadsKey.CARRIED) : setting.problem(situation);
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

    /** What surrounds the listed answer: ends of what is known, the sweep over stiffness, statics. */
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

        /** Returns by how much the doubts may lessen a force, N; doubts that were asked apart do not depend on each other. */
        double below(int index) {
            return Math.sqrt(gradients.stream().map(g -> g.bound(index)).mapToDouble(bound -> square(bound.nominal() - bound.low()))
                    .sum());
        }

        /** Returns by how much the doubts may raise a force, N. */
        double above(int index) {
            return Math.sqrt(gradients.stream().map(g -> g.bound(index)).mapToDouble(bound -> square(bound.high() - bound.nominal()))
                    .sum());
        }

        private static double square(double step) {
            return step * step;
        }
    }

    private Ends ends(CoupledSolution rigid) {
        CoupledProblem problem = rigid.problem();
        List<GradientBounds> gradients = doubts(problem);
        Optional<StiffnessSweep> sweep = setting.twistMatters()
                ? Optional.of(StiffnessSweep.run(setting.softest(), ContactSetting.STIFFEST_SHELL, k -> setting.elastic(situation, k),
                rigid))
                : Optional.empty();
        StaticsBounds statics = sweep.map(StiffnessSweep::bounds).orElseGet(problem::staticsBounds);
        return new Ends(gradients, sweep, Optional.of(statics).filter(s -> s.status() == SolveStatus.OK));
    }

    /**
     * Returns what the doubts do, all together where the piece counts as rigid. A millimetre of height moves the more force the stiffer the
     * piece is: one whose stiffness is known feels heights as at the upper end of that, so they are asked apart. Each is solved anew where
     * a support lifts within its ends; that both together lift one that neither lifts alone is left out.
     */
    private List<GradientBounds> doubts(CoupledProblem rigid) {
        List<Support> heights = setting.doubtful();
        OptionalDouble stiffest = heights.isEmpty() ? OptionalDouble.empty() : setting.stiffest();
        if (stiffest.isEmpty()) {
            return List.of(doubts(rigid, loadSlopes(rigid, heights.size()), heights));
        }
        CoupledProblem known = setting.elastic(situation, stiffest.getAsDouble());
        double[][] ofHeights = new double[known.matrices().rowCount()][BALANCE + heights.size()];
        return List.of(doubts(rigid, loadSlopes(rigid, 0), List.of()), doubts(known, ofHeights, heights));
    }

    private GradientBounds doubts(CoupledProblem problem, double[][] loadSlopes, List<Support> heights) {
        return GradientBounds.of(problem.matrices(), loadSlopes, gapSlopes(problem, heights), covariance(setting.carried(), heights.size()),
                COVERAGE);
    }

    /**
     * Change of the load with mass (kg) and the place of the balance point (m), one column each; gaps, which come after them, change no
     * load.
     */
    private double[][] loadSlopes(CoupledProblem problem, int heights) {
        double mass = setting.carried().balance().mass();
        double perKilogram = Constants.GRAVITY * situation.weightFactor();
        double[] byMass = problem.loadChange(ContactSetting.SHELL, Body.force(setting.balance(), Vec3.UP.times(-perKilogram)));
        double[][] slopes = new double[byMass.length][BALANCE + heights];
        for (int axis = 0; axis < 3; axis++) {
            Vec3 step = axis == 0 ? new Vec3(1, 0, 0) : axis == 1 ? new Vec3(0, 1, 0) : Vec3.UP;
            Vec3 moment = step.cross(Vec3.UP.times(-mass * perKilogram));
            double[] change = problem.loadChange(ContactSetting.SHELL, new ForceMoment(Vec3.ZERO, moment));
            for (int row = 0; row < slopes.length; row++) {
                slopes[row][0] = byMass[row];
                slopes[row][axis + 1] = change[row];
            }
        }
        return slopes;
    }

    /** Change of the gaps with each doubtful one, in standard uncertainties; mass and balance point, which come first, change none. */
    private double[][] gapSlopes(CoupledProblem problem, List<Support> heights) {
        double[][] slopes = new double[problem.matrices().size()][BALANCE + heights.size()];
        for (int a = 0; a < heights.size(); a++) {
            slopes[problem.indexOf(heights.get(a).contactId())][BALANCE + a] = heights.get(a).gapU();
        }
        setting.propsFollow(heights).forEach((prop, follow) -> System.arraycopy(follow, 0, slopes[problem.indexOf(prop)], BALANCE,
                follow.length));
        return slopes;
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
        // The give or take of masses and heights and the stiffness of the shell are separate doubts: their steps add.
        double low = force - ends.below(index) - Math.max(0, force - ends.sweep.map(s -> s.least(id)).orElse(force));
        double high = force + ends.above(index) + Math.max(0, ends.sweep.map(s -> s.largest(id)).orElse(force) - force);
        double least = ends.statics.map(s -> s.least(index)).orElse(Double.NaN);
        double most = ends.statics.map(s -> s.largest(index)).orElse(Double.NaN);
        boolean pulls = solution.problem().matrices().kind(index) == ContactKind.HELD;
        return new Carried(id, setting.name(id), force, pulls ? low : Math.max(0, low), high, least, most, solution.shear(id).norm());
    }

    private List<MemberLoad> members(CoupledSolution rigid) {
        List<MemberLoad> loads = new ArrayList<>();
        setting.frame().ifPresent(frame -> {
            FrameResult result = setting.dollyResult(rigid, situation, LoadsKey.OWN);
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
