package curewindow.desk;

import curewindow.shop.Job;
import curewindow.shop.Shop;
import curewindow.site.LoadedShop;
import curewindow.words.Words;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds cars by what people remember of them. */
final class FindScreen {

  private static final int SHOWN = 40;

  /**
   * The screen.
   *
   * @param query what was typed
   * @param rows what was found, the last picked up first
   * @param more how many more there are
   */
  record View(Frame frame, String query, List<Row> rows, Optional<String> more) {}

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
    Finder.Found found = desk.now().finder().find(query, SHOWN);
    List<Row> rows = found.jobs().stream().map(job -> row(job, words)).toList();
    return Answer.html(
        200, pages.html("find", new View(frame, query, rows, more(found.more(), words)), words));
  }

  private static Optional<String> more(int number, Words words) {
    return number == 0
        ? Optional.empty()
        : Optional.of(words.text("desk.find.more", Map.of("n", number)));
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
