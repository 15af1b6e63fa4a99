package curewindow.desk;

import curewindow.shop.Job;
import curewindow.shop.JobDraft;
import curewindow.shop.JobDraft.CarDraft;
import curewindow.shop.JobDraft.ItemDraft;
import curewindow.shop.JobText;
import curewindow.shop.Shop;
import curewindow.site.LoadedShop;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * What the form of a new car begins with.
 *
 * @param shop the shop
 * @param at the time now
 */
record FirstDraft(LoadedShop shop, Instant at) {

  private static final int STEP = 5;
  private static final int QUARTER = 15;

  private ZoneId zone() {
    return shop.shop().orElseThrow().zone();
  }

  /** The time of day by the shop's clock, on whole five minutes. */
  String now() {
    return minute(STEP, time -> time);
  }

  /** The next whole quarter of an hour by the shop's clock. */
  String soon() {
    return minute(QUARTER, time -> time.plus(QUARTER, ChronoUnit.MINUTES));
  }

  private String minute(int step, UnaryOperator<Instant> moved) {
    Instant minute = at.truncatedTo(ChronoUnit.MINUTES);
    Instant before = minute.minusSeconds(60L * ((minute.getEpochSecond() / 60) % step));
    return JobText.minute(moved.apply(before), zone());
  }

  /** An item of which nothing is known but that it is finished now. */
  ItemDraft item() {
    return JobForm.empty(now());
  }

  /** The work of a job once more, finished now. */
  List<ItemDraft> again(Job job) {
    return UsualWork.again(job, now(), zone());
  }

  JobDraft fresh() {
    Shop own = shop.shop().orElseThrow();
    return new JobDraft(
        NextNumber.of(shop, Set.of()),
        "",
        own.language(),
        new CarDraft("", "sedan", "mid", "", "", List.of()),
        own.place(),
        "outside",
        "outside",
        soon(),
        List.of(item()));
  }

  /** The same work on another car: the car, the customer and the batches are others. */
  JobDraft like(Job job) {
    JobDraft fresh = fresh();
    JobDraft old = JobText.of(job, zone());
    CarDraft car = old.car();
    return new JobDraft(
        fresh.id(),
        "",
        fresh.language(),
        new CarDraft("", car.body(), car.paint(), car.finish(), "", car.lacks()),
        old.place(),
        old.parkingDay(),
        old.parkingNight(),
        fresh.pickup(),
        again(job));
  }
}
