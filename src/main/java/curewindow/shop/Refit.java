package curewindow.shop;

import curewindow.cure.Stay;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * That something was fitted anew when a car came back: its dates begin again.
 *
 * @param services ids of the services; none where the spots alone say what
 * @param spots ids of the spots; none where it was all of the services
 * @param stay from the new finish until the car left
 */
record Refit(List<String> services, List<String> spots, Stay stay) {

  private Instant finished() {
    return stay.in();
  }

  /** Whether anything of a job was fitted before and is fitted anew. */
  boolean concerns(Job job) {
    return job.items().stream().anyMatch(item -> !anew(item).isEmpty());
  }

  /** The spots of an item that are fitted anew. */
  private List<String> anew(FittedItem item) {
    boolean of = services.isEmpty() || services.contains(item.service());
    return of && item.finished().isBefore(finished())
        ? item.spots().stream().filter(s -> spots.isEmpty() || spots.contains(s)).toList()
        : List.of();
  }

  /** The job with the new work in place of the old, and with the stay. */
  Job on(Job job) {
    List<FittedItem> items = new ArrayList<>();
    for (FittedItem item : job.items()) {
      items.add(item);
      List<String> anew = anew(item);
      if (!anew.isEmpty()) {
        items.add(item.on(anew).anew(finished()));
      }
    }
    return job.with(items, stays(job.stays())).withoutReplaced();
  }

  /** A car that is in the shop already needs no stay of its own; none lasts into the next one. */
  private List<Stay> stays(List<Stay> known) {
    if (known.stream().anyMatch(other -> other.has(finished()))) {
      return known;
    }
    Instant next =
        known.stream()
            .map(Stay::in)
            .filter(in -> in.isAfter(finished()))
            .findFirst()
            .orElse(stay.pickup());
    Instant leaves = next.isBefore(stay.pickup()) ? next : stay.pickup();
    List<Stay> stays = new ArrayList<>(known);
    stays.add(new Stay(finished(), leaves));
    stays.sort(Comparator.comparing(Stay::in));
    return stays;
  }
}
