package curewindow.desk;

import curewindow.desk.Merging.Three;
import curewindow.shop.JobDraft;
import curewindow.shop.JobDraft.CarDraft;
import curewindow.shop.JobDraft.ItemDraft;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A job that two people changed at once: what only one of them changed is theirs, and what both
 * changed otherwise stays as this one typed it, and is told.
 */
final class JobMerge {

  /**
   * What comes of it.
   *
   * @param draft the job with the changes of both
   * @param clashes the names of the values that both changed, each in another way
   */
  record Merged(JobDraft draft, List<String> clashes) {}

  private final Merging values = new Merging();

  private JobMerge() {}

  /**
   * Puts two changes together.
   *
   * @param base the job that both began with
   * @param mine as this one typed it
   * @param theirs as the other one left it
   */
  static Merged of(JobDraft base, JobDraft mine, JobDraft theirs) {
    JobMerge merge = new JobMerge();
    Three<JobDraft> jobs = new Three<>(base, mine, theirs);
    JobDraft draft =
        new JobDraft(
            mine.id(),
            merge.one("first-name", jobs, JobDraft::firstName),
            merge.one("language", jobs, JobDraft::language),
            merge.car(jobs.of(JobDraft::car)),
            merge.one("place", jobs, JobDraft::place),
            merge.one("parking.day", jobs, JobDraft::parkingDay),
            merge.one("parking.night", jobs, JobDraft::parkingNight),
            merge.one("pickup", jobs, JobDraft::pickup),
            merge.items(jobs.of(JobDraft::items)));
    return new Merged(draft, merge.values.clashes().stream().map(Merging.Clash::name).toList());
  }

  private <T, V> V one(String name, Three<T> all, Function<T, V> part) {
    return values.one(name, all, part);
  }

  private CarDraft car(Three<CarDraft> cars) {
    return new CarDraft(
        one("car.year", cars, CarDraft::year),
        one("car.body", cars, CarDraft::body),
        one("car.paint", cars, CarDraft::paint),
        one("car.finish", cars, CarDraft::finish),
        one("car.text", cars, CarDraft::text),
        one("car.lacks", cars, CarDraft::lacks));
  }

  /** Item by item where nobody added one or took one off; else all of them are one value. */
  private List<ItemDraft> items(Three<List<ItemDraft>> all) {
    int size = all.base().size();
    if (all.mine().size() != size || all.theirs().size() != size) {
      return one("items", all, items -> items);
    }
    List<ItemDraft> items = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      int at = i;
      items.add(item(i + 1, all.of(list -> list.get(at))));
    }
    return items;
  }

  private ItemDraft item(int number, Three<ItemDraft> items) {
    String film = JobForm.name(number, "film");
    return new ItemDraft(
        one(film, items, ItemDraft::service),
        one(film, items, ItemDraft::film),
        one(JobForm.name(number, "spots"), items, ItemDraft::spots),
        one(JobForm.name(number, "finished"), items, ItemDraft::finished),
        one(JobForm.name(number, "vlt"), items, ItemDraft::vlt),
        one(JobForm.name(number, "glass-vlt"), items, ItemDraft::glassVlt),
        one(JobForm.name(number, "batch"), items, ItemDraft::batch),
        one(JobForm.name(number, "warranty-years"), items, ItemDraft::warrantyYears),
        one(JobForm.name(number, "lamp.surface"), items, ItemDraft::lampSurface),
        one(JobForm.name(number, "lamp.minutes"), items, ItemDraft::lampMinutes));
  }
}
