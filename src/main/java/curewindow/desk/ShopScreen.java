package curewindow.desk;

import curewindow.climate.Place;
import curewindow.problem.Problem;
import curewindow.shop.Shop;
import curewindow.shop.ShopDraft;
import curewindow.shop.ShopText;
import curewindow.site.KeptFile;
import curewindow.site.Saved;
import curewindow.site.SharedFiles;
import curewindow.site.ShopSetUp;
import curewindow.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The shop itself: set up once, in a folder that is none yet, and changed whenever it moves on. */
final class ShopScreen {

  private static final String CHANGE = "/shop";
  private static final String SET_UP = "/set-up";

  /**
   * The screen.
   *
   * @param action where the form is sent
   * @param version of the file that is changed; empty for a new shop
   * @param folder where a new shop is laid out
   * @param fields all fields but the place
   * @param places the places to choose from
   * @param problems what no field shows
   * @param isNew whether the shop is set up
   * @param own whether it is shown on the machine of the desk, on which alone is said where the
   *     site is sent to, as that leads out of the two folders
   */
  record View(
      Frame frame,
      String action,
      String version,
      String folder,
      ShopFields.All fields,
      PlaceChoices.Found places,
      List<String> problems,
      boolean isNew,
      boolean own) {}

  /** Instead of a form, what to do. */
  record ByHand(Frame frame, List<String> lines) {}

  private final DeskShop desk;
  private final DeskPages pages;
  private final PagePress press;

  /** What the forms that are open began with. */
  private final BegunForms<ShopDraft> begun = new BegunForms<>(ShopText::read);

  /** A folder that once was a shop's is not set up anew, where its disk is away for a moment. */
  private volatile boolean isSetUp;

  ShopScreen(DeskShop desk, DeskPages pages, PagePress press) {
    this.desk = desk;
    this.pages = pages;
    this.press = press;
    this.isSetUp = !ShopSetUp.isNeeded(folder());
  }

  private Path folder() {
    return desk.now().shop().files().root();
  }

  /** What is asked of the screen: which form, and what is in it. */
  private record Asked(
      String version, ShopDraft draft, String town, boolean own, List<Problem> problems) {

    boolean isNew() {
      return version.isEmpty();
    }

    Asked with(String version, List<Problem> problems) {
      return new Asked(version, draft, town, own, problems);
    }

    Asked with(ShopDraft draft) {
      return new Asked(version, draft, town, own, problems);
    }
  }

  /** The answer where the shop is asked for, or has to be set up before anything else. */
  Optional<Answer> answer(Request request, Words words) throws IOException {
    if (!isSetUp && !ShopSetUp.isNeeded(folder())) {
      desk.look();
      isSetUp = true;
    }
    String path = request.path();
    if (!isSetUp) {
      return Optional.of(path.equals(SET_UP) ? setUp(request, words) : Answer.see(SET_UP));
    }
    if (path.equals(SET_UP)) {
      return Optional.of(late(request, words));
    }
    return path.equals(CHANGE) ? Optional.of(change(request, words)) : Optional.empty();
  }

  /** Somebody still has the form of a new shop, which another one has set up by now. */
  private Answer late(Request request, Words words) throws IOException {
    if (!request.isPost() || ShopSetUp.isNeeded(folder())) {
      return Answer.see("/");
    }
    boolean isChange = !request.form().one("version").isEmpty();
    return isChange ? change(request, words) : setUp(request, words);
  }

  private Map<String, Place> places() {
    return desk.now().shop().read().places();
  }

  private Answer setUp(Request request, Words words) throws IOException {
    ShopDraft empty = ShopForm.empty(words.language());
    boolean own = request.isOwn();
    if (!request.isPost()) {
      return show(new Asked("", empty, "", own, List.of()), words, 200);
    }
    Request.Values form = request.form();
    ShopDraft typed = ShopForm.draft(form, Optional.empty(), false, places(), words);
    ShopDraft draft = own ? typed : typed.withSend(empty.send());
    Asked asked = new Asked("", draft, form.one(ShopForm.TOWN), own, List.of());
    if (!form.one("do").equals("save")) {
      return show(asked, words, 200);
    }
    Saved<String> result = desk.write(shop -> ShopSetUp.in(folder(), draft, desk.time()));
    if (result instanceof Saved.Refused<String> refused) {
      return show(asked.with("", refused.problems()), words, 422);
    }
    isSetUp = true;
    // What every page leads to is there by the time that the first car is entered.
    press.follow();
    return result instanceof Saved.Overtaken<String> overtaken
        ? meanwhile(Optional.of(empty), asked, overtaken.now(), words)
        : Answer.see("/new");
  }

  private Answer change(Request request, Words words) throws IOException {
    Optional<KeptFile> kept = KeptFile.of(desk.now().shop().files(), ShopText.FILE);
    Optional<ShopDraft> now = kept.flatMap(begun::begin);
    if (now.isEmpty()) {
      return byHand(words);
    }
    boolean own = request.isOwn();
    if (!request.isPost()) {
      return show(new Asked(kept.get().version(), now.get(), "", own, List.of()), words, 200);
    }
    Request.Values form = request.form();
    String version = form.one("version");
    Optional<ShopDraft> base = begun.of(version);
    ShopDraft before = base.orElse(now.get());
    boolean hasJobs = !desk.now().shop().jobs().isEmpty();
    ShopDraft typed = ShopForm.draft(form, Optional.of(before), hasJobs, places(), words);
    ShopDraft draft = own ? typed : typed.withSend(before.send());
    Asked asked = new Asked(version, draft, form.one(ShopForm.TOWN), own, List.of());
    return form.one("do").equals("save") ? save(base, asked, words) : show(asked, words, 200);
  }

  private Answer save(Optional<ShopDraft> base, Asked asked, Words words) throws IOException {
    Saved<String> result = written(asked.version(), asked.draft());
    if (result instanceof Saved.Written) {
      return Answer.see("/?done=saved");
    }
    return result instanceof Saved.Overtaken<String> overtaken
        ? meanwhile(base, asked, overtaken.now(), words)
        : refused(asked, asked.version(), result, words);
  }

  private Answer refused(Asked asked, String version, Saved<String> result, Words words) {
    List<Problem> problems = ((Saved.Refused<String>) result).problems();
    return show(asked.with(version, problems), words, 422);
  }

  private Saved<String> written(String version, ShopDraft draft) throws IOException {
    SharedFiles.Change change =
        new SharedFiles.Change(
            ShopText.FILE, version, path -> true, text -> ShopText.changed(text, draft));
    return desk.write(shop -> SharedFiles.change(shop, change, desk.time()));
  }

  /**
   * Somebody else saved the shop meanwhile: what only one of them filled in is put together, and
   * what both did is shown with what the other one saved.
   */
  private Answer meanwhile(Optional<ShopDraft> base, Asked mine, KeptFile now, Words words)
      throws IOException {
    Optional<ShopDraft> theirs = begun.begin(now);
    Optional<ShopMerge.Merged> both =
        base.flatMap(b -> theirs.map(t -> ShopMerge.of(b, mine.draft(), t)));
    if (both.isEmpty()) {
      List<Problem> whole = List.of(FormFields.overtaken(now.file()));
      return show(mine.with(now.version(), whole), words, 409);
    }
    Asked merged = mine.with(both.get().draft());
    if (!both.get().clashes().isEmpty()) {
      List<Problem> clashes =
          both.get().clashes().stream()
              // The clock goes with the place, of which it is told already.
              .filter(c -> !c.name().equals("zone"))
              .map(c -> clash(now.file(), c, words))
              .toList();
      return show(merged.with(now.version(), clashes), words, 409);
    }
    Saved<String> result = written(now.version(), merged.draft());
    return result instanceof Saved.Refused
        ? refused(merged, now.version(), result, words)
        : Answer.see("/?done=merged");
  }

  /** Said in the desk's own words. */
  private Problem clash(String file, Merging.Clash clash, Words words) {
    return FormFields.overtaken(file, clash.name(), said(clash, words));
  }

  private String said(Merging.Clash clash, Words words) {
    String value = ShopFields.said(clash.theirs());
    return switch (clash.name()) {
      case "place" ->
          Optional.ofNullable(places().get(value))
              .map(p -> words.place(p.name(), p.zone()))
              .orElse(value);
      case "bay.temperature", "bay.lamp" -> Degrees.of(desk.now().shop()).shown(value);
      case "language" -> desk.now().shop().words().of(value).text("language.name");
      default -> value;
    };
  }

  private Answer byHand(Words words) {
    ByHand view =
        new ByHand(
            frame(words, words.text("desk.shop.title"), false),
            List.of(words.text("desk.shop.by-hand")));
    return Answer.html(503, pages.html("message", view, words));
  }

  private Frame frame(Words words, String title, boolean isNew) {
    String name = desk.now().shop().shop().map(Shop::name).orElse("Curewindow");
    Frame frame = Frame.of(words, name, title, isNew ? SET_UP : CHANGE, Optional.empty());
    return isNew ? frame.alone() : frame;
  }

  private Answer show(Asked asked, Words words, int status) {
    boolean isNew = asked.isNew();
    ShopFields fields = new ShopFields(desk.now().shop(), asked.draft(), asked.problems(), words);
    String title = words.text(isNew ? "desk.shop.new" : "desk.shop.title");
    View view =
        new View(
            frame(words, title, isNew),
            isNew ? SET_UP : CHANGE,
            asked.version(),
            folder().toString(),
            fields.all(asked.town(), asked.own()),
            PlaceChoices.of(asked.draft().place(), asked.town(), places(), words),
            fields.others(),
            isNew,
            asked.own());
    return Answer.html(status, pages.html("shop", view, words));
  }
}
