package curewindow.site;

import curewindow.handout.OfficeCallers;
import curewindow.handout.OfficeDay;
import curewindow.handout.OfficeJobs;
import curewindow.handout.OfficePaper;
import curewindow.handout.OfficeVisits;
import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Catalogue;
import curewindow.shop.Job;
import curewindow.shop.RuleFor;
import curewindow.shop.VisitRule;
import curewindow.told.JobView;
import curewindow.words.Isolates;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The papers of the office: what the counter has to know of a day. They are never published. */
public final class Office {

  /** The paper for a screen, relative to the output folder. */
  static final String HTML = "office/today.html";

  /** The paper to print, relative to the output folder. */
  static final String PDF = "office/today.pdf";

  /** How many days a shop may be closed on end. */
  private static final int CLOSED = 60;

  private final LoadedShop shop;
  private final OfficeJobs jobs;

  /** The jobs that are known to have nothing to do with a day. */
  private final Set<String> others;

  private Office(LoadedShop shop, List<JobView> views, Words words, Set<String> others) {
    this.shop = shop;
    this.others = others;
    this.jobs = new OfficeJobs(shop.shop().orElseThrow(), words, shop.guides(), views);
  }

  /**
   * The office of a shop.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param problems where faults are told; a job with one is not on any paper
   * @return the office
   */
  public static Office of(LoadedShop shop, Problems problems) {
    // No paper of the office shows an address, so it does not need the jobs' real tokens.
    return of(shop, JobViews.of(shop, shop.jobs(), "0", problems), Set.of());
  }

  /** The office with views of all jobs that the paper of a day may name, and with the others. */
  static Office of(LoadedShop shop, List<JobView> views, Set<String> others) {
    return new Office(shop, views, shop.words().of(shop.shop().orElseThrow().language()), others);
  }

  /**
   * Which jobs the paper of a day may name: nothing ends, and no visit is missed, longer after the
   * pickup than the catalogue has it.
   */
  static Predicate<Job> concerned(LoadedShop shop, LocalDate day) {
    Catalogue catalogue = shop.read().catalogue();
    int longest = 0;
    for (RuleFor rule : catalogue.rules()) {
      longest = Math.max(longest, (int) Math.ceil(rule.rule().limitHours() / 24));
    }
    for (VisitRule visit : catalogue.visits()) {
      longest = Math.max(longest, visit.latest());
    }
    Instant first =
        day.minusDays(longest + OfficeVisits.OLDEST + CLOSED)
            .atStartOfDay(shop.shop().orElseThrow().zone())
            .toInstant();
    return job -> !job.pickup().isBefore(first);
  }

  /**
   * The office for who looks at a screen.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @param views those of its jobs that are looked at
   * @param words of the language to tell it in
   * @return the office
   */
  public static Office of(LoadedShop shop, List<JobView> views, Words words) {
    return new Office(shop, views, words, Set.of());
  }

  /**
   * What the counter has to know of a day.
   *
   * @param day the day by the shop's clock
   * @param problems where faults are told; a job with one is left out
   * @return the day
   */
  public OfficeDay gathered(LocalDate day, Problems problems) {
    return spare(problems, (some, found) -> gathered(some, day, found));
  }

  private OfficeDay gathered(OfficeJobs some, LocalDate day, Problems problems) {
    return OfficeDay.of(some, day, calls(some, day, problems), shop.brokenJobs());
  }

  /**
   * The day of an instant by the shop's clock.
   *
   * @param at the instant
   * @return the day
   */
  public LocalDate day(Instant at) {
    return jobs.day(at);
  }

  /**
   * Who may call on a day, and what they will ask.
   *
   * @param day the day by the shop's clock
   * @param most how many are told
   * @param problems where faults are told; a job with one is not among the callers
   * @return the callers, in the shop's language
   */
  public OfficeCallers callers(LocalDate day, OfficeCallers.Most most, Problems problems) {
    return spare(problems, (some, found) -> OfficeCallers.of(some, day, most));
  }

  private <R> R spare(Problems problems, BiFunction<OfficeJobs, Problems, R> work) {
    return Faults.spare(
        jobs.views(),
        view -> view.job().where(),
        problems,
        (views, found) -> work.apply(jobs.with(views), found));
  }

  /**
   * Writes the paper of a day; a file that stands there is replaced only by a whole one.
   *
   * @param day the day by the shop's clock
   * @param file where to: a PDF where its name ends in .pdf, else HTML
   * @param problems where faults are told, what is wrong with the template, and signs that cannot
   *     be printed; nothing is written where something is wrong with the template
   * @return true where it was written
   * @throws IOException where the file cannot be written; the message is for the user
   */
  public boolean write(LocalDate day, Path file, Problems problems) throws IOException {
    Problems found = new Problems();
    Map<String, byte[]> made = papers(day, found);
    problems.addAll(found.all());
    Optional<byte[]> bytes =
        Optional.ofNullable(made.get(file.toString().endsWith(".pdf") ? PDF : HTML));
    boolean whole = bytes.isPresent() && found.all().stream().allMatch(Office::stopsNoPaper);
    if (whole) {
      AtomicFiles.writePrivate(file, bytes.get());
    }
    return whole;
  }

  private static boolean stopsNoPaper(Problem problem) {
    return !problem.isError() || Faults.isFault(problem);
  }

  /** The papers of a day by their names, without those whose template has a mistake. */
  Map<String, byte[]> papers(LocalDate day, Problems problems) {
    Optional<OfficePaper> paper = OfficePaper.read(shop.files(), problems);
    if (paper.isEmpty()) {
      return Map.of();
    }
    return spare(problems, (some, found) -> papers(paper.get(), some, day, found));
  }

  private Map<String, byte[]> papers(
      OfficePaper paper, OfficeJobs some, LocalDate day, Problems problems) {
    Set<String> told =
        some.views().stream().map(v -> v.job().id()).collect(Collectors.toCollection(HashSet::new));
    told.addAll(others);
    OfficeDay gathered = OfficeDay.of(some, day, calls(some, day, problems), shop.leftOut(told));
    Optional<byte[]> html =
        paper.html(some, gathered, problems).map(text -> text.getBytes(StandardCharsets.UTF_8));
    Optional<byte[]> pdf = html.isEmpty() ? html : paper.pdf(some, gathered, problems);
    return Stream.of(Map.entry(HTML, html), Map.entry(PDF, pdf))
        .filter(e -> e.getValue().isPresent())
        .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().orElseThrow()));
  }

  /** As of the first instant of the day, so that the same day gives the same paper. */
  private List<OfficeDay.Call> calls(OfficeJobs some, LocalDate day, Problems problems) {
    return DueCalls.of(shop, some.views(), some.start(day), problems).tooEarly().stream()
        .map(this::call)
        .toList();
  }

  private OfficeDay.Call call(DueCalls.Call call) {
    String who =
        Stream.of(call.job(), call.firstName().strip())
            .filter(t -> !t.isEmpty())
            .map(t -> Isolates.own(t, jobs.words()))
            .collect(Collectors.joining(" · "));
    return new OfficeDay.Call(
        who,
        text(call.byCard() ? "card" : "since", Map.of("when", call.told(), "label", call.about())),
        text("wait", Map.of("when", call.now())));
  }

  private String text(String key, Map<String, String> values) {
    return jobs.words().text("office.calls." + key, values);
  }
}
