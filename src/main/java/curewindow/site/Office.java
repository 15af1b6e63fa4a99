package curewindow.site;

import curewindow.handout.OfficeCallers;
import curewindow.handout.OfficeDay;
import curewindow.handout.OfficeJobs;
import curewindow.handout.OfficePaper;
import curewindow.page.JobView;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Shop;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The papers of the office: what the counter has to know of a day. They are never published. */
public final class Office {

  /** The paper for a screen, relative to the output folder. */
  static final String HTML = "office/today.html";

  /** The paper to print, relative to the output folder. */
  static final String PDF = "office/today.pdf";

  private final LoadedShop shop;
  private final OfficeJobs jobs;

  private Office(LoadedShop shop, List<JobView> views) {
    this.shop = shop;
    Shop own = shop.shop().orElseThrow();
    this.jobs = new OfficeJobs(own, shop.words().of(own.language()), shop.guides(), views);
  }

  /**
   * The office of a shop.
   *
   * @param shop a shop folder whose shop.yaml and ledgers are right
   * @return the office
   */
  public static Office of(LoadedShop shop) {
    // No paper of the office shows an address, so it does not need the jobs' real tokens.
    return new Office(shop, shop.jobs().parallelStream().map(j -> shop.view(j, "0")).toList());
  }

  /** The office with jobs whose views are there already. */
  static Office of(LoadedShop shop, List<JobView> views) {
    return new Office(shop, views);
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
   * @return the callers, in the shop's language
   */
  public OfficeCallers callers(LocalDate day, OfficeCallers.Most most) {
    return OfficeCallers.of(jobs, day, most);
  }

  /**
   * Writes the paper of a day; a file that stands there is replaced only by a whole one.
   *
   * @param day the day by the shop's clock
   * @param file where to: a PDF where its name ends in .pdf, else HTML
   * @return what is wrong with the template, and signs that cannot be printed; nothing is written
   *     where one of them is an error
   * @throws IOException where the file cannot be written; the message is for the user
   */
  public List<Problem> write(LocalDate day, Path file) throws IOException {
    Problems problems = new Problems();
    Map<String, byte[]> made = papers(day, problems);
    Optional<byte[]> bytes =
        Optional.ofNullable(made.get(file.toString().endsWith(".pdf") ? PDF : HTML));
    if (bytes.isPresent() && !problems.hasErrors()) {
      AtomicFiles.write(file, bytes.get());
    }
    return problems.all();
  }

  /** The papers of a day by their names, without those whose template has a mistake. */
  Map<String, byte[]> papers(LocalDate day, Problems problems) {
    Optional<OfficePaper> paper = OfficePaper.read(shop.files(), problems);
    if (paper.isEmpty()) {
      return Map.of();
    }
    OfficeDay gathered = OfficeDay.of(jobs, day, calls(day));
    Optional<byte[]> html =
        paper
            .get()
            .html(jobs, gathered, problems)
            .map(text -> text.getBytes(StandardCharsets.UTF_8));
    Optional<byte[]> pdf = html.isEmpty() ? html : paper.get().pdf(jobs, gathered, problems);
    return Stream.of(Map.entry(HTML, html), Map.entry(PDF, pdf))
        .filter(e -> e.getValue().isPresent())
        .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().orElseThrow()));
  }

  /** As of the first instant of the day, so that the same day gives the same paper. */
  private List<OfficeDay.Call> calls(LocalDate day) {
    return DueCalls.of(shop, jobs.views(), jobs.start(day)).tooEarly().stream()
        .map(this::call)
        .toList();
  }

  private OfficeDay.Call call(DueCalls.Call call) {
    String who =
        Stream.of(call.job(), call.firstName().strip())
            .filter(t -> !t.isEmpty())
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
