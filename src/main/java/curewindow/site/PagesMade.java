package curewindow.site;

import curewindow.calendar.CareCalendar;
import curewindow.page.HomeScreen;
import curewindow.page.Pages;
import curewindow.page.SharedFile;
import curewindow.problem.Faults;
import curewindow.problem.Problems;
import curewindow.shop.Job;
import curewindow.told.JobView;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The pages and calendars of a press: those that would come out as they stand are left alone, all
 * others are made. Customers' pages are made and written some at a time, as all of them together
 * need more memory than a shop's computer has.
 */
final class PagesMade {

  private static final String CLOSED = "site/" + Pages.CLOSED;

  private final LoadedShop shop;
  private final Output output;
  private final Function<Job, String> tokens;
  private final Calendars.Notes notes;
  private final Problems problems;
  private final MadeBefore memory;
  private final Inputs inputs;
  private final Press.Extent extent;
  private final Batch batch;
  private final FirstAnswer answers;
  private final Inspections inspections;
  private final List<Job> standing = new ArrayList<>();
  private final List<PressReport.Made> made = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();

  /** Ids of the jobs whose files have to be made, but not now. */
  private final Set<String> later = new HashSet<>();

  /** What is to be remembered once all is written: by job, from what its files were made. */
  private final Map<String, Written> written = new TreeMap<>();

  private boolean openIsWhole;

  /** As it was made now; it is not where it stands. */
  private Optional<String> closed = Optional.empty();

  private record Written(MadeBefore.From from, Map<String, Long> files) {}

  /**
   * How much is done together.
   *
   * @param jobs how many jobs are looked at; after each time the memory of calendars is written
   * @param pages how many pages are in memory
   */
  record Batch(int jobs, int pages) {
    static final Batch USUAL = new Batch(1000, 200);
  }

  /**
   * Begins with what stands.
   *
   * @param shop the shop folder
   * @param output where the files are put
   * @param tokens the secret part of each job's address
   * @param notes where dates that calendars give out are noted
   * @param extent which pages are made now
   * @param batch how many of them together
   * @param problems where it is told what cannot be made
   * @throws IOException where a folder cannot be read
   */
  PagesMade(
      LoadedShop shop,
      Output output,
      Function<Job, String> tokens,
      Calendars.Notes notes,
      Press.Extent extent,
      Batch batch,
      Problems problems)
      throws IOException {
    this.shop = shop;
    this.output = output;
    this.tokens = tokens;
    this.notes = notes;
    this.extent = extent;
    this.batch = batch;
    this.problems = problems;
    this.memory = MadeBefore.read(output.root());
    this.inputs = new Inputs(shop, output.root());
    this.answers = new FirstAnswer(shop);
    this.inspections = new Inspections(shop);
  }

  /**
   * Makes what does not stand already.
   *
   * @param jobs the good jobs
   * @throws IOException where a folder cannot be read or written
   * @throws UncheckedIOException where one of many files cannot be
   */
  void make(List<Job> jobs) throws IOException {
    List<Job> anew = now(anew(jobs));
    boolean openStands = stands(MadeBefore.PUBLIC, inputs.open()) || waits(MadeBefore.PUBLIC);
    Rendering rendering = Rendering.of(shop, problems);
    customers(anew, rendering);
    open(rendering, openStands);
    inspections();
  }

  /** The jobs whose files have to be made. Dates are only worked out where they moved. */
  private List<Job> anew(List<Job> jobs) {
    List<Job> anew = new ArrayList<>();
    for (List<Job> some : inParts(jobs, batch.jobs())) {
      Map<String, JobView> measured = measured(some);
      List<Optional<Boolean>> stand =
          Faults.guardEach(
              some, Job::where, problems, (job, found) -> stands(job, measured.get(job.id())));
      for (int i = 0; i < some.size(); i++) {
        Job job = some.get(i);
        if (stand.get(i).orElse(false)) {
          leave(job);
        } else {
          anew.add(job);
        }
      }
    }
    return anew;
  }

  private void leave(Job job) {
    memory.stand(job.id()).forEach(output::leave);
    standing.add(job);
    ids.add(job.id());
  }

  /** Of the jobs whose files have to be made, those whose turn it is; what others have stays. */
  private List<Job> now(List<Job> anew) {
    List<Job> others =
        anew.stream()
            .filter(job -> !extent.first().contains(job.id()))
            .sorted(Comparator.comparing(Job::pickup).reversed())
            .skip(extent.others())
            .toList();
    for (Job job : others) {
      later.add(job.id());
      if (memory.has(job.id())) {
        leave(job);
      }
    }
    return anew.stream().filter(job -> !later.contains(job.id())).toList();
  }

  /** Whether something that hangs on all jobs stays as it is, as some of them are made later. */
  private boolean waits(String what) {
    boolean waits = !later.isEmpty() && memory.has(what);
    if (waits) {
      memory.stand(what).forEach(output::leave);
    }
    return waits;
  }

  /** Where weather was measured it takes the view, which is not there where it has a fault. */
  private boolean stands(Job job, JobView measured) {
    if (measured == null && shop.dates().isMeasured(job)) {
      return false;
    }
    MadeBefore.From from =
        measured == null ? inputs.unmeasured(job, tokens.apply(job)) : inputs.of(measured);
    return memory.reason(job.id(), from.and(shop.calendarsSaid(job.id()))).isEmpty();
  }

  /** Those of some jobs where weather was measured, each with its parkings, by id. */
  private Map<String, JobView> measured(List<Job> some) {
    List<Job> moving = some.stream().filter(shop.dates()::isMeasured).toList();
    // A fault is told when the job is made.
    return cases(moving, new Problems()).stream()
        .collect(Collectors.toMap(c -> c.get(0).job().id(), c -> c.get(0)));
  }

  private List<List<JobView>> cases(List<Job> some, Problems found) {
    return ParkedViews.of(shop, JobViews.of(shop, some, tokens, found), found);
  }

  private static <T> List<List<T>> inParts(List<T> all, int most) {
    List<List<T>> parts = new ArrayList<>();
    for (int i = 0; i < all.size(); i += most) {
      parts.add(all.subList(i, Math.min(i + most, all.size())));
    }
    return parts;
  }

  /**
   * Whether files stand as they would be made; if so they are left alone.
   *
   * @param job the job's id, or a name of {@link MadeBefore} for what belongs to none
   * @param from what they would be made from
   */
  private boolean stands(String job, MadeBefore.From from) {
    boolean stands = memory.reason(job, from).isEmpty();
    if (stands) {
      memory.stand(job).forEach(output::leave);
    }
    return stands;
  }

  private void customers(List<Job> anew, Rendering rendering) throws IOException {
    List<String> names = new ArrayList<>();
    anew.forEach(job -> names.addAll(files(tokens.apply(job))));
    rendering.shared().forEach(file -> names.add("site/" + file.name()));
    output.announce(names);
    for (SharedFile file : rendering.shared()) {
      output.writeNow("site/" + file.name(), file.text());
    }
    AtomicInteger pages = new AtomicInteger();
    Runnable told = () -> output.progress().made(pages.incrementAndGet(), anew.size());
    int looked = 0;
    for (List<Job> some : inParts(anew, batch.jobs())) {
      Calendars calendars = Calendars.note(notes, cases(some, problems), problems);
      for (List<List<JobView>> few : inParts(calendars.noted(), batch.pages())) {
        write(rendering.customers(few, calendars, told), calendars);
      }
      inspections.add(calendars);
      // Jobs with a mistake have no page.
      looked += some.size();
      pages.set(looked);
      output.progress().made(looked, anew.size());
    }
  }

  private static List<String> files(String token) {
    String folder = "site/" + PagePaths.folder(token);
    return Stream.of("index.html", CareCalendar.MAIN, CareCalendar.ALL, HomeScreen.MANIFEST)
        .map(folder::concat)
        .toList();
  }

  /** A job whose files are written. */
  private record Done(PressReport.Made row, Written written) {}

  private void write(List<Rendering.Customer> customers, Calendars calendars) {
    Faults.guardEach(
            customers,
            customer -> customer.view().job().where(),
            problems,
            (customer, faults) -> write(customer.view(), customer.html(), calendars))
        .stream()
        .flatMap(Optional::stream)
        .forEach(
            done -> {
              made.add(done.row());
              ids.add(done.row().job());
              written.put(done.row().job(), done.written());
            });
  }

  private Done write(JobView view, String html, Calendars calendars) {
    List<String> names = files(view.token());
    List<String> texts =
        List.of(html, calendars.main(view), calendars.all(view), HomeScreen.manifest(view));
    PressReport.Made row = answers.of(view, names.get(0));
    Map<String, Long> sizes = new TreeMap<>();
    for (int i = 0; i < texts.size(); i++) {
      sizes.put(names.get(i), writeNow(names.get(i), texts.get(i)));
    }
    MadeBefore.From from = inputs.of(view).and(calendars.said(view.job().id()));
    return new Done(row, new Written(from, sizes));
  }

  private long writeNow(String name, String text) {
    try {
      return output.writeNow(name, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The public pages. */
  private void open(Rendering rendering, boolean stands) {
    if (stands) {
      openIsWhole = true;
      return;
    }
    Rendering.Open open = rendering.open();
    openIsWhole = open.whole();
    Map<String, String> pages = new TreeMap<>(open.pages());
    Optional.ofNullable(pages.get(Pages.NOT_FOUND))
        .ifPresent(html -> pages.put(PagePaths.NO_LIST, html));
    closed = Optional.ofNullable(pages.get(Pages.CLOSED));
    Map<String, Long> sizes = new TreeMap<>();
    pages.forEach((name, html) -> sizes.put("site/" + name, put("site/" + name, html)));
    if (openIsWhole) {
      written.put(MadeBefore.PUBLIC, new Written(inputs.open(), sizes));
    }
  }

  private long put(String name, String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    output.put(name, bytes);
    return bytes.length;
  }

  /** The office's calendar; what stands in it for jobs whose pages stand is taken from there. */
  private void inspections() throws IOException {
    MadeBefore.From from = inputs.papers("");
    Path before = output.root().resolve(Inspections.FILE);
    boolean waits = !later.isEmpty() && Files.isRegularFile(before);
    if (waits || memory.reason(MadeBefore.INSPECTIONS, from).isEmpty()) {
      inspections.keep(standing, tokens, Files.readString(before));
    } else {
      for (List<Job> some : inParts(standing, batch.jobs())) {
        List<JobView> views = JobViews.of(shop, some, tokens, problems);
        inspections.add(Calendars.noteOffice(notes, views, problems));
      }
    }
    long bytes = put(Inspections.FILE, inspections.text());
    if (!waits) {
      written.put(MadeBefore.INSPECTIONS, new Written(from, Map.of(Inspections.FILE, bytes)));
    }
  }

  /** Whether the cards to look at stand as they would be made; if so they are left alone. */
  boolean cardsStand(List<JobView> views) {
    return stands(MadeBefore.CARDS, cardsFrom(views)) || waits(MadeBefore.CARDS);
  }

  /** Puts the cards to look at, and remembers them once they are written. */
  void putCards(List<JobView> views, String file, byte[] bytes) {
    output.put(file, bytes);
    written.put(MadeBefore.CARDS, new Written(cardsFrom(views), Map.of(file, (long) bytes.length)));
  }

  private MadeBefore.From cardsFrom(List<JobView> views) {
    return inputs.papers(views.stream().map(inputs::own).collect(Collectors.joining("\n")));
  }

  /** Ids of the jobs that have a page. */
  Set<String> jobs() {
    return Set.copyOf(ids);
  }

  /** Ids of the jobs whose pages a later press has to make; what they have stays as it is. */
  Set<String> later() {
    return Set.copyOf(later);
  }

  /** The jobs whose pages were made now. */
  List<PressReport.Made> madeNow() {
    return List.copyOf(made);
  }

  /** Whether all public pages could be made, or stand. */
  boolean openIsWhole() {
    return openIsWhole;
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
    written.forEach((job, from) -> memory.remember(job, from.from(), from.files()));
    memory.save();
  }
}
