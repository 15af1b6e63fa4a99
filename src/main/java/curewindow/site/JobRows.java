package curewindow.site;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** The rows of a ledger in their order, and those of a job without going through all. */
final class JobRows<R> {

  private final Function<R, String> job;
  private final List<R> all = new ArrayList<>();
  private final Map<String, List<R>> byJob = new HashMap<>();

  /** No rows yet; {@code job} tells whose a row is. */
  JobRows(Function<R, String> job) {
    this.job = job;
  }

  void add(R row) {
    all.add(row);
    byJob.computeIfAbsent(job.apply(row), id -> new ArrayList<>()).add(row);
  }

  List<R> all() {
    return List.copyOf(all);
  }

  List<R> of(String id) {
    return List.copyOf(byJob.getOrDefault(id, List.of()));
  }

  /** The jobs that have rows. */
  Set<String> jobs() {
    return Set.copyOf(byJob.keySet());
  }
}
