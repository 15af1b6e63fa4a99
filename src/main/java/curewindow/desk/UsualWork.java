package curewindow.desk;

import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.JobDraft.ItemDraft;
import curewindow.shop.JobText;
import curewindow.site.LoadedShop;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What the shop fits most often: the same films on the same spots, as its own jobs tell. */
final class UsualWork {

  /** As many as a hand finds at a glance. */
  private static final int SHOWN = 6;

  private static final Duration RECENT = Duration.ofDays(400);

  private UsualWork() {}

  /** What two cars have in common. */
  private record Kind(List<Piece> pieces) {

    static Kind of(Job job) {
      return new Kind(
          job.items().stream()
              .map(i -> new Piece(i.film(), i.spots().stream().sorted().toList()))
              .sorted(Comparator.comparing(Piece::film).thenComparing(p -> p.spots().toString()))
              .toList());
    }
  }

  private record Piece(String film, List<String> spots) {}

  /**
   * The usual work of a shop, what is done most often first.
   *
   * @return for each the job in which it was done last
   */
  static List<Job> of(LoadedShop shop, Instant now) {
    Map<Kind, List<Job>> kinds =
        shop.jobs().stream()
            .filter(j -> j.pickup().isAfter(now.minus(RECENT)))
            .sorted(Comparator.comparing(Job::pickup).reversed().thenComparing(Job::id))
            .collect(Collectors.groupingBy(Kind::of, LinkedHashMap::new, Collectors.toList()));
    return kinds.values().stream()
        .sorted(Comparator.comparingInt((List<Job> jobs) -> -jobs.size()))
        .limit(SHOWN)
        .map(jobs -> jobs.get(0))
        .toList();
  }

  /** The work of a job done again, now. */
  static List<ItemDraft> again(Job job, String finished, ZoneId zone) {
    return JobText.of(job, zone).items().stream()
        .map(item -> JobForm.anew(item, finished))
        .toList();
  }

  /** The films of a job, each once, in their order. */
  static List<String> films(Job job, LoadedShop shop) {
    return job.items().stream()
        .map(FittedItem::film)
        .distinct()
        .map(f -> shop.read().catalogue().films().get(f).name())
        .toList();
  }
}
