package curewindow.shop;

import curewindow.problem.Where;
import java.util.Map;

/**
 * A rule that cannot be used: without it nobody knows the dates of the work it is for.
 *
 * @param scope which work it is for, as far as that can be read; else all it might be for
 * @param cause where the error stands
 */
record BrokenRule(Scope scope, Where cause) {

  boolean concerns(Job job, Map<String, Spot> spots) {
    return job.items().stream().anyMatch(item -> concerns(item, job.car(), spots));
  }

  private boolean concerns(FittedItem item, Car car, Map<String, Spot> spots) {
    return item.spots().stream().anyMatch(id -> scope.has(item.service(), spots.get(id), car));
  }
}
