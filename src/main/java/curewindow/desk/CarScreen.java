package curewindow.desk;

import curewindow.cure.Stay;
import curewindow.guide.Questions;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import curewindow.site.CallNote;
import curewindow.site.CallNotes;
import curewindow.site.CallOutcome;
import curewindow.site.CardFile;
import curewindow.site.LoadedShop;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.told.Printed;
import curewindow.told.VisitWords;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One car: what its customer sees and may ask, and its whole history. */
final class CarScreen {

  private static final int QUESTIONS = 6;

  /**
   * The screen.
   *
   * @param page where the customer's page is shown; empty where none was made yet
   * @param asked the likely questions with this car's answers, the first ones open to view
   * @param more the other questions
   * @param history what happened, the last first
   * @param fitted what was fitted, with film, batch and warranty
   * @param visit the visit that is due, in words; empty where none is
   */
  record View(
      Frame frame,
      String job,
      String who,
      Optional<String> page,
      List<Asked> asked,
      List<Asked> more,
      List<Event> history,
      List<String> fitted,
      Optional<String> visit,
      DatesBeside.Dates dates) {}

  /** A question, how it stands, and what to say. */
  record Asked(String id, String question, String stand, String answer) {}

  /** Something that happened. */
  record Event(String when, String what) {}

  private final DeskShop desk;
  private final DeskPages pages;
  private final Path out;

  CarScreen(DeskShop desk, DeskPages pages, Path out) {
    this.desk = desk;
    this.pages = pages;
    this.out = out;
  }

  /** Whose car it is, in a line. */
  static String who(JobView view) {
    return Stream.of(view.job().id(), view.job().firstName(), view.car())
        .filter(t -> !t.isBlank())
        .collect(Collectors.joining(" · "));
  }

  /**
   * The screen.
   *
   * @param site where the browser is shown the customers' site
   */
  Answer show(Job job, Frame frame, String site, Words words) {
    LoadedShop shop = desk.now().shop();
    JobView theirs = desk.now().view(job);
    JobView ours = theirs.in(words);
    List<Asked> asked = asked(ours, shop);
    return Answer.html(
        200,
        pages.html(
            "car",
            new View(
                frame,
                job.id(),
                who(theirs),
                shop.madePage(out, job.id()).map(folder -> site + folder),
                asked.stream().limit(QUESTIONS).toList(),
                asked.stream().skip(QUESTIONS).toList(),
                history(job, theirs, words),
                fitted(ours),
                visit(ours),
                DatesBeside.of(shop, job, words, desk.time())),
            words));
  }

  /** What hangs on a date that is near comes first, as people call about that. */
  private List<Asked> asked(JobView ours, LoadedShop shop) {
    return Questions.told(ours, shop.guides(), desk.time()).stream()
        .filter(t -> !t.answer().isEmpty())
        .sorted(Comparator.comparing(Questions.Told::later).thenComparingLong(this::far))
        .map(t -> new Asked(t.question().id(), t.question().text(), t.stand(), t.answer()))
        .toList();
  }

  private long far(Questions.Told told) {
    return told.question().releases().stream()
        .mapToLong(r -> Math.abs(r.end().at().getEpochSecond() - desk.time().getEpochSecond()))
        .min()
        .orElse(Long.MAX_VALUE);
  }

  private Optional<String> visit(JobView ours) {
    return ours.visit()
        .map(v -> VisitWords.title(v, ours.words()) + ": " + VisitWords.shortDay(v.day(), ours));
  }

  private static List<String> fitted(JobView ours) {
    Words words = ours.words();
    List<String> lines = new ArrayList<>();
    for (FittedItem item : ours.job().items()) {
      List<String> parts = new ArrayList<>();
      parts.add(words.text("service." + item.service()));
      parts.add(ours.catalogue().films().get(item.film()).name());
      parts.add(
          Listing.of(item.spots().stream().map(s -> words.text("spot." + s)).toList(), words));
      item.batch().ifPresent(b -> parts.add(words.text("desk.car.batch", Map.of("batch", b))));
      if (item.warrantyYears().isPresent()) {
        parts.add(words.text("desk.car.warranty", Map.of("n", item.warrantyYears().getAsInt())));
      }
      lines.add(String.join(" · ", parts));
    }
    return lines;
  }

  /** What happened, the last first; what a card says has no day of its own. */
  private List<Event> history(Job job, JobView view, Words words) {
    ZoneId zone = view.shop().zone();
    List<Dated> dated = new ArrayList<>();
    stays(view, words, dated);
    CallNotes.of(desk.now().shop()).of(job.id()).forEach(c -> dated.add(call(c, view, words)));
    dated.sort(Comparator.comparing(Dated::day).reversed());
    List<Event> events = new ArrayList<>();
    if (CardFile.isHandedOver(desk.now().shop(), job)) {
      events.add(new Event(words.text("desk.car.given"), words.text("desk.hand-over.given")));
    }
    dated.forEach(d -> events.add(new Event(words.date(d.day()), d.what())));
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
                            + words.dayAndTime(d.earliest(), zone))));
    return events;
  }

  /** Something that happened on a day. */
  private record Dated(LocalDate day, String what) {}

  private void stays(JobView view, Words words, List<Dated> dated) {
    ZoneId zone = view.shop().zone();
    for (Stay stay : view.job().stays()) {
      String key = stay.pickup().isAfter(desk.time()) ? "desk.car.stays" : "desk.car.stay";
      dated.add(
          new Dated(
              stay.pickup().atZone(zone).toLocalDate(),
              words.text(key, Map.of("in", words.shortDay(stay.in(), zone)))));
    }
    for (PastVisit visit : view.job().seen()) {
      String note = visit.note().isEmpty() ? "" : ": " + visit.note();
      dated.add(new Dated(visit.day(), words.text("desk.car.seen." + visit.result().id()) + note));
    }
  }

  private Dated call(CallNote call, JobView view, Words words) {
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
                words.text("desk.car.outcome." + call.outcome().id()))));
  }

  /** A customer called: with which question, and what became of it. */
  Answer called(Job job, Request.Values form) throws IOException {
    Optional<CallOutcome> outcome = CallOutcome.of(form.one("outcome"));
    String question = form.one("question");
    if (outcome.isEmpty() || !CallNotes.questions(desk.now().shop()).contains(question)) {
      return Answer.refused(400);
    }
    desk.note(
        shop -> {
          CallNotes.note(shop, job.id(), question, outcome.get(), desk.time());
          return job;
        });
    return Answer.see("/job/" + job.id() + "?done=noted");
  }
}
