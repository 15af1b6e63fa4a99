package curewindow.desk;

import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds cars by what people remember of them; all cars of a roll, too. */
final class FindScreen {

  /** On one screen; more cars than any roll is enough for. */
  private static final int SHOWN = 200;

  /**
   * The screen.
   *
   * @param query what was typed
   * @param rows what was found, the last picked up first
   * @param count how many there are, and which of them are shown
   * @param before where those before are; empty where these are the first
   * @param after where those after are; empty where these are the last
   * @param unread cars that could not be looked through
   */
  record View(
      Frame frame,
      String query,
      List<Row> rows,
      String count,
      Optional<String> before,
      Optional<String> after,
      Optional<LostCars.Unread> unread) {}

  /** A car. */
  record Row(String job, String firstName, String car, String films, String day) {}

  private final DeskShop desk;
  private final DeskPages pages;

  FindScreen(DeskShop desk, DeskPages pages) {
    this.desk = desk;
    this.pages = pages;
  }

  Answer show(Request request, Frame frame, Words words) {
    String query = request.query().one("q");
    int from = SHOWN * part(request.query().one("part"));
    DeskShop.Now now = desk.now();
    Finder.Found found = now.finder().find(query, from, SHOWN);
    List<Row> rows = found.jobs().stream().map(job -> row(job, words)).toList();
    int last = from + rows.size();
    View view =
        new View(
            frame,
            query,
            rows,
            count(found.all(), from, last, words),
            from == 0 ? Optional.empty() : Optional.of(at(query, from / SHOWN - 1)),
            last == found.all() || rows.isEmpty()
                ? Optional.empty()
                : Optional.of(at(query, from / SHOWN + 1)),
            LostCars.unread(unread(now.shop(), query, rows.isEmpty()), "desk.find.unread", words));
    return Answer.html(200, pages.html("find", view, words));
  }

  private static int part(String text) {
    return text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : 0;
  }

  private static String at(String query, int part) {
    return "/find?q=" + URLEncoder.encode(query, StandardCharsets.UTF_8) + "&part=" + part;
  }

  private static String count(int all, int from, int last, Words words) {
    return last - from == all
        ? words.text("desk.find.all", Map.of("n", all))
        : words.text("desk.find.part", Map.of("from", from + 1, "to", last, "n", all));
  }

  /** Where nothing was found, the car may be any of them. */
  private static List<String> unread(LoadedShop shop, String query, boolean any) {
    return LostCars.unread(shop).stream().filter(id -> any || Finder.has(id, query)).toList();
  }

  private Row row(Job job, Words words) {
    LoadedShop shop = desk.now().shop();
    Shop own = shop.shop().orElseThrow();
    String car = job.car().text();
    return new Row(
        job.id(),
        job.firstName(),
        car.isBlank() ? words.text("car.body." + job.car().body().id()) : car,
        String.join(", ", UsualWork.films(job, shop)),
        words.date(job.pickup().atZone(own.zone()).toLocalDate()));
  }
}
