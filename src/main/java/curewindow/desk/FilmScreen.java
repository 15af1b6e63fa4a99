package curewindow.desk;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.FilmDraft;
import curewindow.shop.FilmText;
import curewindow.shop.Service;
import curewindow.shop.Shop;
import curewindow.shop.ShopFolder;
import curewindow.site.KeptFile;
import curewindow.site.LoadedShop;
import curewindow.site.Saved;
import curewindow.site.SharedFiles;
import curewindow.words.Words;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The films and coatings on the shelf: a list, and a form for one with what it does to dates. */
final class FilmScreen {

  private static final String ALL = "/films";
  private static final String ONE = "/film";
  private static final String PATH = "films.";

  /** All films, by their services. */
  record Shelf(Frame frame, List<Group> groups) {}

  /** The films of a service. */
  record Group(String service, String name, List<Row> films) {}

  /** A film, and what is known of it. */
  record Row(String id, String name, String facts) {}

  /**
   * The form of a film.
   *
   * @param action where the form is sent
   * @param version of the file that is changed
   * @param usual the permeance that such a film usually has, in a sentence
   * @param effect what it does to the dates; empty where it cannot be told yet
   * @param problems what no field shows
   * @param isNew whether it is a new film
   */
  record View(
      Frame frame,
      String action,
      String version,
      FilmFields.All fields,
      Optional<String> usual,
      Optional<EffectBeside.Effect> effect,
      List<String> problems,
      boolean isNew) {}

  private final DeskShop desk;
  private final DeskPages pages;
  private final FilmRemoval removal;

  FilmScreen(DeskShop desk, DeskPages pages) {
    this.desk = desk;
    this.pages = pages;
    this.removal = new FilmRemoval(desk, pages);
  }

  /** Whether a path leads here. */
  static boolean has(String path) {
    return path.equals(ALL) || path.equals(ONE) || path.startsWith(ONE + "/");
  }

  /** The answer; empty where there is no such film. */
  Optional<Answer> answer(Request request, Words words) throws IOException {
    if (request.path().equals(ALL)) {
      return Optional.of(all(request, words));
    }
    if (FilmRemoval.has(request.path())) {
      return removal.answer(request.path().substring(ONE.length() + 1), request, words);
    }
    Optional<KeptFile> kept = KeptFile.of(desk.now().shop().files(), FilmText.FILE);
    if (kept.isEmpty()) {
      return Optional.empty();
    }
    String id = request.path().equals(ONE) ? "" : request.path().substring(ONE.length() + 1);
    Optional<FilmDraft> before =
        id.isEmpty() ? Optional.of(FilmForm.EMPTY) : FilmText.read(kept.get().text(), id);
    return before.isEmpty()
        ? Optional.empty()
        : Optional.of(film(new Kept(id, kept.get(), before.get()), request, words));
  }

  /** A film as it stands; a new one has no id. */
  private record Kept(String id, KeptFile file, FilmDraft before) {

    /** Whether another film has the name, unless this one shared it before. */
    boolean isNameTaken(FilmDraft draft) {
      return !draft.name().isBlank()
          && !draft.name().equals(before.name())
          && FilmText.isNameTaken(file.text(), id, draft.name());
    }

    /** The id, or for a new film the one that its name makes. */
    String idOf(FilmDraft draft) {
      return id.isEmpty() ? FilmText.id(draft.name(), file.text()) : id;
    }
  }

  /** What is asked of the form. */
  private record Asked(Kept kept, String version, FilmDraft draft) {}

  private Answer film(Kept kept, Request request, Words words) throws IOException {
    if (!request.isPost()) {
      String service = request.query().one("service");
      FilmDraft draft =
          kept.id().isEmpty()
              ? new FilmDraft(service, "", "", "", "", "", "", "", "")
              : kept.before();
      return show(new Asked(kept, kept.file().version(), draft), words);
    }
    Request.Values form = request.form();
    FilmDraft draft = FilmForm.draft(form, kept.before());
    Asked asked = new Asked(kept, form.one("version"), draft);
    return form.one("do").equals("save") ? save(asked, words) : show(asked, words);
  }

  private Answer save(Asked asked, Words words) throws IOException {
    if (asked.kept().isNameTaken(asked.draft())) {
      return refused(asked, List.of(), words, 422);
    }
    Catalogue catalogue = desk.now().shop().read().catalogue();
    FilmDraft draft = FilmForm.filled(asked.draft(), catalogue);
    String id = asked.kept().idOf(draft);
    SharedFiles.Change change =
        new SharedFiles.Change(
            FilmText.FILE,
            asked.version(),
            path -> isAt(path, id),
            text -> FilmText.changed(text, id, draft));
    Saved<String> result = desk.write(shop -> SharedFiles.change(shop, change, desk.time()));
    if (result instanceof Saved.Written) {
      return Answer.see(ALL + "?done=saved");
    }
    if (result instanceof Saved.Refused<String> refused) {
      return refused(asked, refused.problems(), words, 422);
    }
    KeptFile now = ((Saved.Overtaken<String>) result).now();
    return refused(
        new Asked(asked.kept(), now.version(), asked.draft()),
        List.of(FormFields.overtaken(now.file())),
        words,
        409);
  }

  /** What is still to be filled in is no mistake while somebody types. */
  private Answer show(Asked asked, Words words) {
    Tried tried = tried(asked);
    List<Problem> told = tried.problems().stream().filter(p -> !p.isMissing()).toList();
    return show(asked, tried, told, words, 200);
  }

  private Answer refused(Asked asked, List<Problem> problems, Words words, int status) {
    return show(asked, tried(asked), problems, words, status);
  }

  /** The catalogue as it would be, and what would be wrong with the film. */
  private record Tried(String id, Catalogue catalogue, List<Problem> problems) {}

  private Tried tried(Asked asked) {
    LoadedShop shop = desk.now().shop();
    FilmDraft draft = FilmForm.filled(asked.draft(), shop.read().catalogue());
    String id = asked.kept().idOf(draft);
    Problems problems = new Problems();
    Catalogue then =
        FilmText.changed(asked.kept().file().text(), id, draft)
            .map(t -> ShopFolder.catalogue(shop.files().with(FilmText.FILE, t), problems))
            .orElse(shop.read().catalogue());
    List<Problem> its =
        problems.all().stream()
            .filter(p -> isAt(p.path(), id))
            .filter(p -> p.file().equals(FilmText.FILE))
            .toList();
    return new Tried(id, then, its);
  }

  private static boolean isAt(String path, String id) {
    return path.equals(PATH + id) || path.startsWith(PATH + id + ".");
  }

  private Answer show(Asked asked, Tried tried, List<Problem> problems, Words words, int status) {
    LoadedShop shop = desk.now().shop();
    Catalogue catalogue = shop.read().catalogue();
    boolean isNew = asked.kept().id().isEmpty();
    String title = isNew ? words.text("desk.films.new") : asked.kept().before().name();
    FilmFields fields =
        new FilmFields(
            catalogue, PATH + tried.id(), asked.draft(), told(asked, tried, problems), words);
    View view =
        new View(
            frame(words, title, ONE, Optional.empty()),
            isNew ? ONE : ONE + "/" + asked.kept().id(),
            asked.version(),
            fields.all(),
            usual(FilmForm.usual(asked.draft(), catalogue), words),
            EffectBeside.of(shop, tried.catalogue(), tried.id(), desk.time(), words),
            fields.others(),
            isNew);
    return Answer.html(status, pages.html("film", view, words));
  }

  private static List<Problem> told(Asked asked, Tried tried, List<Problem> problems) {
    return asked.kept().isNameTaken(asked.draft())
        ? Stream.concat(problems.stream(), Stream.of(sameName(tried.id()))).toList()
        : problems;
  }

  /** Said in the desk's own words. */
  private static Problem sameName(String id) {
    return Problem.error(
        "same-film-name",
        new Where(FilmText.FILE, 0, 0, PATH + id + ".name"),
        "another film has this name",
        "give this one another name");
  }

  private static Optional<String> usual(OptionalDouble permeance, Words words) {
    return permeance.isEmpty()
        ? Optional.empty()
        : Optional.of(
            words.text("desk.films.usual", Map.of("n", words.number(permeance.getAsDouble(), 1))));
  }

  private Frame frame(Words words, String title, String path, Optional<String> done) {
    String name = desk.now().shop().shop().map(Shop::name).orElseThrow();
    return Frame.of(words, name, title, path, done);
  }

  private Answer all(Request request, Words words) {
    Optional<String> done =
        switch (request.query().one("done")) {
          case "saved" -> Optional.of(words.text("desk.films.saved"));
          case "removed" -> Optional.of(words.text("desk.films.removed"));
          default -> Optional.empty();
        };
    Catalogue catalogue = desk.now().shop().read().catalogue();
    List<Group> groups =
        catalogue.services().values().stream().map(s -> group(s, catalogue, words)).toList();
    Shelf shelf = new Shelf(frame(words, words.text("desk.films.title"), ALL, done), groups);
    return Answer.html(200, pages.html("films", shelf, words));
  }

  private static Group group(Service service, Catalogue catalogue, Words words) {
    List<Row> rows =
        catalogue.films().values().stream()
            .filter(f -> f.service().equals(service.id()))
            .map(f -> new Row(f.id(), f.name(), facts(f, words)))
            .toList();
    return new Group(service.id(), words.text("service." + service.id()), rows);
  }

  private static String facts(Film film, Words words) {
    Stream<String> facts =
        Stream.of(
            film.material(),
            film.thickness().isPresent()
                ? words.number(film.thickness().getAsDouble(), 0) + " \u00b5m"
                : "",
            film.vlt().isPresent()
                ? words.text(
                    "desk.films.light", Map.of("n", words.number(film.vlt().getAsDouble(), 0)))
                : "",
            film.metallised() ? words.text("desk.films.metal") : "");
    return facts.filter(t -> !t.isEmpty()).collect(Collectors.joining(" \u00b7 "));
  }
}
