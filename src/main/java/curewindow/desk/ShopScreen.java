package curewindow.desk;

import curewindow.climate.Place;
import curewindow.problem.Problem;
import curewindow.shop.Shop;
import curewindow.shop.ShopDraft;
import curewindow.shop.ShopText;
import curewindow.site.KeptFile;
import curewindow.site.LoadedShop;
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
   */
  record View(
      Frame frame,
      String action,
      String version,
      String folder,
      ShopFields.All fields,
      PlaceChoices.Found places,
      List<String> problems,
      boolean isNew) {}

  /** Instead of a form, what to do. */
  record ByHand(Frame frame, List<String> lines) {}

  private final DeskShop desk;
  private final DeskPages pages;

  /** A folder that once was a shop's is not set up anew, where its disk is away for a moment. */
  private volatile boolean isSetUp;

  ShopScreen(DeskShop desk, DeskPages pages) {
    this.desk = desk;
    this.pages = pages;
    this.isSetUp = !ShopSetUp.isNeeded(folder());
  }

  private Path folder() {
    return desk.now().shop().files().root();
  }

  /** What is asked of the screen: which form, and what is in it. */
  private record Asked(String version, ShopDraft draft, String town, List<Problem> problems) {

    boolean isNew() {
      return version.isEmpty();
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
      return Optional.of(Answer.see("/"));
    }
    return path.equals(CHANGE) ? Optional.of(change(request, words)) : Optional.empty();
  }

  private Map<String, Place> places() {
    return desk.now().shop().read().places();
  }

  private Answer setUp(Request request, Words words) throws IOException {
    if (!request.isPost()) {
      ShopDraft empty = ShopForm.empty(words.language());
      return show(new Asked("", empty, "", List.of()), words, 200);
    }
    Request.Values form = request.form();
    ShopDraft draft = ShopForm.draft(form, Optional.empty(), false, places(), words);
    String town = form.one(ShopForm.TOWN);
    if (!form.one("do").equals("save")) {
      return show(new Asked("", draft, town, List.of()), words, 200);
    }
    List<Problem> wrong = desk.write(shop -> ShopSetUp.in(folder(), draft, desk.time()));
    if (!wrong.isEmpty()) {
      return show(new Asked("", draft, town, wrong), words, 422);
    }
    isSetUp = true;
    return Answer.see("/new");
  }

  private Answer change(Request request, Words words) throws IOException {
    LoadedShop shop = desk.now().shop();
    Optional<KeptFile> kept = KeptFile.of(shop.files(), ShopText.FILE);
    Optional<ShopDraft> before = kept.flatMap(k -> ShopText.read(k.text()));
    if (before.isEmpty()) {
      return byHand(words);
    }
    if (!request.isPost()) {
      return show(new Asked(kept.get().version(), before.get(), "", List.of()), words, 200);
    }
    Request.Values form = request.form();
    boolean hasJobs = !desk.now().shop().jobs().isEmpty();
    ShopDraft draft = ShopForm.draft(form, before, hasJobs, places(), words);
    Asked asked = new Asked(form.one("version"), draft, form.one(ShopForm.TOWN), List.of());
    return form.one("do").equals("save") ? save(asked, words) : show(asked, words, 200);
  }

  private Answer save(Asked asked, Words words) throws IOException {
    SharedFiles.Change change =
        new SharedFiles.Change(
            ShopText.FILE,
            asked.version(),
            path -> true,
            text -> ShopText.changed(text, asked.draft()));
    Saved<String> result = desk.write(shop -> SharedFiles.change(shop, change, desk.time()));
    if (result instanceof Saved.Written) {
      return Answer.see("/?done=saved");
    }
    if (result instanceof Saved.Refused<String> refused) {
      return show(with(asked, asked.version(), refused.problems()), words, 422);
    }
    KeptFile now = ((Saved.Overtaken<String>) result).now();
    return show(
        with(asked, now.version(), List.of(FormFields.overtaken(now.file(), "", words))),
        words,
        409);
  }

  private static Asked with(Asked asked, String version, List<Problem> problems) {
    return new Asked(version, asked.draft(), asked.town(), problems);
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
    return isNew
        ? new Frame(frame.lang(), title, name, List.of(), Optional.empty(), frame.other())
        : frame;
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
            fields.all(asked.town()),
            PlaceChoices.of(asked.draft().place(), asked.town(), places(), words),
            fields.others(),
            isNew);
    return Answer.html(status, pages.html("shop", view, words));
  }
}
