package curewindow.desk;

import curewindow.cure.Stay;
import curewindow.guide.Questions;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import curewindow.site.CallNote;
import curewindow.site.CallNotes;
import curewindow.site.CardFile;
import curewindow.site.ToldNote;
import curewindow.told.JobView;
import curewindow.told.OtherClock;
import curewindow.told.Printed;
import curewindow.words.Words;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What happened to a car, as far as the shop knows. */
final class CarHistory {

  /** Something that happened, and how it is taken back where that can still be done. */
  record Event(String when, String what, Optional<String> undo) {

    Event(String when, String what) {
      this(when, what, Optional.empty());
    }
  }

  private final DeskShop desk;
  private final JobView view;
  private final Words words;

  /**
   * The history of a car.
   *
   * @param view the car, in its customer's language
   * @param words of the desk
   */
  CarHistory(DeskShop desk, JobView view, Words words) {
    this.desk = desk;
    this.view = view;
    this.words = words;
  }

  /** What happened, the last first; what a card says has no day of its own. */
  List<Event> events() {
    Job job = view.job();
    ZoneId there = view.timeline().zone();
    List<Dated> dated = new ArrayList<>();
    stays(dated);
    CallNotes.of(desk.now().shop()).of(job.id()).forEach(c -> dated.add(call(c)));
    ToldNote.of(desk.now().shop(), job.id()).forEach(t -> dated.add(told(t)));
    // What was noted last on a day is taken back first.
    Collections.reverse(dated);
    dated.sort(Comparator.comparing(Dated::day).reversed());
    List<Event> events = new ArrayList<>();
    if (CardFile.isHandedOver(desk.now().shop(), job.id())) {
      events.add(new Event(words.text("desk.car.given"), words.text("desk.hand-over.given")));
    }
    LocalDate today = desk.today();
    Set<Noted> undone = EnumSet.noneOf(Noted.class);
    for (Dated d : dated) {
      Optional<Noted> undo = d.noted().filter(n -> d.day().equals(today)).filter(undone::add);
      events.add(new Event(words.date(d.day()), d.what(), undo.map(Noted::id)));
    }
    Printed printed = view.printed();
    printed
        .dates()
        .forEach(
            d ->
                events.add(
                    new Event(
                        words.text("desk.car.card"),
                        words.text("hold." + d.hold() + ".label")
                            + " "
                            + words.dayAndTime(d.earliest(), d.earliestClock(there)))));
    return events;
  }

  /** Something that happened on a day, and whether it was noted at a tap. */
  private record Dated(LocalDate day, String what, Optional<Noted> noted) {}

  private void stays(List<Dated> dated) {
    ZoneId zone = view.shop().zone();
    for (Stay stay : view.job().stays()) {
      String key = stay.pickup().isAfter(desk.time()) ? "desk.car.stays" : "desk.car.stay";
      dated.add(
          new Dated(
              stay.pickup().atZone(zone).toLocalDate(),
              words.text(key, Map.of("in", words.shortDay(stay.in(), zone))),
              Optional.empty()));
    }
    for (PastVisit visit : view.job().seen()) {
      String note = visit.note().isEmpty() ? "" : ": " + visit.note();
      boolean anew = visit.result() == PastVisit.Result.REFITTED || !visit.what().isEmpty();
      dated.add(
          new Dated(
              visit.day(),
              words.text("desk.car.seen." + visit.result().id()) + note,
              anew ? Optional.empty() : Optional.of(Noted.SEEN)));
    }
  }

  private Dated told(ToldNote told) {
    boolean visit = told.hold().isEmpty();
    String about =
        visit ? words.text("desk.car.visit") : words.text("hold." + told.hold() + ".label");
    String date = visit ? words.date(LocalDate.parse(told.date())) : time(told.date());
    return new Dated(
        told.day(),
        words.text("desk.car.told", Map.of("about", about, "date", date)),
        Optional.of(Noted.TOLD));
  }

  /** A time by the clock that it was told by. */
  private String time(String date) {
    OffsetDateTime at = OffsetDateTime.parse(date);
    return OtherClock.labelled(
        words.dayAndTime(at.toInstant(), at.getOffset()),
        at.toInstant(),
        at.getOffset(),
        view.in(words));
  }

  private Dated call(CallNote call) {
    String question =
        Questions.of(view.in(words), desk.now().shop().guides()).stream()
            .filter(q -> q.id().equals(call.question()))
            .map(Questions.Question::text)
            .findFirst()
            .orElseGet(() -> words.text("desk.car.other"));
    return new Dated(
        call.at().toLocalDate(),
        words.text(
            "desk.car.called",
            Map.of(
                "question",
                question,
                "outcome",
                words.text("desk.car.outcome." + call.outcome().id()))),
        Optional.of(Noted.CALLED));
  }
}
