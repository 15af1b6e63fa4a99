package curewindow.desk;

import curewindow.cure.HoldKind;
import curewindow.cure.Release;
import curewindow.handout.OfficeDay;
import curewindow.handout.OfficeVisits;
import curewindow.problem.Problems;
import curewindow.shop.Hold;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.site.CardFile;
import curewindow.site.DueCalls;
import curewindow.site.LoadedShop;
import curewindow.site.Office;
import curewindow.site.PagesNow;
import curewindow.told.Contact;
import curewindow.told.JobView;
import curewindow.told.VisitWords;
import curewindow.told.When;
import curewindow.words.Words;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Today: who needs a person first, who comes, and what may be done from today on. */
final class TodayScreen {

  /** Nobody is called and nothing ends for a car that left longer ago. */
  private static final Duration RECENT = Duration.ofDays(240);

  /**
   * The screen.
   *
   * @param calls dates that became too early for what the customer was told
   * @param sooner who may go ahead sooner
   * @param moved visits that moved to another day
   * @param overdue visits whose day has passed
   * @param visits visits of the next days
   * @param pickups cars that are picked up
   * @param ends what may be done from today on
   * @param old says how many pages are from before a change; empty where none is
   * @param unread cars that are not on it, as something is wrong with their files
   */
  record View(
      Frame frame,
      String day,
      boolean closed,
      List<Call> calls,
      List<Call> sooner,
      List<Call> moved,
      List<Due> overdue,
      List<Due> visits,
      List<Pickup> pickups,
      List<End> ends,
      Optional<Old> old,
      Optional<LostCars.Unread> unread) {}

  /** Pages that are from before a change, and a car among them. */
  record Old(String job, String text) {}

  /** A car that is picked up, and whether its customer has a card or the page already. */
  record Pickup(OfficeDay.Pickup of, boolean given) {}

  /** A visit, and a message that asks for it, in the customer's language. */
  record Due(OfficeVisits.Visit visit, Optional<String> sms) {}

  /**
   * Something to tell a customer.
   *
   * @param hold its id, and date the date of today as files have it: the row that is marked
   * @param told what they were told
   * @param now what is right now
   */
  record Call(
      String job, String who, String about, String hold, String date, String told, String now) {}

  /** Something that a customer may do from today on. */
  record End(String job, String who, String what, String when) {}

  private final DeskShop desk;
  private final DeskPages pages;

  TodayScreen(DeskShop desk, DeskPages pages) {
    this.desk = desk;
    this.pages = pages;
  }

  Answer show(Frame frame, Words words) {
    LoadedShop shop = desk.now().shop();
    Shop own = shop.shop().orElseThrow();
    Instant now = desk.time();
    LocalDate today = now.atZone(own.zone()).toLocalDate();
    List<JobView> views = views(shop, now);
    Problems problems = new Problems();
    OfficeDay day = Office.of(shop, views, words).gathered(today, problems);
    DueCalls due = DueCalls.of(shop, views, now, words, problems);
    return Answer.html(
        200,
        pages.html(
            "today",
            new View(
                frame,
                headline(words.fullWeekday(now, own.zone()))
                    + ", "
                    + words.fullMonthDay(now, own.zone()),
                day.isClosed(),
                calls(due.tooEarly(), words),
                calls(due.sooner(), words),
                calls(due.visits(), words),
                due(day.visits().overdue()),
                due(day.visits().ahead()),
                pickups(day.pickups(), shop),
                ends(views, own, today, words),
                old(views, words),
                LostCars.unread(shop, "desk.today.unread", words)),
            words));
  }

  /** Some languages write days small, but not where a line begins. */
  private static String headline(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  /** A press makes all of them, whichever car it is asked for at. */
  private Optional<Old> old(List<JobView> views, Words words) {
    List<String> old =
        views.stream()
            .map(JobView::job)
            .filter(job -> desk.now().page(job) == PagesNow.Stand.OLD)
            .map(Job::id)
            .sorted()
            .toList();
    return old.stream()
        .findFirst()
        .map(
            job -> new Old(job, words.text("desk.today.old", Map.of("n", old.size(), "job", job))));
  }

  private static List<Pickup> pickups(List<OfficeDay.Pickup> pickups, LoadedShop shop) {
    return pickups.stream().map(p -> new Pickup(p, CardFile.isHandedOver(shop, p.job()))).toList();
  }

  private List<Due> due(List<OfficeVisits.Visit> visits) {
    return visits.stream()
        .map(
            v ->
                new Due(
                    v,
                    desk.job(v.job())
                        .map(desk.now()::view)
                        .flatMap(view -> VisitWords.reminder(view, desk.time()))
                        .map(text -> Contact.sms("", text))))
        .toList();
  }

  private static List<Call> calls(List<DueCalls.Call> calls, Words words) {
    return calls.stream()
        .map(
            c ->
                new Call(
                    c.job(),
                    (c.job() + " " + c.firstName()).strip(),
                    c.about(),
                    c.hold(),
                    c.date(),
                    words.text(
                        c.byCard() ? "desk.today.card" : "desk.today.said",
                        Map.of("told", c.told())),
                    words.text("desk.today.now", Map.of("now", c.now()))))
        .toList();
  }

  private List<JobView> views(LoadedShop shop, Instant now) {
    return shop.jobs().stream()
        .filter(job -> job.pickup().isAfter(now.minus(RECENT)))
        .map(job -> desk.now().view(job))
        .toList();
  }

  /** Such as windows: the dates that people plan by. */
  private static List<End> ends(List<JobView> views, Shop shop, LocalDate today, Words words) {
    List<End> ends = new ArrayList<>();
    for (JobView view : views) {
      view.timeline().releases().stream()
          .filter(r -> r.kind() == HoldKind.HOLD)
          .filter(r -> view.catalogue().is(r.hold(), Hold.Mark.MAIN))
          .filter(r -> view.timeline().isAhead(r))
          .filter(r -> r.end().at().atZone(shop.zone()).toLocalDate().equals(today))
          .map(r -> end(view.in(words), r))
          .forEach(ends::add);
    }
    ends.sort(Comparator.comparing(End::job));
    return ends;
  }

  private static End end(JobView view, Release release) {
    return new End(
        view.job().id(),
        CarScreen.who(view),
        view.words().text("hold." + release.hold() + ".event"),
        new When(view).time(release));
  }

  /** The customer was told one thing that moved. */
  Answer told(Job job, Request.Values form) throws IOException {
    if (!form.has("hold") || !form.has("date")) {
      return Answer.refused(400);
    }
    DueCalls.Row row = new DueCalls.Row(job.id(), form.one("hold"), form.one("date"));
    DueCalls.Told told =
        desk.note(
            shop -> DueCalls.of(shop, desk.time(), new Problems()).called(shop, row, desk.time()));
    return Answer.see(
        "/" + (told == DueCalls.Told.MOVED ? "?done=moved-again" : Noted.TOLD.done("told", job)));
  }
}
