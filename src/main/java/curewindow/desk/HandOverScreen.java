package curewindow.desk;

import curewindow.handout.CodeLevel;
import curewindow.handout.HandoutPress;
import curewindow.handout.QrCode;
import curewindow.problem.Problem;
import curewindow.send.Login;
import curewindow.send.NotLive;
import curewindow.send.Send;
import curewindow.send.SendTrouble;
import curewindow.shop.Handout;
import curewindow.shop.HandoutChoice;
import curewindow.shop.Job;
import curewindow.shop.SendTo;
import curewindow.shop.Shop;
import curewindow.site.CardFile;
import curewindow.site.LoadedShop;
import curewindow.site.Output;
import curewindow.site.Press;
import curewindow.site.PressReport;
import curewindow.site.Tokens;
import curewindow.told.Contact;
import curewindow.told.JobView;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Handing a car over: its page is made and sent, its code shown, its card printed. */
final class HandOverScreen {

  /**
   * The screen.
   *
   * @param code the code of the page's address; empty until the page is made
   * @param steps what was done and what came of it
   * @param prints what can be printed
   * @param text a message for the customer, in their language
   * @param sms the same as a link that opens the phone's messages
   * @param given whether the customer has a card or took the page along
   */
  record View(
      Frame frame,
      String job,
      String who,
      Optional<Code> code,
      List<Step> steps,
      List<FormFields.Choice> prints,
      DatesBeside.Dates dates,
      String text,
      String sms,
      boolean given) {}

  /** A code as SVG, and the address that it says. */
  record Code(int side, String path, String address) {}

  /** Something that was done. */
  record Step(boolean good, String text) {}

  private final DeskShop desk;
  private final DeskPages pages;
  private final Path out;
  private final Clock clock;

  HandOverScreen(DeskShop desk, DeskPages pages, Path out, Clock clock) {
    this.desk = desk;
    this.pages = pages;
    this.out = out;
    this.clock = clock;
  }

  Answer show(Job job, Frame frame, Words words) {
    return show(job, frame, List.of(), words);
  }

  private Answer show(Job job, Frame frame, List<Step> steps, Words words) {
    LoadedShop shop = desk.now().shop();
    JobView view = desk.now().view(job);
    Optional<Code> code =
        Optional.of(view.address().toString())
            .filter(a -> isMade(job))
            .flatMap(HandOverScreen::code);
    String text = message(view);
    return Answer.html(
        200,
        pages.html(
            "hand-over",
            new View(
                frame,
                job.id(),
                CarScreen.who(view),
                code,
                steps,
                prints(view, words),
                DatesBeside.of(shop, job, words, desk.time()),
                text,
                Contact.sms("", text),
                CardFile.isHandedOver(shop, job)),
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

  private boolean isMade(Job job) {
    return desk.now().shop().madePage(out, job.id()).isPresent();
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

  /** Makes the page, sends it where that is set up, and asks whether it answers. */
  Answer press(Job job, Frame frame, Words words) throws IOException {
    List<Step> steps = new ArrayList<>();
    PressReport report = press();
    desk.readAgain();
    List<Problem> wrong =
        report.problems().stream().filter(Problem::isError).filter(p -> concerns(p, job)).toList();
    boolean made = isMade(job) && !report.leftOut().contains(job.id());
    steps.add(new Step(made, words.text(made ? "desk.hand-over.made" : "desk.hand-over.not-made")));
    wrong.forEach(p -> steps.add(new Step(false, p.oneLine())));
    if (made) {
      steps.addAll(sent(job, words));
    }
    Job now = desk.job(job.id()).orElse(job);
    return show(now, frame, steps, words);
  }

  private static boolean concerns(Problem problem, Job job) {
    return problem.file().equals(job.where().file()) || !problem.file().startsWith("jobs");
  }

  /** A press takes seconds, in which others at the desk go on working. */
  private PressReport press() throws IOException {
    try (Output output = Output.open(out)) {
      LoadedShop shop = LoadedShop.load(desk.folder(), clock);
      return Press.run(shop, output, clock, Tokens.secure(), new Press.Allowed(false, Set.of()));
    }
  }

  private List<Step> sent(Job job, Words words) throws IOException {
    Shop own = desk.now().shop().shop().orElseThrow();
    List<Step> steps = new ArrayList<>();
    if (own.send().isEmpty()) {
      steps.add(new Step(false, words.text("desk.hand-over.not-sent", Map.of("folder", site()))));
    } else {
      steps.addAll(send(own.send().get(), words));
    }
    steps.add(
        Send.wrongAtAddress(out, job.id())
            .map(wrong -> new Step(false, silent(wrong, words)))
            .orElseGet(() -> new Step(true, words.text("desk.hand-over.answers"))));
    return steps;
  }

  private static String silent(NotLive wrong, Words words) {
    String why = words.text("desk.silent." + wrong.how().id(), Map.of("detail", wrong.detail()));
    return words.text("desk.hand-over.silent", Map.of("why", why));
  }

  /** Which other pages do not answer, the command tells; here it is about one car. */
  private List<Step> send(SendTo to, Words words) {
    try {
      Send.Report report =
          new Send(to, out, line -> {}).run(Login.ofEnvironment(), new Send.Allowed(false, false));
      return report.done().isEmpty()
          ? report.wrong().stream().map(w -> new Step(false, w)).toList()
          : List.of(new Step(true, words.text("desk.hand-over.sent")));
    } catch (SendTrouble e) {
      return List.of(new Step(false, words.text("desk.send." + e.kind().id(), e.parts())));
    } catch (IOException e) {
      return List.of(new Step(false, String.valueOf(e.getMessage())));
    }
  }

  private String site() {
    return out.resolve("site").toString();
  }

  /** The card or another handout as a PDF, whose dates are noted as printed. */
  Answer print(Job job, String kind, Frame frame, Words words) throws IOException {
    Optional<Handout> as = Handout.of(kind);
    if (as.isEmpty()) {
      return Answer.refused(400);
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
      List<Step> steps = result.problems().stream().map(p -> new Step(false, p.oneLine())).toList();
      return show(job, frame, steps, words);
    } finally {
      Files.deleteIfExists(file);
    }
  }

  /** The customer took the page along without paper. */
  Answer taken(Job job) throws IOException {
    if (!isMade(job)) {
      return Answer.see("/job/" + job.id() + "/hand-over");
    }
    desk.note(
        shop -> {
          new CardFile(shop, clock, Tokens.secure()).taken(job);
          return job;
        });
    return Answer.see("/job/" + job.id() + "?done=handed-over");
  }
}
