package curewindow.told;

import curewindow.cure.Release;
import curewindow.shop.Hold;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The cautions that are printed with holds that danger ends at once. */
public final class Safety {

  /** A caution: what may be asked in front, such as whether one sees, and what to do. */
  private static final Pattern QUESTION = Pattern.compile("((?:[^?؟]*[?؟]\\s*)?)(.*)");

  private static final char NO_BREAK = '\u00A0';

  private Safety() {}

  /**
   * The caution of a hold.
   *
   * @param release one of the job's releases
   * @param view the job
   * @return a short sentence; empty where the catalogue marks nothing of the kind
   */
  public static Optional<String> of(Release release, JobView view) {
    return view.catalogue().is(release.hold(), Hold.Mark.SAFETY)
        ? Optional.of(view.words().text("hold." + release.hold() + ".safety"))
        : Optional.empty();
  }

  /**
   * The cautions of several holds on one paper.
   *
   * @param releases some of the job's releases
   * @param view the job
   * @return the sentences, the gravest first, each once, with a space between; several answers to
   *     the same question stand after it, and it is kept on one line; empty text for none
   */
  public static String of(List<Release> releases, JobView view) {
    Map<String, Set<String>> answers = new LinkedHashMap<>();
    releases.stream()
        .sorted(Comparator.comparingInt(r -> Urgency.rank(view, r)))
        .flatMap(r -> of(r, view).stream())
        .map(QUESTION::matcher)
        .filter(Matcher::matches)
        .forEach(
            m -> answers.computeIfAbsent(m.group(1), q -> new LinkedHashSet<>()).add(m.group(2)));
    return answers.entrySet().stream()
        .map(said -> onOneLine(said.getKey()) + String.join(" ", said.getValue()))
        .collect(Collectors.joining(" "));
  }

  private static String onOneLine(String question) {
    return question.isEmpty() ? "" : question.strip().replace(' ', NO_BREAK) + " ";
  }
}
