package curewindow.site;

import curewindow.climate.Climates;
import curewindow.climate.Place;
import curewindow.climate.Places;
import curewindow.cure.CureCase;
import curewindow.cure.Curing;
import curewindow.cure.Timeline;
import curewindow.shop.CureCases;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopRead;
import curewindow.told.JobView;
import curewindow.told.Printed;
import curewindow.told.Seen;
import curewindow.told.Visit;
import curewindow.told.YearHere;
import curewindow.words.WordsLibrary;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;

/** The dates of the jobs of a shop folder, in words and with what their cards say. */
final class JobDates {

  /**
   * Dates as they would be had nothing been measured. All shops of a process share it: the weather
   * of a place is a matter of the place alone, and takes long to work out.
   */
  private static final Curing UNMEASURED = Curing.with(Climates::weathers);

  private final Path root;
  private final ShopRead read;
  private final WordsLibrary words;
  private final Ledgers ledgers;
  private final KeptDates kept;
  private final Curing curing;

  private JobDates(
      Path root,
      ShopRead read,
      WordsLibrary words,
      Ledgers ledgers,
      KeptDates kept,
      Curing curing) {
    this.root = root;
    this.read = read;
    this.words = words;
    this.ledgers = ledgers;
    this.kept = kept;
    this.curing = curing;
  }

  static JobDates of(ShopFiles files, ShopRead read, WordsLibrary words, Ledgers ledgers) {
    KeptDates kept = new KeptDates(files.root());
    Curing curing = UNMEASURED.measured(read.observed()).knowing(kept);
    return new JobDates(files.root(), read, words, ledgers, kept, curing);
  }

  /** The dates of other jobs, or with other ledgers; the weather stays as it was read. */
  JobDates again(ShopRead others, Ledgers now) {
    return new JobDates(root, others, words, now, kept, curing);
  }

  /** What a job's dates are computed from. */
  CureCase cureCase(Job job) {
    Shop shop = read.shop().orElseThrow();
    CureCase all = CureCases.of(job, shop, read.catalogue(), place(job));
    return Seen.running(job, shop, read.catalogue(), all);
  }

  /** A job with its dates and words, and with what its cards say. */
  JobView view(Job job, String token) {
    return withCards(view(job, token, job.language()));
  }

  /** A job with its dates in English, for the shop itself; it shows no address. */
  JobView english(Job job) {
    return view(job, "0", WordsLibrary.FALLBACK);
  }

  private JobView view(Job job, String token, String language) {
    Shop shop = read.shop().orElseThrow();
    Timeline timeline = curing.timeline(cureCase(job));
    return new JobView(
        job,
        shop,
        read.catalogue(),
        place(job),
        timeline,
        Visit.of(job, read.catalogue().visits(), timeline, shop, isFar(job, shop)),
        words.of(language),
        address(token),
        token);
  }

  /** The public address of a page. */
  URI address(String token) {
    return read.shop().orElseThrow().address().resolve(PagePaths.folder(token));
  }

  /** A job with what the cards say that were handed over; they are for the noted parking. */
  JobView withCards(JobView view) {
    return withCards(view, ledgers.printedFor(view.job().id()));
  }

  /** A job with what some of its cards say. */
  JobView withCards(JobView view, Printed cards) {
    return isMeasured(view.job())
        ? DelayedDates.mark(view, cards, () -> UNMEASURED.timeline(cureCase(view.job())))
        : view.withPrinted(cards);
  }

  /** Whether weather was measured where the car of a job stands, so that its dates still move. */
  boolean isMeasured(Job job) {
    return read.observed().containsKey(job.place());
  }

  /** What the customer of a job knows by now: by its cards, and by phone. */
  Printed known(JobView view) {
    return ledgers
        .printed()
        .flatMap(p -> ledgers.calls().map(c -> c.over(view.job().id(), view.printed(), p)))
        .orElse(view.printed());
  }

  /** Whether the car lives too far from the shop to come for a look. */
  private boolean isFar(Job job, Shop shop) {
    Place home = place(job);
    Place ours = read.places().get(shop.place());
    return Places.distanceKm(home.latitude(), home.longitude(), ours.latitude(), ours.longitude())
        > shop.visitWithin();
  }

  /** How long holds last at the shop's own place; nothing that was measured counts. */
  YearHere year() {
    Shop shop = read.shop().orElseThrow();
    return YearHere.of(shop, read.catalogue(), read.places().get(shop.place()), UNMEASURED);
  }

  private Place place(Job job) {
    return read.places().get(job.place());
  }

  Curing curing() {
    return curing;
  }

  /** The model without measured weather. */
  Curing unmeasured() {
    return UNMEASURED;
  }

  /** Keeps the dates that were asked for, so that they are soon told another time. */
  void keep() throws IOException {
    try (FolderLock lock = FolderLock.on(root)) {
      kept.save(lock);
    }
  }
}
