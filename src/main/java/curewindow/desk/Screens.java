package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.site.LoadedShop;
import curewindow.site.SiteFiles;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which screen answers which address, and what stands there where none does. */
final class Screens implements DeskServer.Screens {

  private static final String JOB = "/job/";
  private static final Pattern JOB_PATH =
      Pattern.compile(JOB + "([A-Za-z0-9._-]{1,40})(/[a-z-]*)?");

  /** Searches that find little, until the machine has learned to look through all cars fast. */
  private static final List<String> FIRST_SEARCHES =
      List.of("q-0", "q-0 zz", "zz 0-0", "h35-0", "zz zz", "0-0", "q-00", "z-0 z", "00-00", "zzz");

  private final Path out;
  private final DeskShop desk;
  private final DeskPages pages = new DeskPages();
  private final PagePress press;
  private final TodayScreen today;
  private final JobScreen jobs;
  private final HandOverScreen handOver;
  private final CarScreen cars;
  private final FindScreen find;
  private final ShopScreen ownShop;
  private final FilmScreen films;
  private final RuleScreen rules;
  private final CallsScreen calls;
  private final ImportScreen imports;
  private final EnterScreen enter;

  Screens(DeskShop desk, Desk.Setting setting) {
    this.out = setting.out();
    this.desk = desk;
    this.today = new TodayScreen(desk, pages);
    this.jobs = new JobScreen(desk, pages);
    this.press = new PagePress(desk, out, setting.clock());
    this.handOver = new HandOverScreen(desk, pages, press, setting.clock());
    this.cars = new CarScreen(desk, pages, out);
    this.find = new FindScreen(desk, pages);
    this.ownShop = new ShopScreen(desk, pages, press);
    this.films = new FilmScreen(desk, pages);
    this.rules = new RuleScreen(desk, pages);
    this.calls = new CallsScreen(desk, pages);
    this.enter = new EnterScreen(pages);
    this.imports = new ImportScreen(desk, pages, setting.shop(), setting.clock());
  }

  /** Looks through all cars a few times, so that the first search takes no longer than others. */
  void warmSearch() {
    FIRST_SEARCHES.forEach(query -> desk.now().finder().find(query, 0, 1));
    warm("/find", new Request.Values(Map.of("q", FIRST_SEARCHES.subList(0, 1))));
  }

  void close() {
    press.close();
  }

  /** What the first screen needs is made ready while somebody opens the browser. */
  void warmUp() {
    warm("/", Request.Values.NONE);
  }

  private void warm(String path, Request.Values query) {
    answer(new Request(false, path, query, Request.Values.NONE, Map.of()));
  }

  /** A screen without more on it than a sentence. */
  record Message(Frame frame, List<String> lines) {}

  @Override
  public Answer answer(Request request) {
    String wanted = request.form().one(Request.SPEAK);
    if (!Frame.LANGUAGES.contains(wanted)) {
      return inItsLanguage(request);
    }
    Answer answer =
        request.path().equals("/language")
            ? Answer.see(back(request))
            : inItsLanguage(request.in(wanted));
    return answer.with("Set-Cookie", languageCookie(wanted));
  }

  private static String back(Request request) {
    String back = request.form().one("back");
    return Request.isOwn(back) ? back : "/";
  }

  private Answer inItsLanguage(Request request) {
    Words words = words(request);
    try {
      return of(request, words);
    } catch (IOException e) {
      return message(request, words, 500, ProblemWords.told(e, words));
    } catch (RuntimeException e) {
      return message(request, words, 500, List.of(words.text("desk.message.fault"), fault(e)));
    }
  }

  /** Enough of a fault of the program for those who mend it. */
  private static String fault(RuntimeException e) {
    String at =
        Arrays.stream(e.getStackTrace())
            .filter(f -> f.getClassName().startsWith("curewindow."))
            .findFirst()
            .map(f -> " at " + f.getFileName() + ":" + f.getLineNumber())
            .orElse("");
    return e.getClass().getSimpleName() + at;
  }

  @Override
  public Answer enter(Request request, Gate gate) {
    Words words = words(request);
    if (request.path().equals("/desk.css")) {
      return css();
    }
    // Its own way to the other language, as no other address answers yet.
    String to = request.query().one("to");
    boolean other = request.path().equals(EnterScreen.PATH) && Frame.LANGUAGES.contains(to);
    Words spoken = other ? desk.now().shop().words().of(to) : words;
    Frame frame = frame(request, spoken, spoken.text("desk.enter.title"));
    Answer answer = enter.answer(request, gate, frame, spoken);
    return other ? answer.with("Set-Cookie", languageCookie(to)) : answer;
  }

  private Answer of(Request request, Words words) throws IOException {
    String path = request.path();
    if (path.equals("/desk.css")) {
      return css();
    }
    if (path.equals("/desk.js")) {
      return Answer.of(
          "text/javascript; charset=utf-8", pages.script().getBytes(StandardCharsets.UTF_8));
    }
    Optional<Answer> shop = ownShop.answer(request, words);
    if (shop.isPresent()) {
      return shop.get();
    }
    glance(path);
    if (!desk.now().isUsable()) {
      return broken(request, words);
    }
    if (RuleScreen.has(path)) {
      return rules.answer(request, words).orElseGet(() -> notHere(request, words));
    }
    if (FilmScreen.has(path)) {
      return films.answer(request, words).orElseGet(() -> notHere(request, words));
    }
    if (path.startsWith(Request.SITE) && !request.isPost()) {
      return file(path.substring(Request.SITE.length()));
    }
    if (path.startsWith(JOB)) {
      return job(request, words);
    }
    return switch (path) {
      case "/" -> today.show(frame(request, words, words.text("desk.today.title")), words);
      case "/new" -> request.isPost() ? jobs.sent(request, words) : jobs.fresh(request, words);
      case "/find" ->
          find.show(request, frame(request, words, words.text("desk.find.title")), words);
      case "/calls" ->
          calls.show(request, frame(request, words, words.text("desk.calls.title")), words);
      case "/import" ->
          imports.show(request, frame(request, words, words.text("desk.import.title")), words);
      case EnterScreen.PATH -> in(request, words);
      default -> notHere(request, words);
    };
  }

  /** Files that somebody has just written by hand are looked for where cars are. */
  private void glance(String path) {
    Matcher job = JOB_PATH.matcher(path);
    if (job.matches()) {
      desk.glance(job.group(1));
    } else if (path.equals("/") || path.equals("/find")) {
      desk.glance("");
    }
  }

  /** Who typed the passcode in a window of its own has the form still open in the other. */
  private Answer in(Request request, Words words) {
    Frame frame = frame(request, words, words.text("desk.enter.in"));
    Message view = new Message(frame, List.of(words.text("desk.enter.in-do")));
    return Answer.html(200, pages.html("message", view, words));
  }

  private Answer job(Request request, Words words) throws IOException {
    String[] parts = request.path().substring(JOB.length()).split("/", 2);
    Optional<Job> found = desk.job(parts[0]);
    String what = parts.length > 1 ? parts[1] : "";
    if (found.isEmpty()) {
      return lost(parts[0], what, request, words);
    }
    Job job = found.get();
    return request.isPost() ? done(job, what, request, words) : shown(job, what, request, words);
  }

  /** A car whose file is gone or cannot be read; a form that is open keeps its text. */
  private Answer lost(String id, String what, Request request, Words words) {
    Optional<LostCars.Lost> lost = LostCars.of(desk.now().shop(), id, words);
    if (lost.isEmpty()) {
      return notHere(request, words);
    }
    return request.isPost() && what.equals("change")
        ? jobs.lost(id, request, lost.get().problem(), words)
        : message(request, words, request.isPost() ? 409 : 404, lost.get().lines());
  }

  private Answer shown(Job job, String what, Request request, Words words) {
    Frame frame = frame(request, words, CarScreen.who(desk.now().view(job).in(words)));
    return switch (what) {
      case "" -> cars.show(job, frame, request.site(), words);
      case "change" -> jobs.change(job, words);
      case "hand-over" -> handOver.show(job, request, frame, words);
      case "press", "print" -> Answer.see(JOB + job.id() + "/hand-over");
      default -> notHere(request, words);
    };
  }

  private Answer done(Job job, String what, Request request, Words words) throws IOException {
    Frame frame = frame(request, words, CarScreen.who(desk.now().view(job).in(words)));
    return switch (what) {
      case "change" -> jobs.changed(job, request, words);
      case "press" -> handOver.press(job);
      case "print" -> handOver.print(job, request.form().one("as"), frame, words);
      case "taken" -> handOver.taken(job);
      case "called" -> cars.called(job, request.form());
      case "told" -> today.told(job, request.form());
      case "seen" -> cars.seen(job, request, frame, words);
      case "undo" -> cars.undo(job, request.form());
      default -> notHere(request, words);
    };
  }

  private Answer css() {
    return Answer.of("text/css; charset=utf-8", pages.style().getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public Answer site(String path) {
    try {
      return file(path);
    } catch (IOException e) {
      return Answer.refused(500);
    }
  }

  /** A page of the customers' site; its script may run, and knows nothing of the desk. */
  private Answer file(String path) throws IOException {
    Optional<Path> file = SiteFiles.find(out.resolve("site").toAbsolutePath().normalize(), path);
    return file.isEmpty()
        ? Answer.refused(404)
        : Answer.of(SiteFiles.type(file.get()), Files.readAllBytes(file.get()))
            .with("Content-Security-Policy", "sandbox allow-scripts allow-popups");
  }

  private Answer notHere(Request request, Words words) {
    return message(request, words, 404, List.of(words.text("desk.message.not-here")));
  }

  private Answer broken(Request request, Words words) {
    List<String> lines =
        desk.now().shop().problems().stream()
            .filter(Problem::isError)
            .limit(20)
            .map(new ProblemWords(words)::toldOf)
            .toList();
    return message(request, words, 503, lines);
  }

  private Answer message(Request request, Words words, int status, List<String> lines) {
    Message view = new Message(frame(request, words, words.text("desk.message.title")), lines);
    return Answer.html(status, pages.html("message", view, words));
  }

  private Frame frame(Request request, Words words, String title) {
    String shop = desk.now().shop().shop().map(Shop::name).orElse("Curewindow");
    return Frame.of(words, shop, title, request.path(), told(request, words))
        .undoing(undo(request))
        .at(request.here());
  }

  /** What was just done. */
  private static Optional<String> told(Request request, Words words) {
    String done = request.query().one("done");
    String from = request.query().one("from");
    if (done.equals("moved") && JOB_PATH.matcher(JOB + from).matches()) {
      Matcher at = JOB_PATH.matcher(request.path());
      return at.matches()
          ? Optional.of(words.text("desk.done.moved", Map.of("id", at.group(1), "from", from)))
          : Optional.empty();
    }
    return Set.of(
                "saved",
                "handed-over",
                "told",
                "seen",
                "noted",
                "by-hand",
                "undone",
                "not-undone",
                "merged",
                "moved-again")
            .contains(done)
        ? Optional.of(words.text("desk.done." + done))
        : Optional.empty();
  }

  /** What was just noted can be taken back. */
  private Optional<Frame.Undo> undo(Request request) {
    Optional<Job> job = desk.job(request.query().one("job"));
    return Noted.of(request.query().one("undo"))
        .flatMap(what -> job.map(j -> new Frame.Undo(j.id(), what.id())));
  }

  /** The desk's language: the one that was chosen, or the shop's where the desk speaks it. */
  private Words words(Request request) {
    LoadedShop shop = desk.now().shop();
    String chosen = request.cookies().getOrDefault("language", "");
    String own = shop.shop().map(Shop::language).orElse("en");
    String language =
        Frame.LANGUAGES.contains(chosen) ? chosen : Frame.LANGUAGES.contains(own) ? own : "en";
    return shop.words().of(language);
  }

  private static String languageCookie(String language) {
    return "language=" + language + "; Path=/; SameSite=Strict; Max-Age=31536000";
  }
}
