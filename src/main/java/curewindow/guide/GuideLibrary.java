package curewindow.guide;

import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.Catalogue;
import curewindow.shop.Service;
import curewindow.shop.ShopFiles;
import curewindow.words.WordsLibrary;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** All guides of a shop, in all its languages. Safe for use by several threads at once. */
public final class GuideLibrary {

  private static final String FOLDER = "content/guides/";
  private static final String ENDING = ".md";
  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private final Map<String, Map<String, Guide>> byLanguage;

  private GuideLibrary(Map<String, Map<String, Guide>> byLanguage) {
    this.byLanguage = byLanguage;
  }

  /**
   * Reads all guides, the files {@code content/guides/LANGUAGE/ID.md}. In place of a guide with
   * errors the one of the same name that comes with the program is used, where there is one. A
   * guide that one language has and another lacks is a notice.
   *
   * @param files the shop folder
   * @param words says the program's own guides as the shop's locale has them
   * @param catalogue the services, spots, holds and materials that guides may name
   * @param languages the shop's languages, such as {@code en}
   * @param problems where problems are reported
   * @return the guides that can be used
   */
  public static GuideLibrary read(
      ShopFiles files,
      WordsLibrary words,
      Catalogue catalogue,
      List<String> languages,
      Problems problems) {
    GuideReader reader = new GuideReader(new KnownNames(catalogue));
    Map<String, TreeSet<String>> present = new LinkedHashMap<>();
    List<String> all = new ArrayList<>();
    for (String language : languages) {
      present.put(language, new TreeSet<>());
      for (String file : files.list(FOLDER + language, ENDING)) {
        if (goodName(file, id(file), problems)) {
          present.get(language).add(id(file));
          all.add(file);
        }
      }
    }
    Map<String, Map<String, Guide>> read = new LinkedHashMap<>();
    languages.forEach(language -> read.put(language, new TreeMap<>()));
    Faults.guardEach(
            all, Where::file, problems, (file, found) -> read(files, words, reader, file, found))
        .forEach(
            guide ->
                guide
                    .flatMap(Function.identity())
                    .ifPresent(one -> read.get(one.language()).put(one.id(), one)));
    Map<String, Map<String, Guide>> byLanguage = new LinkedHashMap<>();
    read.forEach((language, guides) -> byLanguage.put(language, ordered(guides, catalogue)));
    reportMissing(present, problems);
    reportQuestions(byLanguage, problems);
    return new GuideLibrary(byLanguage);
  }

  /**
   * Whether a file is a guide.
   *
   * @param file the file, relative to the shop folder
   * @return true where it is one by its name
   */
  public static boolean isGuide(String file) {
    return file.startsWith(FOLDER) && file.endsWith(ENDING);
  }

  /**
   * The file of a guide.
   *
   * @param language the language, such as {@code en}
   * @param id the guide's id
   * @return the file, relative to the shop folder
   */
  public static String file(String language, String id) {
    return FOLDER + language + "/" + id + ENDING;
  }

  private static String id(String file) {
    return file.substring(file.lastIndexOf('/') + 1, file.length() - ENDING.length());
  }

  /** A guide of the shop's that has errors is replaced by the program's own until it is mended. */
  private static Optional<Guide> read(
      ShopFiles files, WordsLibrary words, GuideReader reader, String file, Problems problems) {
    String id = id(file);
    String language = file.substring(FOLDER.length(), file.lastIndexOf('/'));
    Supplier<String> own = () -> files.original(file).orElse("");
    Optional<Guide> guide =
        files
            .text(file, problems)
            .map(text -> words.guide(language, text, own))
            .flatMap(text -> reader.read(id, language, new GuideSource(file, text, problems)));
    if (guide.isPresent()) {
      return guide;
    }
    return files
        .original(file)
        .map(text -> words.guide(language, text, () -> text))
        .flatMap(text -> reader.read(id, language, new GuideSource(file, text, new Problems())));
  }

  /** Those of services in the order of the catalogue, then the general ones by their titles. */
  private static Map<String, Guide> ordered(Map<String, Guide> guides, Catalogue catalogue) {
    Map<String, Guide> ordered = new LinkedHashMap<>();
    for (Service service : catalogue.services().values()) {
      Guide guide = guides.get(service.guide());
      if (guide != null) {
        ordered.put(guide.id(), guide);
      }
    }
    guides.values().stream()
        .sorted(Comparator.comparing(Guide::title).thenComparing(Guide::id))
        .forEach(guide -> ordered.putIfAbsent(guide.id(), guide));
    return Collections.unmodifiableMap(ordered);
  }

  private static boolean goodName(String file, String id, Problems problems) {
    boolean good = ID.matcher(id).matches();
    if (!good) {
      problems.add(
          Problem.error(
              "guide-name",
              Where.file(file),
              "the name of a guide's file has lower-case letters a to z, digits and hyphens only",
              "rename the file, for example to first-wash.md"));
    }
    return good;
  }

  private static void reportMissing(Map<String, TreeSet<String>> present, Problems problems) {
    present.forEach(
        (from, ids) ->
            present.forEach(
                (language, there) ->
                    ids.stream()
                        .filter(id -> !there.contains(id))
                        .forEach(id -> problems.add(missing(id, language, from)))));
  }

  private static void reportQuestions(
      Map<String, Map<String, Guide>> byLanguage, Problems problems) {
    for (Map<String, Guide> from : byLanguage.values()) {
      for (Guide guide : from.values()) {
        byLanguage.values().stream()
            .flatMap(there -> Optional.ofNullable(there.get(guide.id())).stream())
            .forEach(other -> reportQuestions(guide, other, problems));
      }
    }
  }

  private static void reportQuestions(Guide from, Guide other, Problems problems) {
    for (String id : from.questionIds()) {
      if (!other.questionIds().contains(id)) {
        String file = FOLDER + other.language() + "/" + other.id() + ENDING;
        problems.add(
            Problem.notice(
                "missing-question",
                Where.file(file),
                "the question \"" + id + "\" is there in " + from.language() + " but not here",
                "translate it from " + FOLDER + from.language() + "/" + from.id() + ENDING));
      }
    }
  }

  private static Problem missing(String id, String language, String from) {
    return Problem.notice(
        "missing-translation",
        Where.file(FOLDER + language + "/" + id + ENDING),
        "the guide \"" + id + "\" is there in " + from + " but not in " + language,
        "translate " + FOLDER + from + "/" + id + ENDING);
  }

  /**
   * The guides of a language.
   *
   * @param language such as {@code en}
   * @return their ids: those of services in the order of the catalogue, then the general ones by
   *     title; empty for a language without guides
   */
  public List<String> ids(String language) {
    return List.copyOf(byLanguage.getOrDefault(language, Map.of()).keySet());
  }

  /**
   * A guide.
   *
   * @param language such as {@code en}
   * @param id its id
   * @return the guide, or empty where there is none or it has errors
   */
  public Optional<Guide> find(String language, String id) {
    return Optional.ofNullable(byLanguage.getOrDefault(language, Map.of()).get(id));
  }

  /** A guide in all languages that have it. */
  Stream<Guide> all(String id) {
    return byLanguage.values().stream()
        .flatMap(there -> Optional.ofNullable(there.get(id)).stream());
  }
}
