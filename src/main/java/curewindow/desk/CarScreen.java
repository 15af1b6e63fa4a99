package curewindow.desk;

import curewindow.guide.Questions;
import curewindow.problem.Problem;
import curewindow.shop.FittedItem;
import curewindow.shop.Job;
import curewindow.shop.PastVisit;
import curewindow.site.CallNotes;
import curewindow.site.CallOutcome;
import curewindow.site.LoadedShop;
import curewindow.site.PagesNow;
import curewindow.site.VisitNotes;
import curewindow.told.JobView;
import curewindow.told.Listing;
import curewindow.told.VisitWords;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
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
   * @param old whether that page is from before the last change
   * @param asked the likely questions with this car's answers, the first ones open to view
   * @param more the other questions
   * @param history what happened, the last first
   * @param fitted what was fitted, with film, batch and warranty
   * @param visit the visit that is due, in words; empty where none is
   * @param seen a visit that was to be noted
   */
  record View(
      Frame frame,
      String job,
      String who,
      Optional<String> page,
      boolean old,
      List<Asked> asked,
      List<Asked> more,
      List<CarHistory.Event> history,
      List<String> fitted,
      Optional<String> visit,
      Seen seen,
      DatesBeside.Dates dates) {}

  /** A visit that was to be noted: what was typed, and why it was not. */
  record Seen(String note, List<String> problems) {

    static final Seen NOTHING = new Seen("", List.of());
  }

  /** A question, how it stands, and what to say. */
  record Asked(String id, String question, String stand, String answer) {}

  /** The note of what was seen on a photo alone; it stands in the shop's own file. */
  private static final String PHOTO = "photo";

  /** Nobody hears the same question again, and answers it, in so short a time. */
  private static final Duration SAME_TAP = Duration.ofSeconds(5);

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
    return show(new Shown(job, site, Seen.NOTHING), frame, words);
  }

  /** What is shown: a car, where the browser is shown the customers' site, a visit not noted. */
  private record Shown(Job job, String site, Seen seen) {}

  private Answer show(Shown shown, Frame frame, Words words) {
    Job job = shown.job();
    Seen seen = shown.seen();
    LoadedShop shop = desk.now().shop();
    JobView theirs = desk.now().view(job);
    JobView ours = theirs.in(words);
    List<Asked> asked = asked(ours, shop);
    return Answer.html(
        seen.problems().isEmpty() ? 200 : 422,
        pages.html(
            "car",
            new View(
                frame,
                job.id(),
                who(ours),
                shop.madePage(out, job.id()).map(folder -> shown.site() + folder),
                desk.now().page(job) == PagesNow.Stand.OLD,
                asked.stream().limit(QUESTIONS).toList(),
                asked.stream().skip(QUESTIONS).toList(),
                new CarHistory(desk, theirs, words).events(),
                fitted(ours),
                visit(ours),
                seen,
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

  /** A customer called: with which question, and what became of it. */
  Answer called(Job job, Request.Values form) throws IOException {
    Optional<CallOutcome> outcome = CallOutcome.of(form.one("outcome"));
    String question = form.one("question");
    if (outcome.isEmpty() || !CallNotes.questions(desk.now().shop()).contains(question)) {
      return Answer.refused(400);
    }
    desk.note(
        shop -> {
          if (!isJustNoted(shop, job, question, outcome.get())) {
            CallNotes.note(shop, job.id(), question, outcome.get(), desk.time());
          }
          return job;
        });
    return Answer.see(path(job) + Noted.CALLED.done("noted", job));
  }

  /** A finger that taps twice has not heard two calls. */
  private boolean isJustNoted(LoadedShop shop, Job job, String question, CallOutcome outcome) {
    LocalDateTime now = LocalDateTime.ofInstant(desk.time(), shop.shop().orElseThrow().zone());
    return CallNotes.of(shop).of(job.id()).stream()
        .filter(c -> c.question().equals(question) && c.outcome() == outcome)
        .anyMatch(c -> Duration.between(c.at(), now).abs().compareTo(SAME_TAP) < 0);
  }

  private static String path(Job job) {
    return "/job/" + job.id();
  }

  /** The shop saw the car, or a photo of it. */
  Answer seen(Job job, Request request, Frame frame, Words words) throws IOException {
    Request.Values form = request.form();
    Optional<PastVisit.Result> result =
        Arrays.stream(PastVisit.Result.values())
            .filter(r -> r != PastVisit.Result.REFITTED && r.id().equals(form.one("result")))
            .findFirst();
    if (result.isEmpty()) {
      return Answer.refused(400);
    }
    String note = form.has("photo") ? PHOTO : form.one("note");
    List<Problem> wrong =
        desk.write(
            shop -> {
              PastVisit visit = new PastVisit(desk.today(), List.of(), result.get(), note);
              return VisitNotes.add(shop, job, visit, desk.time());
            });
    if (!wrong.isEmpty()) {
      Seen seen = new Seen(note, new FormFields(wrong, words).others());
      return show(new Shown(job, request.site(), seen), frame, words);
    }
    String to = form.one("from").equals("today") ? "/" : path(job);
    return Answer.see(to + Noted.SEEN.done("seen", job));
  }

  /** What was noted by mistake today is taken back. */
  Answer undo(Job job, Request.Values form) throws IOException {
    Optional<Noted> what = Noted.of(form.one("what"));
    if (what.isEmpty()) {
      return Answer.refused(400);
    }
    String done = what.get().takeBack(desk, job) ? "undone" : "not-undone";
    boolean fromToday = what.get() == Noted.TOLD && !form.one("from").equals("car");
    return Answer.see((fromToday ? "/" : path(job)) + "?done=" + done);
  }
}
