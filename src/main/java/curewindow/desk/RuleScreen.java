package curewindow.desk;

import curewindow.desk.FormFields.Field;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Catalogue;
import curewindow.shop.Film;
import curewindow.shop.RuleText;
import curewindow.shop.Service;
import curewindow.shop.Shop;
import curewindow.shop.ShopFolder;
import curewindow.shop.SpotFact;
import curewindow.shop.TypedNumber;
import curewindow.site.KeptFile;
import curewindow.site.LoadedShop;
import curewindow.site.Saved;
import curewindow.site.SharedFiles;
import curewindow.told.Listing;
import curewindow.words.Words;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** How long the holds of a service take: the numbers of its rules, and what they do to dates. */
final class RuleScreen {

  private static final String PATH = "/rules/";

  /**
   * The screen.
   *
   * @param action where the form is sent
   * @param version of the file that is changed
   * @param rules the rules of the service
   * @param effect what they do to the dates; empty where there is no film to tell it by, or where a
   *     number is wrong
   * @param wrong whether a number is wrong
   * @param problems what no field shows
   */
  record View(
      Frame frame,
      String action,
      String version,
      List<Rule> rules,
      Optional<EffectBeside.Effect> effect,
      boolean wrong,
      List<String> problems) {}

  /**
   * A rule.
   *
   * @param hold what it is about
   * @param where on which spots; empty for all
   */
  record Rule(String hold, String where, List<Number> numbers) {}

  /** A number, and what it is. */
  record Number(String label, Field field) {}

  private final DeskShop desk;
  private final DeskPages pages;

  RuleScreen(DeskShop desk, DeskPages pages) {
    this.desk = desk;
    this.pages = pages;
  }

  /** Whether a path leads here. */
  static boolean has(String path) {
    return path.startsWith(PATH);
  }

  /** What is asked of the screen. */
  private record Asked(
      String service, KeptFile file, String version, Map<String, String> numbers) {}

  /** The answer; empty where there is no such service. */
  Optional<Answer> answer(Request request, Words words) throws IOException {
    LoadedShop shop = desk.now().shop();
    Service service =
        shop.read().catalogue().services().get(request.path().substring(PATH.length()));
    Optional<KeptFile> kept = KeptFile.of(shop.files(), RuleText.FILE);
    if (service == null || kept.isEmpty()) {
      return Optional.empty();
    }
    String version = request.isPost() ? request.form().one("version") : kept.get().version();
    Asked asked =
        new Asked(
            service.id(),
            kept.get(),
            version,
            numbers(kept.get().text(), service.id(), request.form()));
    boolean save = request.isPost() && request.form().one("do").equals("save");
    return Optional.of(save ? save(asked, words) : show(asked, words));
  }

  private static Stream<RuleText.Written> rules(String text, String service) {
    return RuleText.read(text).stream().filter(r -> r.service().equals(service));
  }

  /** The numbers of a service's rules, those that were typed in place of those in the file. */
  private static Map<String, String> numbers(String text, String service, Request.Values form) {
    Map<String, String> numbers = new LinkedHashMap<>();
    rules(text, service)
        .flatMap(rule -> rule.numbers().stream())
        .forEach(n -> numbers.put(n.path(), typed(form, n)));
    return numbers;
  }

  private static String typed(Request.Values form, RuleText.Value number) {
    String path = number.path();
    return form.has(path) ? TypedNumber.plain(form.one(path)) : number.text();
  }

  private Answer save(Asked asked, Words words) throws IOException {
    SharedFiles.Change change =
        new SharedFiles.Change(
            RuleText.FILE,
            asked.version(),
            asked.numbers()::containsKey,
            text -> RuleText.changed(text, asked.numbers()));
    Saved<String> result = desk.write(shop -> SharedFiles.change(shop, change, desk.time()));
    if (result instanceof Saved.Written) {
      return Answer.see("/films?done=saved");
    }
    if (result instanceof Saved.Refused<String> refused) {
      return refused(asked, refused.problems(), words, 422);
    }
    KeptFile now = ((Saved.Overtaken<String>) result).now();
    Asked again = new Asked(asked.service(), asked.file(), now.version(), asked.numbers());
    return refused(again, List.of(FormFields.overtaken(now.file())), words, 409);
  }

  private Answer show(Asked asked, Words words) {
    Tried tried = tried(asked);
    List<Problem> its =
        tried.problems().stream().filter(p -> asked.numbers().containsKey(p.path())).toList();
    return show(asked, tried.catalogue(), its, words, 200);
  }

  /** The catalogue as it would be, and what would be wrong with it. */
  private record Tried(Catalogue catalogue, List<Problem> problems) {}

  private Tried tried(Asked asked) {
    LoadedShop shop = desk.now().shop();
    Problems problems = new Problems();
    Catalogue then =
        RuleText.changed(asked.file().text(), asked.numbers())
            .map(t -> ShopFolder.catalogue(shop.files().with(RuleText.FILE, t), problems))
            .orElse(shop.read().catalogue());
    return new Tried(then, problems.all());
  }

  private Answer refused(Asked asked, List<Problem> problems, Words words, int status) {
    return show(asked, tried(asked).catalogue(), problems, words, status);
  }

  private Answer show(
      Asked asked, Catalogue then, List<Problem> problems, Words words, int status) {
    LoadedShop shop = desk.now().shop();
    FormFields fields = new FormFields(problems, words);
    String title =
        words.text("desk.rules.title", Map.of("service", words.text("service." + asked.service())));
    String name = shop.shop().map(Shop::name).orElseThrow();
    String action = PATH + asked.service();
    // A rule with a wrong number is none, so that its wait would seem to be gone.
    boolean wrong =
        problems.stream().anyMatch(p -> p.isError() && asked.numbers().containsKey(p.path()));
    View view =
        new View(
            Frame.of(words, name, title, action, Optional.empty()),
            action,
            asked.version(),
            rules(asked.file().text(), asked.service())
                .map(rule -> rule(rule, asked.numbers(), fields, words))
                .toList(),
            film(shop, asked.service()).filter(f -> !wrong).flatMap(f -> effect(f, then, words)),
            wrong,
            fields.others(RuleText.FILE));
    return Answer.html(status, pages.html("rules", view, words));
  }

  /** The film that the dates are told by: the first of the service. */
  private static Optional<Film> film(LoadedShop shop, String service) {
    return shop.read().catalogue().films().values().stream()
        .filter(f -> f.service().equals(service))
        .findFirst();
  }

  private Optional<EffectBeside.Effect> effect(Film film, Catalogue then, Words words) {
    return EffectBeside.of(desk.now().shop(), then, film.id(), desk.time(), words);
  }

  private static Rule rule(
      RuleText.Written rule, Map<String, String> typed, FormFields fields, Words words) {
    List<Number> numbers = new ArrayList<>();
    for (RuleText.Value n : rule.numbers()) {
      Field field = fields.field(n.path(), typed.get(n.path()));
      numbers.add(new Number(words.text("desk.rules." + n.key()), field));
    }
    return new Rule(words.text("hold." + rule.hold() + ".label"), where(rule, words), numbers);
  }

  private static String where(RuleText.Written rule, Words words) {
    List<String> parts = new ArrayList<>();
    if (SpotFact.of(rule.where()).isPresent()) {
      parts.add(words.text("desk.rules.where." + rule.where()));
    }
    if (!rule.spots().isEmpty()) {
      parts.add(words.text("desk.rules.only", Map.of("spots", spots(rule.spots(), words))));
    }
    if (!rule.except().isEmpty()) {
      parts.add(words.text("desk.rules.except", Map.of("spots", spots(rule.except(), words))));
    }
    return String.join("; ", parts);
  }

  private static String spots(List<String> spots, Words words) {
    return Listing.of(spots.stream().map(s -> words.text("spot." + s)).toList(), words);
  }
}
