package curewindow.page;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.cure.Timeline;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Gathers the choice of where the car really stands, as a small timetable. */
final class Parked {

  /** The page file of each folder, named so that links also work from a disk. */
  private static final String PAGE = "index.html";

  /** Where the page of the noted parking is entered, so that it does not send people on again. */
  private static final String STAY = "#main";

  private final JobView view;
  private final Words words;
  private final When when;
  private final List<Parkings.Case> cases;

  /** Decides what is told at the head, so that it is the same on the page of each case. */
  private final JobView noted;

  Parked(JobView view) {
    this.view = view;
    this.words = view.words();
    this.when = new When(view);
    this.cases = view.parkings().cases();
    this.noted = cases.isEmpty() ? view : view.withTimeline(cases.get(0).timeline());
  }

  /** The timetable; {@code shown} stands where the page is for another parking than the noted. */
  record Table(Optional<Shown> shown, List<String> heads, List<Row> rows) {}

  /** For which parking a page is, and the way back. */
  record Shown(String text, String href) {}

  /** A case; {@code current} and {@code here} stand where it is the one shown. */
  record Row(
      String name, String href, Optional<String> current, String here, List<Contact.Pair> ends) {}

  /** The timetable, or empty where the parking makes no difference. */
  Optional<Table> table() {
    if (cases.isEmpty()) {
      return Optional.empty();
    }
    List<Function<Timeline, Optional<Release>>> columns = columns();
    List<String> heads = new ArrayList<>();
    lead().ifPresent(r -> heads.add(Dated.shortLabel(r, words)));
    if (columns.size() > heads.size()) {
      heads.add(words.text("parked.last"));
    }
    List<Row> rows = cases.stream().map(c -> row(c, columns)).toList();
    return Optional.of(new Table(shown(), heads, rows));
  }

  /** The way from a job's page to the folder of the noted parking. */
  static String up(JobView view) {
    return view.parkings().noted().isPresent() ? "../" : "";
  }

  private Optional<Shown> shown() {
    return view.parkings().noted().map(c -> new Shown(shown(c), href(c)));
  }

  private String shown(Parkings.Case asNoted) {
    return words.text(
        "parked.shown",
        Map.of(
            "parking",
            ParkingWords.of(view.parkings().shown().plans(), words),
            "noted",
            ParkingWords.of(asNoted.plans().get(0), words)));
  }

  private Row row(Parkings.Case shown, List<Function<Timeline, Optional<Release>>> columns) {
    boolean here = shown.equals(view.parkings().shown());
    List<String> marks = new ArrayList<>();
    if (shown.folder().isEmpty()) {
      marks.add(words.text("parked.noted"));
    }
    if (here) {
      marks.add(words.text("parked.here"));
    }
    return new Row(
        Listing.capital(ParkingWords.of(shown.plans(), words)),
        href(shown),
        here ? Optional.of("page") : Optional.empty(),
        String.join(" · ", marks),
        columns.stream().flatMap(c -> c.apply(shown.timeline()).stream()).map(this::end).toList());
  }

  private String href(Parkings.Case shown) {
    return up(view) + shown.folder() + PAGE + (shown.folder().isEmpty() ? STAY : "");
  }

  /** Day and hour of an end. */
  private Contact.Pair end(Release release) {
    return new Contact.Pair(when.shortDay(release), when.time(release));
  }

  /** What stands beside each case: the end of what is told at the head, and the last end of all. */
  private List<Function<Timeline, Optional<Release>>> columns() {
    List<Function<Timeline, Optional<Release>>> columns = new ArrayList<>();
    lead().ifPresent(r -> columns.add(dates -> dates.of(r.hold())));
    if (differ(Parked::last) && cases.stream().anyMatch(c -> !lastIsLead(c))) {
      columns.add(Parked::last);
    }
    return columns;
  }

  private boolean lastIsLead(Parkings.Case any) {
    return last(any.timeline()).map(Release::hold).equals(lead().map(Release::hold));
  }

  /** The most urgent of what ends at different times in different cases. */
  private Optional<Release> lead() {
    return Stream.concat(
            Urgency.holds(noted).stream(),
            noted.timeline().releases().stream().filter(r -> r.kind() != HoldKind.HOLD))
        .filter(r -> differ(dates -> dates.of(r.hold())))
        .findFirst();
  }

  private static Optional<Release> last(Timeline dates) {
    return dates.releases().stream()
        .filter(r -> r.kind() == HoldKind.HOLD)
        .max(Comparator.comparing(r -> r.end().at()));
  }

  private boolean differ(Function<Timeline, Optional<Release>> column) {
    return cases.stream().map(c -> column.apply(c.timeline()).map(Release::end)).distinct().count()
        > 1;
  }
}
