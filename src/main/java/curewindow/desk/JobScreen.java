package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.shop.Catalogue;
import curewindow.shop.Job;
import curewindow.shop.JobCheck;
import curewindow.shop.JobDraft;
import curewindow.shop.JobDraft.ItemDraft;
import curewindow.shop.JobText;
import curewindow.site.JobFiles;
import curewindow.site.KeptFile;
import curewindow.site.LoadedShop;
import curewindow.site.Saved;
import curewindow.words.Words;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** A new car, or a change of one: a form with the customer's dates beside it. */
final class JobScreen {

  /**
   * The screen.
   *
   * @param action where the form is sent
   * @param version of the file that is changed; empty for a new car
   * @param began the key of the form of a new car
   * @param usual what the shop fits most often
   * @param memory what the form carries along beside what is typed
   * @param items what was fitted
   * @param rest the other fields
   * @param dates the customer's dates; empty until there is enough for them
   * @param begun whether a film is chosen, so that something else is in the way of the dates
   * @param problems what no field shows
   * @param isNew whether it is a new car
   */
  record View(
      Frame frame,
      String action,
      String version,
      String began,
      List<Usual> usual,
      FormMemory memory,
      List<JobFields.Item> items,
      JobFields.Rest rest,
      Optional<DatesBeside.Dates> dates,
      boolean begun,
      List<String> problems,
      boolean isNew) {}

  /** Usual work: the job in which it was done last, its films, and where they went. */
  record Usual(String job, String films, String spots) {}

  private final DeskShop desk;
  private final DeskPages pages;

  /** What the forms that are open began with. */
  private final BegunForms<JobDraft> begun = new BegunForms<>(JobText::read);

  private final NewCars newCars;

  JobScreen(DeskShop desk, DeskPages pages) {
    this.desk = desk;
    this.pages = pages;
    this.newCars = new NewCars(desk);
  }

  /** A form for a new car, empty or with the work of another. */
  Answer fresh(Request request, Words words) {
    FirstDraft first = new FirstDraft(desk.now().shop(), desk.time());
    JobDraft draft = desk.job(request.query().one("as")).map(first::like).orElseGet(first::fresh);
    return show(fresh(newCars.begin(draft.id()), draft, FormMemory.fresh(draft), false), words);
  }

  /** What is asked of the screen: which form, and what is in it. */
  private record Asked(
      String action,
      String version,
      String began,
      JobDraft draft,
      FormMemory memory,
      boolean strict) {}

  private static Asked fresh(String began, JobDraft draft, FormMemory memory, boolean strict) {
    return new Asked("/new", "", began, draft, memory, strict);
  }

  /** A form that was sent: something of it changed, or it is to be saved. */
  Answer sent(Request request, Words words) throws IOException {
    Request.Values form = request.form();
    LoadedShop shop = desk.now().shop();
    FormMemory memory = FormMemory.of(form, shop.read().catalogue());
    FirstDraft first = new FirstDraft(shop, desk.time());
    JobDraft typed = JobForm.draft(form, shop.read().catalogue());
    JobDraft draft = memory.at(typed, first.now(), first.soon());
    String wanted = form.one("do");
    String began = form.one("began");
    if (wanted.equals("save")) {
      return add(began, draft, memory, words);
    }
    JobDraft other = changed(draft, wanted, shop);
    return show(fresh(began, other, memory.after(wanted, other), false), words);
  }

  private Answer add(String began, JobDraft draft, FormMemory memory, Words words)
      throws IOException {
    Saved<Job> result = newCars.save(began, draft);
    if (result instanceof Saved.Written<Job> written) {
      String id = written.what().id();
      String done = id.equals(draft.id()) ? "saved" : "moved&from=" + draft.id();
      return Answer.see("/job/" + id + "/hand-over?done=" + done);
    }
    Asked asked = fresh(began, draft, memory, true);
    return refused(asked, ((Saved.Refused<Job>) result).problems(), words, 422);
  }

  /** The form of a job that is there. */
  Answer change(Job job, Words words) {
    Optional<KeptFile> kept = JobFiles.of(desk.now().shop(), job);
    Optional<JobDraft> draft = kept.flatMap(begun::begin);
    return draft
        .map(d -> show(asked(job.id(), kept.get().version(), d, FormMemory.NONE), words))
        .orElseGet(() -> Answer.see("/job/" + job.id() + "?done=by-hand"));
  }

  private static Asked asked(String job, String version, JobDraft draft, FormMemory memory) {
    return new Asked("/job/" + job + "/change", version, "", draft, memory, true);
  }

  /** The form of a job whose file is gone or cannot be read: what was typed stays on the screen. */
  Answer lost(String job, Request request, Problem why, Words words) {
    Catalogue catalogue = desk.now().shop().read().catalogue();
    JobDraft typed = JobForm.draft(request.form(), catalogue).withId(job);
    FormMemory memory = FormMemory.of(request.form(), catalogue);
    Asked asked = asked(job, request.form().one("version"), typed, memory);
    return refused(asked, List.of(why), words, 409);
  }

  /** The form of a job that is there, sent. */
  Answer changed(Job job, Request request, Words words) throws IOException {
    Request.Values form = request.form();
    LoadedShop shop = desk.now().shop();
    String version = form.one("version");
    Optional<JobDraft> base = begun.of(version);
    JobDraft typed = JobForm.draft(form, shop.read().catalogue()).withId(job.id());
    JobDraft draft = base.map(b -> JobForm.ordered(typed, b)).orElse(typed);
    FormMemory memory = FormMemory.of(form, shop.read().catalogue());
    String wanted = form.one("do");
    if (!wanted.equals("save")) {
      JobDraft other = changed(draft, wanted, shop);
      return show(asked(job.id(), version, other, memory.after(wanted, other)), words);
    }
    Saved<Job> result = JobFiles.change(shop, job, version, draft);
    if (result instanceof Saved.Written<Job> written) {
      desk.look();
      return Answer.see("/job/" + written.what().id() + "/hand-over?done=saved");
    }
    if (result instanceof Saved.Refused<Job> refused) {
      return refused(asked(job.id(), version, draft, memory), refused.problems(), words, 422);
    }
    KeptFile now = ((Saved.Overtaken<Job>) result).now();
    Optional<JobDraft> theirs = begun.begin(now);
    Optional<JobMerge.Merged> both =
        base.flatMap(b -> theirs.map(t -> JobMerge.of(b, draft, JobForm.ordered(t, b))));
    if (both.filter(m -> m.clashes().isEmpty()).isPresent()) {
      Saved<Job> merged = JobFiles.change(shop, job, now.version(), both.get().draft());
      if (merged instanceof Saved.Written) {
        desk.look();
        return Answer.see("/job/" + job.id() + "/hand-over?done=merged");
      }
    }
    List<Problem> told =
        both.map(m -> clashes(m.clashes(), theirs.get(), now.file(), words))
            .orElseGet(() -> List.of(FormFields.overtaken(now.file())));
    JobDraft shown = both.map(JobMerge.Merged::draft).orElse(draft);
    return refused(asked(job.id(), now.version(), shown, memory), told, words, 409);
  }

  /** What the other one put stands beside one's own. */
  private List<Problem> clashes(List<String> names, JobDraft theirs, String file, Words words) {
    ShownWords shown =
        new ShownWords(new JobFields(desk.now().shop(), theirs, FormMemory.NONE, List.of(), words));
    return names.stream().map(name -> FormFields.overtaken(file, name, shown.of(name))).toList();
  }

  /** A form in which a button changed something that no field has. */
  private JobDraft changed(JobDraft draft, String wanted, LoadedShop shop) {
    String[] parts = wanted.split(":", 2);
    FirstDraft first = new FirstDraft(shop, desk.time());
    return switch (parts[0]) {
      case "add" -> items(draft, all -> all.add(first.item()));
      case "drop" -> items(draft, all -> drop(all, JobForm.dropped(wanted)));
      case "usual" ->
          desk.job(parts.length > 1 ? parts[1] : "")
              .map(job -> draft.withItems(first.again(job)))
              .orElse(draft);
      default -> draft;
    };
  }

  /** Nothing where it is gone already, as after two clicks. */
  private static void drop(List<ItemDraft> items, int number) {
    if (number > 0 && number <= items.size()) {
      items.remove(number - 1);
    }
  }

  private static JobDraft items(JobDraft draft, Consumer<List<ItemDraft>> how) {
    List<ItemDraft> items = new ArrayList<>(draft.items());
    how.accept(items);
    return draft.withItems(items);
  }

  private Answer show(Asked asked, Words words) {
    JobCheck.Tried tried = tried(asked);
    List<Problem> told =
        tried.problems().stream().filter(p -> asked.strict() || !isGap(p)).toList();
    return show(asked, tried.job(), told, words, 200);
  }

  private Answer refused(Asked asked, List<Problem> problems, Words words, int status) {
    return show(asked, tried(asked).job(), problems, words, status);
  }

  /** A job that is there is tried as its file would be, with what the form does not have. */
  private JobCheck.Tried tried(Asked asked) {
    LoadedShop shop = desk.now().shop();
    Optional<KeptFile> kept =
        asked.version().isEmpty()
            ? Optional.empty()
            : shop.job(asked.draft().id()).flatMap(job -> JobFiles.of(shop, job));
    String text =
        kept.flatMap(k -> JobText.changed(k.text(), asked.draft()))
            .orElseGet(() -> JobText.of(asked.draft()));
    return shop.tried("jobs/new.yaml", text);
  }

  /** What is still to be filled in is no mistake while somebody types. */
  private static boolean isGap(Problem problem) {
    return problem.isMissing() || List.of("no-spots", "no-items").contains(problem.code());
  }

  private Answer show(
      Asked asked, Optional<Job> job, List<Problem> problems, Words words, int status) {
    LoadedShop shop = desk.now().shop();
    JobFields fields = new JobFields(shop, asked.draft(), asked.memory(), problems, words);
    boolean isNew = asked.version().isEmpty();
    String title = isNew ? words.text("desk.new.title") : changing(asked.draft().id(), words);
    View view =
        new View(
            Frame.of(
                words, shop.shop().orElseThrow().name(), title, asked.action(), Optional.empty()),
            asked.action(),
            asked.version(),
            asked.began(),
            usual(shop, words),
            asked.memory(),
            fields.items(),
            fields.rest(),
            job.map(j -> DatesBeside.of(shop, j, words)),
            asked.draft().items().stream().anyMatch(item -> !item.film().isEmpty()),
            fields.others(),
            isNew);
    return Answer.html(status, pages.html("job", view, words));
  }

  /** As its owner has it on the disk, whatever is being typed. */
  private String changing(String id, Words words) {
    String who = desk.job(id).map(job -> CarScreen.who(desk.now().view(job).in(words))).orElse(id);
    return words.text("desk.change.title", Map.of("who", who));
  }

  private List<Usual> usual(LoadedShop shop, Words words) {
    return UsualWork.of(shop, desk.time()).stream()
        .map(
            job ->
                new Usual(
                    job.id(),
                    String.join(" + ", UsualWork.films(job, shop)),
                    job.items().stream()
                        .flatMap(item -> item.spots().stream())
                        .distinct()
                        .map(spot -> words.text("spot." + spot))
                        .collect(Collectors.joining(", "))))
        .toList();
  }
}
