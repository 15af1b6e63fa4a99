package curewindow.shop;

import curewindow.problem.Problems;
import curewindow.shop.JobDraft.CarDraft;
import curewindow.shop.JobDraft.ItemDraft;
import curewindow.shop.Node.Branch;
import curewindow.shop.Node.Entry;
import curewindow.shop.Node.Leaf;
import curewindow.shop.Node.Row;
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
    return YamlLines.of(draft.tree());
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
    Optional<Branch> root = root(text);
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
    return root(text).map(JobText::draft);
  }

  private static Optional<Branch> root(String text) {
    return YamlTree.read(text, new Source("", new Problems()))
        .flatMap(node -> node instanceof Branch branch ? Optional.of(branch) : Optional.empty());
  }

  private static JobDraft draft(Branch job) {
    Optional<Branch> car = branch(job, "car");
    Optional<Branch> parking = branch(job, "parking");
    String both = text(job, "parking");
    return new JobDraft(
        text(job, "id"),
        text(job, "first-name"),
        text(job, "language"),
        car.map(JobText::car).orElse(new CarDraft("", "", "", "", "", List.of())),
        text(job, "place"),
        parking.map(p -> text(p, "day")).orElse(both),
        parking.map(p -> text(p, "night")).orElse(both),
        text(job, "pickup"),
        items(job));
  }

  private static CarDraft car(Branch car) {
    return new CarDraft(
        text(car, "year"),
        text(car, "body"),
        text(car, "paint"),
        text(car, "finish"),
        text(car, "text"),
        texts(car, "lacks"));
  }

  private static List<ItemDraft> items(Branch job) {
    return value(job, "items") instanceof Row row
        ? row.items().stream()
            .filter(Branch.class::isInstance)
            .map(item -> item((Branch) item))
            .toList()
        : List.of();
  }

  private static ItemDraft item(Branch item) {
    Optional<Branch> lamp = branch(item, "lamp");
    return new ItemDraft(
        text(item, "service"),
        text(item, "film"),
        texts(item, "spots"),
        text(item, "finished"),
        text(item, "vlt"),
        text(item, "glass-vlt"),
        text(item, "batch"),
        text(item, "warranty-years"),
        lamp.map(l -> text(l, "surface")).orElse(""),
        lamp.map(l -> text(l, "minutes")).orElse(""));
  }

  private static Node value(Branch branch, String key) {
    Entry entry = branch.entries().get(key);
    return entry == null ? null : entry.value();
  }

  private static Optional<Branch> branch(Branch branch, String key) {
    return value(branch, key) instanceof Branch inner ? Optional.of(inner) : Optional.empty();
  }

  private static String text(Branch branch, String key) {
    return value(branch, key) instanceof Leaf leaf ? leaf.text() : "";
  }

  private static List<String> texts(Branch branch, String key) {
    return value(branch, key) instanceof Row row
        ? row.items().stream()
            .filter(Leaf.class::isInstance)
            .map(leaf -> ((Leaf) leaf).text())
            .toList()
        : List.of();
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
