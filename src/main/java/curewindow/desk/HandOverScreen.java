package curewindow.desk;

import curewindow.handout.CodeLevel;
import curewindow.handout.HandoutPress;
import curewindow.handout.QrCode;
import curewindow.shop.Handout;
import curewindow.shop.HandoutChoice;
import curewindow.shop.Job;
import curewindow.site.CardFile;
import curewindow.site.LoadedShop;
import curewindow.site.PagesNow;
import curewindow.site.Tokens;
import curewindow.told.Contact;
import curewindow.told.JobView;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Handing a car over: its page is made and sent, its code shown, its card printed. */
final class HandOverScreen {

  /**
   * The screen.
   *
   * @param code the code of the page's address; empty until the page of the job as it is now is
   *     made
   * @param old whether there is a page from before the last change
   * @param online what is known of the page's address
   * @param steps what was done and what came of it
   * @param prints what can be printed
   * @param text a message for the customer, in their language
   * @param language the tag of that
   * @param sms the same as a link that opens the phone's messages
   * @param given whether the customer has a card or took the page along
   */
  record View(
      Frame frame,
      String job,
      String who,
      Optional<Code> code,
      boolean old,
      Online online,
      List<PressReports.Said> steps,
      List<FormFields.Choice> prints,
      DatesBeside.Dates dates,
      String text,
      String language,
      String sms,
      boolean given) {}

  /** A code as SVG, and the address that it says. */
  record Code(int side, String path, String address) {}

  /**
   * What is known of the page's address since the desk was started.
   *
   * @param answers whether it answered with this page when that was asked last
   * @param silent whether it did not
   */
  record Online(boolean answers, boolean silent) {}

  /** Stands in the address of this screen where a press was just done, with its number. */
  private static final String PRESSED = "pressed";

  private final DeskShop desk;
  private final DeskPages pages;
  private final Clock clock;
  private final PagePress press;
  private final PressReports reports = new PressReports();

  HandOverScreen(DeskShop desk, DeskPages pages, PagePress press, Clock clock) {
    this.desk = desk;
    this.pages = pages;
    this.clock = clock;
    this.press = press;
  }

  /** The screen, with what came of a press where one was just done. */
  Answer show(Job job, Request request, Frame frame, Words words) {
    String asked = request.query().one(PRESSED);
    List<PressReports.Step> steps =
        reports
            .of(job.id())
            .filter(report -> report.number().equals(asked))
            .map(report -> report.made().steps())
            .orElse(List.of());
    return show(job, frame, steps, words);
  }

  private Answer show(Job job, Frame frame, List<PressReports.Step> steps, Words words) {
    LoadedShop shop = desk.now().shop();
    JobView view = desk.now().view(job);
    PagesNow.Stand stand = desk.now().page(job);
    Optional<Code> code =
        Optional.of(view.address().toString())
            .filter(a -> stand == PagesNow.Stand.NOW)
            .flatMap(HandOverScreen::code);
    Optional<Boolean> online = reports.of(job.id()).flatMap(report -> report.made().online());
    String text = message(view);
    return Answer.html(
        200,
        pages.html(
            "hand-over",
            new View(
                frame,
                job.id(),
                CarScreen.who(view.in(words)),
                code,
                stand == PagesNow.Stand.OLD,
                new Online(online.orElse(false), !online.orElse(true)),
                steps.stream().map(step -> step.in(words)).toList(),
                prints(view, words),
                DatesBeside.of(shop, job, words, desk.time()),
                text,
                view.words().language(),
                Contact.sms("", text),
                CardFile.isHandedOver(shop, job.id())),
            words));
  }

  /** In the customer's language. */
  private static String message(JobView view) {
    String name = view.job().firstName();
    return view.words()
        .text(
            name.isBlank() ? "handout.message-nameless" : "handout.message",
            Map.of(
                "name", name,
                "car", view.car(),
                "shop", view.shop().name(),
                "address", view.address().toString()));
  }

  /** Whether the page that was made is the one of the job as it is now. */
  private boolean isMade(Job job) {
    return desk.now().page(job) == PagesNow.Stand.NOW;
  }

  private static List<FormFields.Choice> prints(JobView view, Words words) {
    HandoutChoice usual = view.shop().handout();
    return Arrays.stream(Handout.values())
        .filter(h -> HandoutPress.isFor(view, h))
        .map(
            h -> new FormFields.Choice(h.id(), words.text("desk.print." + h.id()), h == usual.as()))
        .toList();
  }

  /** The address in upper and lower case as it is, at a level that a phone reads off a screen. */
  private static Optional<Code> code(String address) {
    return QrCode.of(address, CodeLevel.M)
        .map(
            qr -> {
              StringBuilder path = new StringBuilder();
              for (int y = 0; y < qr.modules(); y++) {
                for (int x = 0; x < qr.modules(); x++) {
                  if (qr.dark(x, y)) {
                    path.append('M').append(x + QrCode.QUIET_ZONE).append(' ');
                    path.append(y + QrCode.QUIET_ZONE).append("h1v1h-1z");
                  }
                }
              }
              return new Code(qr.modules() + 2 * QrCode.QUIET_ZONE, path.toString(), address);
            });
  }

  /** Makes the page, sends it where that is set up, and goes to what came of it. */
  Answer press(Job job) throws IOException {
    String number = reports.keep(job.id(), press.of(job));
    return Answer.see(path(job) + "?" + PRESSED + "=" + number);
  }

  private static String path(Job job) {
    return "/job/" + job.id() + "/hand-over";
  }

  /** The card or another handout as a PDF, whose dates are noted as printed. */
  Answer print(Job job, String kind, Frame frame, Words words) throws IOException {
    Optional<Handout> as = Handout.of(kind);
    if (as.isEmpty()) {
      return Answer.refused(400);
    }
    if (!isMade(job)) {
      return Answer.see(path(job));
    }
    Path file = Files.createTempFile("curewindow-", ".pdf");
    try {
      CardFile.Result result =
          desk.note(
              shop ->
                  new CardFile(shop, clock, Tokens.secure())
                      .write(
                          List.of(job),
                          shop.shop().orElseThrow().handout().as(as.get()),
                          file,
                          CardFile.getReady()));
      if (result.printed() > 0) {
        return Answer.of("application/pdf", Files.readAllBytes(file))
            .with("Content-Disposition", "inline; filename=\"" + job.id() + "-" + kind + ".pdf\"");
      }
      List<PressReports.Step> steps =
          result.problems().stream().map(PressReports.Step::of).toList();
      return show(job, frame, steps, words);
    } finally {
      Files.deleteIfExists(file);
    }
  }

  /** The customer took the page along without paper. */
  Answer taken(Job job) throws IOException {
    if (!isMade(job)) {
      return Answer.see(path(job));
    }
    desk.note(
        shop -> {
          new CardFile(shop, clock, Tokens.secure()).taken(job);
          return job;
        });
    return Answer.see("/job/" + job.id() + "?done=handed-over");
  }
}
