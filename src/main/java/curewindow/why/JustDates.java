package curewindow.why;

import curewindow.cure.Release;
import curewindow.told.JobView;
import curewindow.told.Visit;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The dates of some jobs without their reasons: to look at, and for other programs. */
public final class JustDates {

  /** The names of the columns and fields, which stay as they are. */
  private static final List<String> NAMES =
      List.of("job", "hold", "kind", "state", "at", "likely", "share", "full", "waitsFor", "day");

  private final List<JobView> views;

  /** What ends before it is left out. */
  private final Instant from;

  private JustDates(List<JobView> views, Instant from) {
    this.views = List.copyOf(views);
    this.from = from;
  }

  /**
   * The dates of some jobs.
   *
   * @param views the jobs, with English words
   * @return their dates, in the order of the jobs
   */
  public static JustDates of(List<JobView> views) {
    return new JustDates(views, Instant.MIN);
  }

  /**
   * Those of them that are still to come at a time.
   *
   * @param time an instant; a hold that ends then is over, a visit of its day still to come
   * @return the dates, in the same order
   */
  public JustDates after(Instant time) {
    return new JustDates(views, time);
  }

  private List<Release> releases(JobView view) {
    return view.timeline().releases().stream().filter(r -> r.end().at().isAfter(from)).toList();
  }

  private Optional<Visit> visit(JobView view) {
    ZoneId zone = view.timeline().zone();
    return view.visit()
        .filter(v -> v.day().plusDays(1).atStartOfDay(zone).toInstant().isAfter(from));
  }

  /**
   * A line for each date: job, what it is about, when. A job's visit stands below its dates.
   *
   * @return lines in English, each ended by a line feed
   */
  public String text() {
    List<List<String>> rows = new ArrayList<>();
    for (JobView view : views) {
      SpokenDates told = SpokenDates.alone(view);
      String job = view.job().id();
      for (Release release : releases(view)) {
        rows.add(List.of(job, told.label(release), told.end(release) + told.gently(release)));
      }
      visit(view).ifPresent(visit -> rows.add(List.of(job, told.label(visit), told.day(visit))));
    }
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      text.append(padded(row.get(0), widest(rows, 0)))
          .append(padded(row.get(1), widest(rows, 1)))
          .append(row.get(2))
          .append('\n');
    }
    return text.toString();
  }

  private static int widest(List<List<String>> rows, int column) {
    return rows.stream().mapToInt(r -> letters(r.get(column))).max().orElse(0);
  }

  private static String padded(String text, int width) {
    return text + " ".repeat(width - letters(text) + 2);
  }

  private static int letters(String text) {
    return text.codePointCount(0, text.length());
  }

  /**
   * The dates as comma-separated values, described in {@code docs/why.md}.
   *
   * @return a header and a row for each date, each ended by a line feed
   */
  public String csv() {
    StringWriter text = new StringWriter();
    // Without a buffer there is nothing to close.
    CsvWriter csv = CsvWriter.builder().bufferSize(0).lineDelimiter(LineDelimiter.LF).build(text);
    csv.writeRecord(NAMES);
    for (Map<String, Object> row : rows()) {
      csv.writeRecord(NAMES.stream().map(n -> Objects.toString(row.get(n), "")).toList());
    }
    return text.toString();
  }

  /**
   * The dates as JSON with the names of {@link #csv}.
   *
   * @return one array with an object for each date, ended by a line feed
   */
  public String json() {
    return WhyJson.write(rows());
  }

  private List<Map<String, Object>> rows() {
    List<Map<String, Object>> rows = new ArrayList<>();
    for (JobView view : views) {
      releases(view).forEach(release -> rows.add(row(view, release)));
      visit(view).ifPresent(visit -> rows.add(row(view, visit)));
    }
    return rows;
  }

  private static Map<String, Object> row(JobView view, Release release) {
    ZoneId zone = view.timeline().zone();
    Map<String, Object> row = empty(view);
    row.put("hold", release.hold());
    row.put("kind", release.kind().id());
    row.put("state", release.end().id());
    row.put("at", ExplanationWayData.local(release.end().at(), zone));
    row.put("likely", ExplanationWayData.local(release.likely(), zone));
    ExplanationWayData.putLimit(row, release, zone);
    release.waitsFor().ifPresent(other -> row.put("waitsFor", other));
    return row;
  }

  private static Map<String, Object> row(JobView view, Visit visit) {
    Map<String, Object> row = empty(view);
    row.put("kind", "visit");
    row.put("state", visit.byPhoto() ? "photo" : "come-in");
    row.put("day", visit.day().toString());
    return row;
  }

  /** All names, so that every row has them; those without a value are null. */
  private static Map<String, Object> empty(JobView view) {
    Map<String, Object> row = new LinkedHashMap<>();
    NAMES.forEach(name -> row.put(name, null));
    row.put("job", view.job().id());
    return row;
  }
}
