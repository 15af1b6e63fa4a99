package curewindow.site;

import curewindow.calendar.CareCalendar;
import curewindow.page.HomeScreen;
import curewindow.page.Pages;
import curewindow.problem.Faults;
import curewindow.problem.Problems;
import curewindow.told.JobView;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The pages and calendars of a press: those that would come out as they stand are left alone, all
 * others are made and put into the output folder.
 */
final class PagesMade {

  private static final String CLOSED = "site/" + Pages.CLOSED;

  private final LoadedShop shop;
  private final Output output;
  private final Problems problems;
  private final MadeBefore memory;
  private final Inputs inputs;
  private final List<JobView> standing = new ArrayList<>();
  private final List<JobView> made = new ArrayList<>();

  /** What is to be remembered once it is written: by job, from what its files were made. */
  private final Map<String, Written> written = new TreeMap<>();

  private Calendars calendars;
  private boolean openIsWhole;

  /** As it was made now; it is not where it stands. */
  private Optional<String> closed = Optional.empty();

  private record Written(MadeBefore.From from, Set<String> files) {}

  private PagesMade(LoadedShop shop, Output output, Problems problems) throws IOException {
    Path out = output.root();
    this.shop = shop;
    this.output = output;
    this.problems = problems;
    this.memory = MadeBefore.read(out);
    this.inputs = Inputs.of(shop.files(), out);
  }

  /**
   * Makes what does not stand already.
   *
   * @param shop the shop folder
   * @param output where the files are put
   * @param views its good jobs
   * @param pressedBefore whether an earlier press made calendars
   * @param clock gives the time of a change
   * @param problems where it is told what cannot be made
   * @return the pages
   * @throws IOException where a folder cannot be read or written
   */
  static PagesMade of(
      LoadedShop shop,
      Output output,
      List<JobView> views,
      boolean pressedBefore,
      Clock clock,
      Problems problems)
      throws IOException {
    PagesMade pages = new PagesMade(shop, output, problems);
    List<List<JobView>> anew = pages.anew(views);
    boolean openStands = pages.stands(MadeBefore.PUBLIC, pages.inputs.open());
    // On disk before the calendars are, so that a date that moves is always seen to move.
    pages.calendars = Calendars.note(shop, anew, pages.standing, pressedBefore, clock, problems);
    Rendering rendered =
        Rendering.of(
            shop, pages.calendars.noted(), pages.calendars, !openStands, output.progress());
    problems.addAll(rendered.problems());
    rendered.customers().forEach(pages::put);
    pages.putOpen(rendered);
    pages.openIsWhole = openStands || rendered.openIsWhole();
    return pages;
  }

  /**
   * The jobs whose files have to be made, in all cases of parking. Those cases are worked out only
   * where they are needed: else what a job is made from decides them, too.
   */
  private List<List<JobView>> anew(List<JobView> views) throws IOException {
    Map<Boolean, List<JobView>> measured =
        views.stream().collect(Collectors.partitioningBy(v -> shop.dates().isMeasured(v.job())));
    List<List<JobView>> anew = new ArrayList<>();
    for (List<JobView> cases : ParkedViews.of(shop, measured.get(true), problems)) {
      if (!stands(cases.get(0))) {
        anew.add(cases);
      }
    }
    List<JobView> others = new ArrayList<>();
    for (JobView noted : measured.get(false)) {
      if (!stands(noted)) {
        others.add(noted);
      }
    }
    anew.addAll(ParkedViews.of(shop, others, problems));
    anew.sort(Comparator.comparing(cases -> cases.get(0).job().id()));
    return anew;
  }

  private boolean stands(JobView noted) throws IOException {
    String id = noted.job().id();
    boolean stands = stands(id, from(noted, shop.calendarsSaid(id)));
    if (stands) {
      standing.add(noted);
    }
    return stands;
  }

  private MadeBefore.From from(JobView noted, String calendarsSaid) {
    return from(shop, inputs, noted, calendarsSaid);
  }

  /** What a job's files are made from; where weather was measured, the job knows its parkings. */
  static MadeBefore.From from(LoadedShop shop, Inputs inputs, JobView noted, String calendarsSaid) {
    return inputs.of(
        noted,
        Pages.guides(noted, shop.guides()),
        shop.dates().isMeasured(noted.job()),
        calendarsSaid);
  }

  /**
   * Whether files stand as they would be made; if so they are left alone.
   *
   * @param job the job's id, or a name of {@link MadeBefore} for what belongs to none
   * @param from what they would be made from
   */
  private boolean stands(String job, MadeBefore.From from) throws IOException {
    boolean stands = memory.reason(job, from).isEmpty();
    if (stands) {
      memory.stand(job).forEach(output::leave);
    }
    return stands;
  }

  /** Whether the cards to look at stand as they would be made; if so they are left alone. */
  boolean cardsStand(String own) throws IOException {
    return stands(MadeBefore.CARDS, inputs.papers(own));
  }

  private void put(Rendering.Customer customer) {
    JobView view = customer.view();
    String folder = "site/" + PagePaths.folder(view.token());
    Faults.guard(
            view.job().where(),
            problems,
            () ->
                Map.of(
                    folder + "index.html", customer.html(),
                    folder + CareCalendar.MAIN, calendars.main(view),
                    folder + CareCalendar.ALL, calendars.all(view),
                    folder + HomeScreen.MANIFEST, HomeScreen.manifest(view)))
        .ifPresent(
            files -> {
              files.forEach(output::put);
              made.add(view);
              String id = view.job().id();
              MadeBefore.From from = from(view, calendars.said(id));
              written.put(id, new Written(from, files.keySet()));
            });
  }

  /** Puts the cards to look at, and remembers them once they are written. */
  void putCards(String own, String file, byte[] bytes) {
    output.put(file, bytes);
    written.put(MadeBefore.CARDS, new Written(inputs.papers(own), Set.of(file)));
  }

  /** The public pages, and what all pages share. */
  private void putOpen(Rendering rendered) {
    output.put("site/" + HomeScreen.WORKER, HomeScreen.worker(shop.files(), problems));
    rendered.shared().forEach(file -> output.put("site/" + file.name(), file.text()));
    shop.shop()
        .flatMap(own -> own.look().logo())
        .ifPresent(logo -> output.put("site/" + logo.name(), logo.bytes()));
    output.put("site/" + PagePaths.HEADERS, PagePaths.headers(shop.shop().orElseThrow().address()));
    for (String icon : List.of("icon.svg", "icon-180.png", "icon-512.png")) {
      shop.files()
          .bytes("site-templates/" + icon, problems)
          .ifPresent(bytes -> output.put("site/" + icon, bytes));
    }
    Map<String, String> open = new TreeMap<>(rendered.open());
    Optional.ofNullable(open.get(Pages.NOT_FOUND))
        .ifPresent(html -> open.put(PagePaths.NO_LIST, html));
    closed = Optional.ofNullable(open.get(Pages.CLOSED));
    Set<String> names = new TreeSet<>();
    open.forEach(
        (name, html) -> {
          output.put("site/" + name, html);
          names.add("site/" + name);
        });
    if (rendered.openIsWhole()) {
      written.put(MadeBefore.PUBLIC, new Written(inputs.open(), names));
    }
  }

  /** The jobs that have a page, by id. */
  List<JobView> jobs() {
    return Stream.concat(standing.stream(), made.stream())
        .sorted(Comparator.comparing(view -> view.job().id()))
        .toList();
  }

  /** The jobs whose pages were made now. */
  List<JobView> madeNow() {
    return List.copyOf(made);
  }

  /** Whether all public pages could be made, or stand. */
  boolean openIsWhole() {
    return openIsWhole;
  }

  /** The calendars. */
  Calendars calendars() {
    return calendars;
  }

  /** The page that stands where a customer's page was; empty where it could not be made. */
  Optional<byte[]> closed() throws IOException {
    Path standing = output.root().resolve(CLOSED);
    return closed.isPresent() || !openIsWhole
        ? closed.map(html -> html.getBytes(StandardCharsets.UTF_8))
        : Optional.of(Files.readAllBytes(standing));
  }

  /** Remembers what was made; to be called when all is written. */
  void remember() throws IOException {
    for (Map.Entry<String, Written> job : written.entrySet()) {
      memory.remember(job.getKey(), job.getValue().from(), job.getValue().files());
    }
    memory.save();
  }
}
