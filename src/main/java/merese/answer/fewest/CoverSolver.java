package merese.answer.fewest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalLong;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;
import org.ojalgo.optimisation.integer.IntegerStrategy.GMICutConfiguration;
import org.ojalgo.type.context.NumberContext;

/**
 * Solves a covering problem to proved optimality by branch and bound (ojAlgo). Conditions are added
 * one by one; each question is solved anew under all of them. Whatever the solver gives is held
 * against the problem before it is believed.
 */
final class CoverSolver {
  private static final double HALF = 0.5;

  /** By so much less than the time given, the solver has not ended for want of time. */
  private static final long MARGIN = 20;

  private static final double ROUNDING = 1e-6;

  /**
   * The cuts of ojAlgo 57.1.0 shut out covers of some small problems, and its usual tolerance takes
   * a cost of 495 for one of 494; so there are no cuts, and goals are told apart to twelve digits.
   */
  private static final IntegerStrategy EXACT =
      IntegerStrategy.DEFAULT
          .withGMICutConfiguration(new GMICutConfiguration().withFractionality(0.9))
          .withGapTolerance(NumberContext.of(12));

  private final CoverProblem problem;
  private final long deadline;
  private final List<Condition> conditions = new ArrayList<>();

  /**
   * @param deadline by {@link System#nanoTime}
   */
  CoverSolver(CoverProblem problem, long deadline) {
    this.problem = problem;
    this.deadline = deadline;
  }

  /** What is to be as small or as large as can be; whole numbers. */
  sealed interface Goal permits Sum, RowsHad {
    long value(List<Integer> taken);
  }

  /** The weights of the columns that are taken. */
  record Sum(long[] weights) implements Goal {
    @Override
    public long value(List<Integer> taken) {
      return taken.stream().mapToLong(column -> weights[column]).sum();
    }
  }

  /**
   * The rows that are in some taken column.
   *
   * @param columns the rows that count in each column
   */
  record RowsHad(List<BitSet> columns) implements Goal {
    @Override
    public long value(List<Integer> taken) {
      BitSet had = new BitSet();
      taken.forEach(column -> had.or(columns.get(column)));
      return had.cardinality();
    }
  }

  private record Condition(Goal goal, OptionalLong least, OptionalLong most) {}

  /** What became of a question. */
  enum State {
    /** There is nothing better. */
    PROVED,
    /** No cover meets the conditions. */
    NONE,
    /** Time ran out. */
    NOT_PROVED
  }

  /**
   * The best cover.
   *
   * @param columns ascending; none where the state is not PROVED
   * @param value of the goal
   */
  record Answer(State state, List<Integer> columns, long value) {}

  /** How many columns are taken. */
  Sum size() {
    long[] ones = new long[problem.columns().size()];
    Arrays.fill(ones, 1);
    return new Sum(ones);
  }

  void atLeast(Goal goal, long least) {
    conditions.add(new Condition(goal, OptionalLong.of(least), OptionalLong.empty()));
  }

  void atMost(Goal goal, long most) {
    conditions.add(new Condition(goal, OptionalLong.empty(), OptionalLong.of(most)));
  }

  /** Takes back the last so many conditions. */
  void takeBack(int many) {
    conditions.subList(conditions.size() - many, conditions.size()).clear();
  }

  Answer smallest(Goal goal) {
    return proved(goal, true);
  }

  Answer largest(Goal goal) {
    return proved(goal, false);
  }

  /** Believes an optimum only where the solver finds that nothing is better by one. */
  private Answer proved(Goal goal, boolean smallest) {
    Answer best = solved(goal, smallest);
    while (best.state() == State.PROVED) {
      if (smallest) {
        atMost(goal, best.value() - 1);
      } else {
        atLeast(goal, best.value() + 1);
      }
      Answer better = solved(goal, smallest);
      takeBack(1);
      if (better.state() == State.NONE) {
        return best;
      }
      best = better;
    }
    return best;
  }

  /** Any cover that meets the conditions. */
  Answer any() {
    return solved(new Sum(new long[problem.columns().size()]), true);
  }

  /** So many columns at the least, by the problem with parts of columns allowed. */
  int lowerBound() {
    Model model = new Model();
    Expression goal = model.expression("goal", size());
    goal.weight(1);
    model.model.relax();
    Optimisation.Result result = model.model.minimise();
    return result.getState().isOptimal() ? (int) Math.ceil(result.getValue() - ROUNDING) : 0;
  }

  private Answer solved(Goal goal, boolean smallest) {
    long left = (deadline - System.nanoTime()) / 1_000_000;
    if (left <= 0) {
      return new Answer(State.NOT_PROVED, List.of(), 0);
    }
    Model model = new Model();
    model.expression("goal", goal).weight(1);
    model.model.options.time_abort = left;
    model.model.options.integer(EXACT);
    long started = System.nanoTime();
    Optimisation.Result result = smallest ? model.model.minimise() : model.model.maximise();
    Optimisation.State state = result.getState();
    boolean inTime = (System.nanoTime() - started) / 1_000_000 < left - MARGIN;
    if (state == Optimisation.State.INFEASIBLE && inTime) {
      return new Answer(State.NONE, List.of(), 0);
    } else if (!state.isOptimal()) {
      return new Answer(State.NOT_PROVED, List.of(), 0);
    }
    List<Integer> taken = new ArrayList<>();
    for (int column = 0; column < problem.columns().size(); column++) {
      if (result.doubleValue(column) > HALF) {
        taken.add(column);
      }
    }
    return isSound(taken)
        ? new Answer(State.PROVED, List.copyOf(taken), goal.value(taken))
        : new Answer(State.NOT_PROVED, List.of(), 0);
  }

  /** Whether what the solver gave, in decimal fractions, holds in whole numbers. */
  private boolean isSound(List<Integer> taken) {
    boolean sound = problem.isCover(taken);
    for (Condition condition : conditions) {
      long value = condition.goal.value(taken);
      sound &= value >= condition.least.orElse(value) && value <= condition.most.orElse(value);
    }
    return sound;
  }

  /** The problem and all conditions as the solver wants them. */
  private final class Model {
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private final List<Variable> columns = new ArrayList<>();

    Model() {
      for (int i = 0; i < problem.columns().size(); i++) {
        Variable column = model.newVariable("c" + i).binary();
        if (problem.must().get(i)) {
          column.lower(1);
        }
        columns.add(column);
      }
      for (int row = 0; row < problem.rows(); row++) {
        Expression covered = model.newExpression("r" + row).lower(1);
        addColumns(covered, problem.columns(), row, 1);
      }
      for (int i = 0; i < conditions.size(); i++) {
        Condition condition = conditions.get(i);
        Expression expression = expression("k" + i, condition.goal);
        condition.least.ifPresent(expression::lower);
        condition.most.ifPresent(expression::upper);
      }
    }

    Expression expression(String name, Goal goal) {
      Expression expression = model.newExpression(name);
      if (goal instanceof Sum sum) {
        for (int i = 0; i < columns.size(); i++) {
          if (sum.weights[i] != 0) {
            expression.set(columns.get(i), sum.weights[i]);
          }
        }
      } else if (goal instanceof RowsHad rows) {
        for (int row = 0; row < problem.rows(); row++) {
          Variable had = model.newVariable(name + "h" + row).binary();
          Expression limit = model.newExpression(name + "l" + row).upper(0);
          limit.set(had, 1);
          addColumns(limit, rows.columns, row, -1);
          expression.set(had, 1);
        }
      }
      return expression;
    }

    private void addColumns(Expression to, List<BitSet> have, int row, int factor) {
      for (int i = 0; i < columns.size(); i++) {
        if (have.get(i).get(row)) {
          to.set(columns.get(i), factor);
        }
      }
    }
  }
}
