package curewindow.site;

import curewindow.problem.Problems;
import curewindow.shop.Car;
import curewindow.shop.Job;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Whose card was handed over under each job's id, so that nobody is ever shown another's page where
 * an id is used again.
 *
 * <p>The file is {@code handed-over.csv} in the shop folder, with the columns {@code job}, {@code
 * first-name}, {@code car} and {@code came-in}.
 */
final class HandedOver {

  /** The file, relative to the shop folder. */
  static final String FILE = "handed-over.csv";

  static final LedgerCsv CSV =
      new LedgerCsv(
          FILE,
          "handed-over",
          "the list of cards that were handed over",
          List.of("job", "first-name", "car", "came-in"),
          "mend it or bring it back from a backup: it tells whose card has which number");

  /** So much has to differ: a name, a car or a time alone may have been put right. */
  private static final int OTHER = 2;

  private final Path shop;
  private final Map<String, Owner> owners = new TreeMap<>();
  private boolean changed;

  private HandedOver(Path shop) {
    this.shop = shop;
  }

  /**
   * Whom a card is for.
   *
   * @param firstName the customer's; may be empty
   * @param car the car in the words of its job
   * @param cameIn the day on which it first came in, or its first work was done, by the shop's
   *     clock
   */
  record Owner(String firstName, String car, String cameIn) {

    static Owner of(Job job, ZoneId zone) {
      LocalDate day = job.stays().get(0).in().atZone(zone).toLocalDate();
      return new Owner(PageList.plain(job.firstName().strip()), car(job.car()), day.toString());
    }

    private static String car(Car car) {
      OptionalInt year = car.year();
      return Stream.of(
              year.isPresent() ? String.valueOf(year.getAsInt()) : "", car.body().id(), car.text())
          .map(String::strip)
          .filter(text -> !text.isEmpty())
          .collect(Collectors.joining(" "));
    }

    /** Whether this is most likely somebody else, or another car. */
    boolean isOther(Owner other) {
      return differs(firstName, other.firstName)
              + differs(car, other.car)
              + differs(cameIn, other.cameIn)
          >= OTHER;
    }

    private static int differs(String one, String other) {
      return one.isEmpty() || other.isEmpty() || one.equalsIgnoreCase(other) ? 0 : 1;
    }

    /** In a few words for the shop. */
    String shown() {
      return (firstName.isEmpty() ? "" : firstName + ", ") + car + ", came in " + cameIn;
    }
  }

  /**
   * Reads the list of a shop folder; a folder without it has none.
   *
   * @param shop the shop folder
   * @param problems where it is said what is wrong with the file
   * @return the list, or empty where the file has problems: it must then not be written
   */
  static Optional<HandedOver> read(Path shop, Problems problems) {
    HandedOver list = new HandedOver(shop);
    return CSV.read(shop, problems, (fields, fault) -> list.readRow(fields))
        ? Optional.of(list)
        : Optional.empty();
  }

  private void readRow(List<String> fields) {
    owners.put(fields.get(0), new Owner(fields.get(1), fields.get(2), fields.get(3)));
  }

  /** For whom a job's card was made; empty where none was. */
  Optional<Owner> of(String job) {
    return Optional.ofNullable(owners.get(job));
  }

  /** The jobs with a card. */
  List<String> jobs() {
    return List.copyOf(owners.keySet());
  }

  /**
   * Notes whose card it is, as their job tells now; kept once {@link #save} was called.
   *
   * @param job the job, which has a card
   * @param zone the shop's time zone
   */
  void note(Job job, ZoneId zone) {
    Owner owner = Owner.of(job, zone);
    changed |= !owner.equals(owners.put(job.id(), owner));
  }

  /**
   * Writes the file if something changed since it was read.
   *
   * @throws IOException where the shop folder cannot be written
   */
  void save() throws IOException {
    if (changed) {
      CSV.write(
          shop,
          owners.entrySet().stream()
              .map(
                  e ->
                      List.of(
                          e.getKey(),
                          e.getValue().firstName(),
                          e.getValue().car(),
                          e.getValue().cameIn()))
              .toList());
      changed = false;
    }
  }
}
