package curewindow.site;

import curewindow.guide.GuideLibrary;
import curewindow.guide.GuideQuestion;
import curewindow.guide.Questions;
import curewindow.page.QuestionPlaces;
import curewindow.problem.Faults;
import curewindow.problem.Problems;
import curewindow.shop.Job;
import curewindow.tally.Share;
import curewindow.told.JobView;
import curewindow.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The pages of those who called: where their questions stand, and what the answers wait for. */
final class CalledPages {

  /** A page takes some milliseconds at the start of a program, and so many tell enough. */
  private static final int MOST = 100;

  /** A page: where its questions stand, and the holds of those that were asked. */
  private record Page(QuestionPlaces places, Map<String, List<String>> holds) {}

  private final LoadedShop shop;
  private final GuideLibrary guides;
  private final Words words;
  private final List<CountedCalls.Call> calls;
  private final Map<String, Set<String>> asked = new TreeMap<>();
  private final Map<String, Page> pages = new HashMap<>();
  private final Map<String, String> texts = new TreeMap<>();

  /**
   * Makes what is needed of the pages of those who called.
   *
   * @param shop the shop folder
   * @param all the calls that count
   * @param words of the language in which questions, services and holds are named
   * @param problems where faults are told; the calls of a job with one have no place
   */
  CalledPages(LoadedShop shop, List<CountedCalls.Call> all, Words words, Problems problems) {
    this.shop = shop;
    this.guides = shop.guides();
    this.words = words;
    this.calls =
        all.stream()
            .filter(c -> !c.note().question().equals(CallNote.OTHER))
            .sorted(
                Comparator.comparing(
                    (CountedCalls.Call c) -> c.note().at(), Comparator.reverseOrder()))
            .limit(MOST)
            .toList();
    calls.forEach(
        c -> asked.computeIfAbsent(c.note().job(), j -> new HashSet<>()).add(c.note().question()));
    List<Job> jobs = asked.keySet().stream().flatMap(id -> shop.job(id).stream()).toList();
    // Nothing shows an address, so the jobs' real tokens are not needed.
    List<JobView> views = JobViews.of(shop, jobs, "0", problems);
    make(views, problems);
    name(views, problems);
  }

  private void make(List<JobView> views, Problems problems) {
    List<Problems> faults = views.stream().map(v -> new Problems()).toList();
    List<Optional<Page>> made =
        IntStream.range(0, views.size())
            .parallel()
            .mapToObj(
                i ->
                    Faults.guard(
                        views.get(i).job().where(), faults.get(i), () -> page(views.get(i))))
            .toList();
    faults.forEach(f -> problems.addAll(f.all()));
    for (int i = 0; i < views.size(); i++) {
      String job = views.get(i).job().id();
      made.get(i).ifPresent(page -> pages.put(job, page));
    }
  }

  private Page page(JobView view) {
    Set<String> of = asked.get(view.job().id());
    Map<String, List<String>> holds = new HashMap<>();
    for (GuideQuestion question : Questions.answered(view, guides, of::contains)) {
      holds.put(question.id(), question.holds());
    }
    return new Page(QuestionPlaces.of(view, guides), holds);
  }

  /** Each question in words, from the first car that has it. */
  private void name(List<JobView> views, Problems problems) {
    for (JobView view : views) {
      Set<String> unnamed = new HashSet<>(asked.get(view.job().id()));
      unnamed.removeAll(texts.keySet());
      if (!unnamed.isEmpty()) {
        Faults.guard(view.job().where(), problems, () -> headings(view, unnamed))
            .ifPresent(texts::putAll);
      }
    }
  }

  private Map<String, String> headings(JobView view, Set<String> some) {
    return Questions.answered(view.in(words), guides, some::contains).stream()
        .collect(Collectors.toMap(GuideQuestion::id, GuideQuestion::heading));
  }

  /** A question in words; its id where no car that was asked about has it. */
  String text(String question) {
    return question.equals(CallNote.OTHER)
        ? "none of the questions in the guides"
        : texts.getOrDefault(question, question);
  }

  /** A service in words. */
  String service(String id) {
    return words.text("service." + id);
  }

  /** What was found on the pages. */
  CallReport.Pages found() {
    List<CountedCalls.Call> seen =
        calls.stream().filter(c -> pages.containsKey(c.note().job())).toList();
    return new CallReport.Pages(seen.size(), holds(seen), places(seen));
  }

  private List<CallReport.Held> holds(List<CountedCalls.Call> seen) {
    return CountedCalls.by(seen, c -> Set.copyOf(holds(c))).entrySet().stream()
        .map(
            e ->
                new CallReport.Held(
                    e.getKey(),
                    words.text("hold." + e.getKey() + ".label"),
                    new Share(e.getValue(), seen.size())))
        .sorted(
            Comparator.comparing((CallReport.Held h) -> -h.share().part())
                .thenComparing(CallReport.Held::id))
        .toList();
  }

  private List<String> holds(CountedCalls.Call call) {
    Page page = pages.get(call.note().job());
    return page.holds().getOrDefault(call.note().question(), List.of());
  }

  private List<CallReport.Placed> places(List<CountedCalls.Call> seen) {
    Map<String, List<QuestionPlaces>> by = new TreeMap<>();
    for (CountedCalls.Call call : seen) {
      by.computeIfAbsent(call.note().question(), q -> new ArrayList<>())
          .add(pages.get(call.note().job()).places());
    }
    return by.entrySet().stream()
        .map(e -> placed(e.getKey(), e.getValue()))
        .sorted(
            Comparator.comparingInt(CallReport.Placed::low)
                .reversed()
                .thenComparing(CallReport.Placed::id))
        .toList();
  }

  private CallReport.Placed placed(String question, List<QuestionPlaces> on) {
    int[] places = on.stream().flatMapToInt(p -> p.of(question).stream()).sorted().toArray();
    int glance = (int) on.stream().filter(p -> p.isAtAGlance(question)).count();
    return new CallReport.Placed(
        question,
        text(question),
        glance,
        places.length - glance,
        on.size() - places.length,
        places.length == 0 ? OptionalInt.empty() : OptionalInt.of(places[(places.length - 1) / 2]));
  }
}
