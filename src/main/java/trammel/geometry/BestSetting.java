package trammel.geometry;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * The setting of adjusters with the greatest least share inside two windows, to first order: a
 * linear program. Its unknowns are the adjusters' settings (mm), the share of each angle and the
 * lesser of both.
 */
record BestSetting(List<AdjusterRange> adjusters, AngleWindow camber, AngleWindow caster) {
  /** Weight of each angle's own share beside the lesser of both, which comes first. */
  private static final double OWN_SHARE = 0.01;

  private static final int MOST_PIVOTS = 500;

  /**
   * The best setting on the slopes about a point.
   *
   * @param about settings that the slopes were taken at (mm)
   * @param reach how far each adjuster may move from there (mm)
   * @param there angles at those settings (degrees)
   * @param camberSlopes change of camber with each adjuster (degrees/mm)
   * @param casterSlopes change of caster with each adjuster (degrees/mm)
   */
  double[] near(
      double[] about,
      double reach,
      AlignmentMap.Angles there,
      double[] camberSlopes,
      double[] casterSlopes) {
    int count = about.length;
    List<LinearConstraint> constraints = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      AdjusterRange range = adjusters.get(i);
      constraints.add(bound(count, i, Relationship.GEQ, Math.max(range.from(), about[i] - reach)));
      constraints.add(bound(count, i, Relationship.LEQ, Math.min(range.to(), about[i] + reach)));
    }
    window(constraints, camber, there.camber(), about, camberSlopes, count);
    window(constraints, caster, there.caster(), about, casterSlopes, count + 1);
    for (int share = count; share < count + 2; share++) {
      double[] lesser = new double[count + 3];
      lesser[share] = 1;
      lesser[count + 2] = -1;
      constraints.add(new LinearConstraint(lesser, Relationship.GEQ, 0));
    }
    double[] goal = new double[count + 3];
    goal[count] = OWN_SHARE;
    goal[count + 1] = OWN_SHARE;
    goal[count + 2] = 1;
    double[] solved =
        new SimplexSolver()
            .optimize(
                new MaxIter(MOST_PIVOTS),
                new LinearObjectiveFunction(goal, 0),
                new LinearConstraintSet(constraints),
                GoalType.MAXIMIZE,
                new NonNegativeConstraint(false))
            .getPoint();
    double[] settings = new double[count];
    for (int i = 0; i < count; i++) {
      AdjusterRange range = adjusters.get(i);
      settings[i] = Math.max(range.from(), Math.min(range.to(), solved[i]));
    }
    return settings;
  }

  private static LinearConstraint bound(int count, int index, Relationship sense, double value) {
    double[] one = new double[count + 3];
    one[index] = 1;
    return new LinearConstraint(one, sense, value);
  }

  /** An angle's share is at most what either edge leaves of it, and at most 1. */
  private static void window(
      List<LinearConstraint> constraints,
      AngleWindow window,
      double angle,
      double[] about,
      double[] slopes,
      int share) {
    double start = angle;
    for (int i = 0; i < about.length; i++) {
      start -= slopes[i] * about[i];
    }
    double below = window.below();
    double above = window.above();
    double[] low = new double[about.length + 3];
    double[] high = new double[about.length + 3];
    for (int i = 0; i < about.length; i++) {
      low[i] = slopes[i];
      high[i] = -slopes[i];
    }
    low[share] = -below;
    high[share] = -above;
    constraints.add(
        new LinearConstraint(low, Relationship.GEQ, window.preferred() - below - start));
    constraints.add(
        new LinearConstraint(high, Relationship.GEQ, start - above - window.preferred()));
    double[] whole = new double[about.length + 3];
    whole[share] = 1;
    constraints.add(new LinearConstraint(whole, Relationship.LEQ, 1));
  }
}
