package curewindow.shop;

import curewindow.shop.JobDraft.CarDraft;
import curewindow.shop.JobDraft.ItemDraft;
import curewindow.shop.Node.Branch;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** The text of a job file: written from a draft, and read back into one. */
public final class JobText {

  private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm");

  private JobText() {}

  /**
   * A new job file, as a person would write it.
   *
   * @param draft the job
   * @return YAML, ended by a line feed
   */
  public static String of(JobDraft draft) {
    return YamlWriting.of(draft.tree());
  }

  /**
   * The text of a file in which something was changed. What stays the same keeps its lines, their
   * order and comments.
   *
   * @param text the file as it stands
   * @param draft what it should say; keys that a draft does not have stay as they are
   * @return the new text; empty where the file is not written a key on a line, so that somebody has
   *     to change it by hand
   */
  public static Optional<String> changed(String text, JobDraft draft) {
    Optional<Branch> root = Typed.root(text);
    Optional<JobDraft> before = root.map(JobText::draft);
    return before
        .flatMap(b -> YamlLines.changed(text, root.orElseThrow(), b.tree(), draft.tree()))
        .filter(now -> read(now).equals(Optional.of(draft)));
  }

  /**
   * What a job file says, as far as a draft has it.
   *
   * @param text the file's text
   * @return the draft; empty where the text is not YAML with keys
   */
  public static Optional<JobDraft> read(String text) {
    return Typed.root(text).map(JobText::draft);
  }

  private static JobDraft draft(Branch job) {
    Optional<Branch> car = Typed.branch(job, "car");
    Optional<Branch> parking = Typed.branch(job, "parking");
    String both = Typed.text(job, "parking");
    return new JobDraft(
        Typed.text(job, "id"),
        Typed.text(job, "first-name"),
        Typed.text(job, "language"),
        car.map(JobText::car).orElse(new CarDraft("", "", "", "", "", List.of())),
        Typed.text(job, "place"),
        parking.map(p -> Typed.text(p, "day")).orElse(both),
        parking.map(p -> Typed.text(p, "night")).orElse(both),
        Typed.text(job, "pickup"),
        items(job));
  }

  private static CarDraft car(Branch car) {
    return new CarDraft(
        Typed.text(car, "year"),
        Typed.text(car, "body"),
        Typed.text(car, "paint"),
        Typed.text(car, "finish"),
        Typed.text(car, "text"),
        Typed.texts(car, "lacks"));
  }

  private static List<ItemDraft> items(Branch job) {
    return Typed.branches(job, "items").stream().map(JobText::item).toList();
  }

  private static ItemDraft item(Branch item) {
    Optional<Branch> lamp = Typed.branch(item, "lamp");
    return new ItemDraft(
        Typed.text(item, "service"),
        Typed.text(item, "film"),
        Typed.texts(item, "spots"),
        Typed.text(item, "finished"),
        Typed.text(item, "vlt"),
        Typed.text(item, "glass-vlt"),
        Typed.text(item, "batch"),
        Typed.text(item, "warranty-years"),
        lamp.map(l -> Typed.text(l, "surface")).orElse(""),
        lamp.map(l -> Typed.text(l, "minutes")).orElse(""));
  }

  /**
   * The draft of a job, whichever file it stands in. Of several stays it has the last pickup.
   *
   * @param job the job
   * @param zone the clock by which its times are written
   * @return the draft
   */
  public static JobDraft of(Job job, ZoneId zone) {
    Car car = job.car();
    return new JobDraft(
        job.id(),
        job.firstName(),
        job.language(),
        new CarDraft(
            text(car.year()),
            car.body().id(),
            car.paint().id(),
            car.finish().orElse(""),
            car.text(),
            car.lacks().stream().map(SpotFact::id).toList()),
        job.place(),
        job.parking().day().id(),
        job.parking().night().id(),
        minute(job.pickup(), zone),
        job.items().stream().map(item -> item(item, zone)).toList());
  }

  private static ItemDraft item(FittedItem item, ZoneId zone) {
    return new ItemDraft(
        item.service(),
        item.film(),
        item.spots(),
        minute(item.finished(), zone),
        text(item.vlt()),
        text(item.glassVlt()),
        item.batch().orElse(""),
        text(item.warrantyYears()),
        item.lamp().map(l -> number(l.surface())).orElse(""),
        item.lamp().map(l -> number(l.minutes())).orElse(""));
  }

  /**
   * A time as a job file has it.
   *
   * @param at the moment
   * @param zone the clock
   * @return such as 2026-11-24T14:30
   */
  public static String minute(Instant at, ZoneId zone) {
    return MINUTE.format(Objects.requireNonNull(at, "at").atZone(zone));
  }

  private static String text(OptionalInt number) {
    return number.isPresent() ? String.valueOf(number.getAsInt()) : "";
  }

  private static String text(OptionalDouble number) {
    return number.isPresent() ? number(number.getAsDouble()) : "";
  }

  private static String number(double number) {
    return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
  }
}
