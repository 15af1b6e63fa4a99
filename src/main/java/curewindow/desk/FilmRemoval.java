package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.shop.FilmText;
import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.site.KeptFile;
import curewindow.site.Saved;
import curewindow.site.SharedFiles;
import curewindow.words.Words;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Taking a film off the shelf: asked once more, and only where no car has it. */
final class FilmRemoval {

  private static final String END = "/remove";
  private static final int NAMED = 5;

  /**
   * The screen.
   *
   * @param find where all cars are found that have it
   * @param action where the form is sent
   * @param back the film's own screen
   * @param version of the file that is changed
   * @param used how many cars have it, in a sentence; empty where none has
   * @param jobs some of them
   * @param more how many more there are, in words
   * @param problems what is in the way
   */
  record View(
      Frame frame,
      String find,
      String action,
      String back,
      String version,
      Optional<String> used,
      List<String> jobs,
      Optional<String> more,
      List<String> problems) {}

  private final DeskShop desk;
  private final DeskPages pages;

  FilmRemoval(DeskShop desk, DeskPages pages) {
    this.desk = desk;
    this.pages = pages;
  }

  /** Whether a path below that of all films leads here. */
  static boolean has(String path) {
    return path.endsWith(END);
  }

  /**
   * The answer; empty where there is no such film.
   *
   * @param path what stands behind the path of all films
   */
  Optional<Answer> answer(String path, Request request, Words words) throws IOException {
    String id = path.substring(0, path.length() - END.length());
    Optional<KeptFile> kept = KeptFile.of(desk.now().shop().files(), FilmText.FILE);
    Optional<String> name = kept.flatMap(k -> FilmText.read(k.text(), id)).map(film -> film.name());
    if (name.isEmpty()) {
      return Optional.empty();
    }
    Asked asked = new Asked(id, name.get(), kept.get().version());
    return Optional.of(
        request.isPost()
            ? remove(new Asked(id, name.get(), request.form().one("version")), words)
            : show(asked, List.of(), words, 200));
  }

  /** Which film, and as of which version of its file. */
  private record Asked(String id, String name, String version) {}

  private Answer remove(Asked asked, Words words) throws IOException {
    if (!jobs(asked.id()).isEmpty()) {
      return show(asked, List.of(), words, 422);
    }
    SharedFiles.Change change =
        new SharedFiles.Change(
            FilmText.FILE,
            asked.version(),
            path -> false,
            text -> FilmText.without(text, asked.id()));
    Saved<String> result = desk.write(shop -> SharedFiles.change(shop, change, desk.time()));
    if (result instanceof Saved.Written) {
      return Answer.see("/films?done=removed");
    }
    if (result instanceof Saved.Refused<String> refused) {
      // A car that got it meanwhile is named as a car, not as what is wrong with its file.
      boolean used = !jobs(asked.id()).isEmpty();
      return show(asked, used ? List.of() : refused.problems(), words, 422);
    }
    KeptFile now = ((Saved.Overtaken<String>) result).now();
    return show(
        new Asked(asked.id(), asked.name(), now.version()),
        List.of(FormFields.overtaken(now.file())),
        words,
        409);
  }

  private List<String> jobs(String film) {
    return desk.now().shop().jobs().stream()
        .filter(job -> job.items().stream().anyMatch(item -> item.film().equals(film)))
        .map(Job::id)
        .toList();
  }

  private Answer show(Asked asked, List<Problem> problems, Words words, int status) {
    List<String> jobs = jobs(asked.id());
    String shop = desk.now().shop().shop().map(Shop::name).orElseThrow();
    String title = words.text("desk.films.remove-title", Map.of("film", asked.name()));
    String back = "/film/" + asked.id();
    View view =
        new View(
            Frame.of(words, shop, title, back + END, Optional.empty()),
            "/find?q=" + URLEncoder.encode(asked.name(), StandardCharsets.UTF_8),
            back + END,
            back,
            asked.version(),
            told("desk.films.used", jobs.size(), words),
            jobs.stream().limit(NAMED).toList(),
            told("desk.films.used-more", jobs.size() - NAMED, words),
            new FormFields(problems, words).others());
    return Answer.html(status, pages.html("film-remove", view, words));
  }

  private static Optional<String> told(String key, int count, Words words) {
    return count > 0 ? Optional.of(words.text(key, Map.of("n", count))) : Optional.empty();
  }
}
