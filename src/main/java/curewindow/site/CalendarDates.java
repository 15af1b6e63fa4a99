package curewindow.site;

import curewindow.calendar.CareEvent;
import curewindow.calendar.Revisions;
import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The memory of the dates that calendars gave out: a date that moves gets a higher number, so that
 * a phone replaces the old one (RFC 5545, 3.8.7.4), and one that is no longer there is taken back.
 *
 * <p>The file is {@code calendar-dates.csv} in the shop folder, with the columns {@code job},
 * {@code calendar}, {@code event}, {@code start}, {@code sequence}, {@code changed}, {@code text}.
 */
final class CalendarDates {

  /** The file, relative to the shop folder. */
  static final String FILE = "calendar-dates.csv";

  /** Stands in the column of the text where the event was taken back. */
  private static final String GONE = "gone";

  static final LedgerCsv CSV =
      new LedgerCsv(
          FILE,
          "calendar-dates",
          "the memory of calendar dates",
          List.of("job", "calendar", "event", "start", "sequence", "changed", "text"),
          "mend it or bring it back from a backup: phones tell a moved date by it");

  private final Path shop;

  /** As it stood before it was read, or when it was written; empty where that cannot be told. */
  private Optional<AsOnDisk> file;

  private final NavigableMap<Key, Map<String, Row>> calendars;
  private boolean changed;

  private CalendarDates(
      Path shop, Optional<AsOnDisk> file, NavigableMap<Key, Map<String, Row>> calendars) {
    this.shop = shop;
    this.file = file;
    this.calendars = calendars;
  }

  /** A calendar of a job: the one of its page, of another parking, or of the office. */
  private record Key(String job, String calendar) implements Comparable<Key> {
    @Override
    public int compareTo(Key other) {
      int jobs = job.compareTo(other.job);
      return jobs == 0 ? calendar.compareTo(other.calendar) : jobs;
    }
  }

  private record Row(CareEvent.Start start, Revisions.Revision revision, String text) {
    boolean isGone() {
      return text.equals(GONE);
    }
  }

  /**
   * Reads the memory of a shop folder; a folder without one remembers nothing.
   *
   * @param shop the shop folder
   * @param problems where it is said what is wrong with the file
   * @return the memory, or empty where the file has problems: it must then not be written
   */
  static Optional<CalendarDates> read(Path shop, Problems problems) {
    Reading reading = new Reading();
    Optional<AsOnDisk> file = AsOnDisk.of(shop.resolve(FILE));
    boolean whole = CSV.read(shop, problems, reading::row);
    return whole ? Optional.of(new CalendarDates(shop, file, reading.calendars)) : Optional.empty();
  }

  /** Reads rows; most say the same few times, which are understood once. */
  private static final class Reading {
    private final NavigableMap<Key, Map<String, Row>> calendars = new TreeMap<>();
    private final Map<String, Instant> changes = new HashMap<>();
    private final Map<String, CareEvent.Start> starts = new HashMap<>();

    void row(List<String> fields, LedgerCsv.Fault fault) {
      try {
        CareEvent.Start start = starts.computeIfAbsent(fields.get(3), CareEvent::start);
        Instant changed = changes.computeIfAbsent(fields.get(5), Instant::parse);
        Revisions.Revision revision =
            new Revisions.Revision(Integer.parseInt(fields.get(4)), changed);
        Key key = new Key(fields.get(0), fields.get(1));
        calendars
            .computeIfAbsent(key, k -> new TreeMap<>())
            .put(fields.get(2), new Row(start, revision, fields.get(6)));
      } catch (DateTimeException | IllegalArgumentException e) {
        fault.say("the row is not one that Curewindow wrote");
      }
    }
  }

  /** How a file stands on disk: what is written anew is another file. */
  private record AsOnDisk(Object key, long bytes, FileTime written) {

    static Optional<AsOnDisk> of(Path file) {
      try {
        BasicFileAttributes facts = Files.readAttributes(file, BasicFileAttributes.class);
        return Optional.ofNullable(facts.fileKey())
            .map(key -> new AsOnDisk(key, facts.size(), facts.lastModifiedTime()));
      } catch (IOException e) {
        return Optional.empty();
      }
    }
  }

  /** Whether the file stands as it was read, so that it need not be read again. */
  boolean standsAsRead() {
    return file.isPresent() && file.equals(AsOnDisk.of(shop.resolve(FILE)));
  }

  /**
   * Compares what a calendar says now with what it said before, and remembers it, kept once {@link
   * #save} was called.
   *
   * @param job the job's id
   * @param calendar which of its calendars; empty for the one of its page
   * @param events what the calendar says now
   * @param now the time of this press
   * @param first how a calendar begins that is not remembered
   * @return how its dates stand
   */
  Revisions note(
      String job, String calendar, List<CareEvent> events, Instant now, Revisions.Revision first) {
    Map<String, Row> rows = calendars.computeIfAbsent(new Key(job, calendar), k -> new TreeMap<>());
    Map<String, Revisions.Revision> standing = new TreeMap<>();
    for (CareEvent event : events) {
      Row row = next(Optional.ofNullable(rows.get(event.name())), event, now, first);
      keep(rows, event.name(), row);
      standing.put(event.name(), row.revision());
    }
    List<Revisions.Gone> gone = new ArrayList<>();
    for (String name : List.copyOf(rows.keySet())) {
      if (!standing.containsKey(name)) {
        Row row = takenBack(rows.get(name), now);
        keep(rows, name, row);
        gone.add(new Revisions.Gone(name, row.start(), row.revision()));
      }
    }
    return new Revisions(standing, gone);
  }

  /** All that the calendars of a job gave out. */
  String said(String job) {
    return lines(calendars.subMap(new Key(job, ""), new Key(job + '\0', ""))).toString();
  }

  private void keep(Map<String, Row> rows, String name, Row row) {
    changed |= !row.equals(rows.put(name, row));
  }

  /** A moved date is a new revision; another text alone is only a change (RFC 5546, 2.1.4). */
  private static Row next(
      Optional<Row> before, CareEvent event, Instant now, Revisions.Revision first) {
    String print = event.textPrint();
    if (before.isEmpty()) {
      return new Row(event.start(), first, print);
    }
    Row row = before.get();
    int sequence = row.revision().sequence();
    if (row.isGone() || !row.start().mark().equals(event.start().mark())) {
      return new Row(event.start(), new Revisions.Revision(sequence + 1, now), print);
    }
    return row.text().equals(print)
        ? row
        : new Row(row.start(), new Revisions.Revision(sequence, now), print);
  }

  private static Row takenBack(Row row, Instant now) {
    int sequence = row.revision().sequence();
    return row.isGone()
        ? row
        : new Row(row.start(), new Revisions.Revision(sequence + 1, now), GONE);
  }

  /**
   * Writes the file if something changed since it was read.
   *
   * @throws IOException where the shop folder cannot be written
   */
  void save() throws IOException {
    if (!changed) {
      return;
    }
    CSV.write(shop, lines(calendars));
    file = AsOnDisk.of(shop.resolve(FILE));
    changed = false;
  }

  private static List<List<String>> lines(Map<Key, Map<String, Row>> calendars) {
    List<List<String>> lines = new ArrayList<>();
    calendars.forEach((key, rows) -> rows.forEach((name, row) -> lines.add(line(key, name, row))));
    return lines;
  }

  private static List<String> line(Key key, String name, Row row) {
    return List.of(
        key.job(),
        key.calendar(),
        name,
        row.start().mark(),
        String.valueOf(row.revision().sequence()),
        row.revision().changed().toString(),
        row.text());
  }
}
