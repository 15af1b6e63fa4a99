package curewindow.page;

import curewindow.told.JobView;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One job in all cases of where its car may stand, the noted one first. What is the same in all of
 * them is said once on its page; what is not, once for each case in which it differs, marked with
 * the numbers of its cases. Only the noted case is shown until somebody chooses another.
 */
final class Cases {

  private final List<JobView> views;

  /** The same job in each case; without a choice of parkings there is one. */
  Cases(List<JobView> views) {
    this.views = List.copyOf(views);
  }

  /**
   * Something said in some of the cases.
   *
   * @param what it is
   * @param cases their numbers from 0, separated by spaces; empty where it is all of them
   * @param hidden whether the noted case is not among them
   */
  record Said<T>(T what, Optional<String> cases, boolean hidden) {}

  /** A text, as a template sees it. */
  record Text(String text, Optional<String> cases, boolean hidden) {}

  /** The job as the shop noted it. */
  JobView noted() {
    return views.get(0);
  }

  /** All cases, the noted one first. */
  List<JobView> views() {
    return views;
  }

  /** A text for each case in which it differs; nothing where it is empty. */
  List<Text> text(Function<JobView, String> text) {
    return each(v -> List.of(text.apply(v))).stream()
        .filter(said -> !said.what().isEmpty())
        .map(said -> new Text(said.what(), said.cases(), said.hidden()))
        .toList();
  }

  /**
   * Everything that is said in any of the cases, each once, in the order of the first that has it.
   */
  <T> List<Said<T>> each(Function<JobView, List<T>> things) {
    return each(views.stream().map(things).toList());
  }

  /** The same of things that are known, by case. */
  <T> List<Said<T>> each(List<List<T>> things) {
    Map<T, List<Integer>> cases = new LinkedHashMap<>();
    for (int i = 0; i < things.size(); i++) {
      for (T thing : things.get(i)) {
        cases.computeIfAbsent(thing, t -> new ArrayList<>()).add(i);
      }
    }
    return cases.entrySet().stream().map(e -> said(e.getKey(), e.getValue())).toList();
  }

  private <T> Said<T> said(T thing, List<Integer> cases) {
    return cases.size() == views.size()
        ? new Said<>(thing, Optional.empty(), false)
        : new Said<>(
            thing,
            Optional.of(cases.stream().map(String::valueOf).collect(Collectors.joining(" "))),
            !cases.contains(0));
  }

  /** Seconds since 1970 in each case, separated by commas; one number where they are all alike. */
  String seconds(Function<JobView, Instant> at) {
    return joined(v -> String.valueOf(at.apply(v).getEpochSecond()));
  }

  /** What there is in each case, separated by commas; once where they are all alike. */
  String joined(Function<JobView, String> what) {
    List<String> each = views.stream().map(what).toList();
    return each.stream().distinct().count() == 1 ? each.get(0) : String.join(",", each);
  }

  /** The number of a case, from 0. */
  IntStream numbers() {
    return IntStream.range(0, views.size());
  }
}
