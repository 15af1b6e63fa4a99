package curewindow.why;

import curewindow.cure.CureCase;
import curewindow.cure.HoldKind;
import curewindow.cure.PaintTone;
import curewindow.cure.Release;
import curewindow.told.JobView;
import curewindow.told.Urgency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The first lines of an explanation: whose dates they are, and the dates alone, the most urgent
 * first. What has no room is counted.
 */
final class Summary {

  /** How many lines it has at most. */
  private static final int ROWS = 10;

  private final JobView view;
  private final ExplanationChoice look;
  private final SpokenDates told;
  private final Lines lines;
  private final CureCase curing;

  private Summary(ExplanationInputs inputs, ExplanationChoice look, Lines lines) {
    this.view = inputs.view();
    this.curing = inputs.curing();
    this.look = look;
    this.told = SpokenDates.besidePickup(view);
    this.lines = lines;
  }

  static void say(ExplanationInputs inputs, ExplanationChoice look, Lines lines) {
    new Summary(inputs, look, lines).say();
  }

  private void say() {
    List<String> head = head();
    List<String> dates = dates();
    Optional<String> visit =
        view.visit()
            .filter(v -> look.holds().isEmpty())
            .map(v -> told.label(v) + ": " + told.day(v));
    int room = ROWS - rows(head) - rows(visit.stream().toList());
    int shown = dates.size();
    while (shown > 0 && rows(with(dates, shown)) > room) {
      shown--;
    }
    head.forEach(text -> lines.say(0, "%s", text));
    with(dates, shown).forEach(text -> lines.say(0, "%s", text));
    visit.ifPresent(text -> lines.say(0, "%s", text));
    lines.gap();
  }

  private List<String> head() {
    return List.of(
        String.format("Job %s, %s", view.job().id(), view.car()),
        String.format(
            Locale.ROOT,
            "Place: %s (%.2f, %.2f, %.0f m, %s)",
            view.place().name(),
            view.place().latitude(),
            view.place().longitude(),
            view.place().height(),
            view.place().zone()),
        String.format(
            "Parking: %s by day, %s by night; %s paint",
            curing.parking().day().id(), curing.parking().night().id(), paint(curing.paint())));
  }

  private static String paint(PaintTone tone) {
    return tone == PaintTone.MID ? "medium" : tone.id();
  }

  private List<String> dates() {
    Stream<Release> normal =
        view.timeline().releases().stream().filter(r -> r.kind() != HoldKind.HOLD);
    return Stream.concat(Urgency.holds(view).stream(), normal)
        .filter(r -> look.shows(r.hold()))
        .map(r -> told.label(r) + ": " + told.end(r))
        .toList();
  }

  /** The first dates, and how many there are beside them. */
  private static List<String> with(List<String> dates, int shown) {
    int more = dates.size() - shown;
    Stream<String> rest = Stream.of("... and " + more + " more: see below").filter(t -> more > 0);
    return Stream.concat(dates.stream().limit(shown), rest).toList();
  }

  private static int rows(List<String> texts) {
    Lines wrapped = new Lines(true);
    texts.forEach(text -> wrapped.say(0, "%s", text));
    return (int) wrapped.text().lines().count();
  }
}
