package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.CarDrawing.Kind;
import curewindow.page.CarDrawing.Part;
import curewindow.page.CarDrawing.Point;
import curewindow.problem.Problems;
import curewindow.shop.BodyType;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopLook;
import curewindow.told.Contact;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The drawing of the car: every spot has its place, every fitted item its number. */
class CarPictureTest {

  private static final Pattern COMMAND = Pattern.compile("([a-zA-Z])([^a-zA-Z]*)");
  private static final Pattern SECTION =
      Pattern.compile("<section id=car .*?</section>", Pattern.DOTALL);

  /** How many numbers a command of path data takes: SVG 2, section 9.3. */
  private static int arity(char command) {
    return switch (command) {
      case 'M', 'm', 'l' -> 2;
      case 'h', 'v' -> 1;
      case 's', 'q' -> 4;
      case 'c' -> 6;
      case 'a' -> 7;
      default -> throw new AssertionError("command " + command);
    };
  }

  /** What the catalogue says a body lacks is what its drawing lacks. */
  @ParameterizedTest
  @EnumSource(BodyType.class)
  void everyBodyIsDrawnWithTheSpotsItHas(BodyType body) {
    var spots =
        ShopFolder.read(new ShopFiles(Path.of("no-such-shop")), Instant.EPOCH).catalogue().spots();
    CarDrawing drawing = CarDrawing.of(body);
    spots.forEach(
        (id, spot) ->
            assertEquals(spot.notOn().contains(body), drawing.spot(id).isEmpty(), body + " " + id));
  }

  /** The points that a path goes through. */
  private static List<Point> points(String path) {
    List<Point> points = new ArrayList<>();
    int x = 0;
    int y = 0;
    int startX = 0;
    int startY = 0;
    Matcher m = COMMAND.matcher(path);
    while (m.find()) {
      char c = m.group(1).charAt(0);
      if (c == 'z') {
        x = startX;
        y = startY;
        continue;
      }
      int[] n =
          Pattern.compile("-?\\d+")
              .matcher(m.group(2))
              .results()
              .mapToInt(r -> Integer.parseInt(r.group()))
              .toArray();
      int size = arity(c);
      assertTrue(n.length > 0 && n.length % size == 0, path);
      for (int i = 0; i < n.length; i += size) {
        int last = i + size - 1;
        if (c == 'M') {
          x = n[i];
          y = n[last];
        } else {
          x += c == 'v' ? 0 : c == 'h' ? n[last] : n[last - 1];
          y += c == 'h' ? 0 : n[last];
        }
        if (c == 'M' || c == 'm') {
          startX = x;
          startY = y;
        }
        points.add(new Point(x, y));
      }
    }
    return points;
  }

  @ParameterizedTest
  @EnumSource(BodyType.class)
  void everySpotHasItsPlaceOnEveryBody(BodyType body) {
    CarDrawing car = CarDrawing.of(body);
    Set<String> known = new HashSet<>(Demo.CATALOGUE.spots().keySet());
    if (body == BodyType.COUPE) {
      assertEquals(List.of(), car.spot("rear-door-glass"), "a coupe has no rear doors");
      known.remove("rear-door-glass");
    }
    Set<String> drawn = new HashSet<>();
    car.parts().forEach(p -> drawn.add(p.spot()));
    drawn.remove("");
    assertEquals(known, drawn);
    for (String spot : known) {
      assertEquals(
          1, car.spot(spot).stream().filter(p -> p.mark().isPresent()).count(), body + " " + spot);
    }
    for (Part part : car.parts()) {
      assertTrue(part.path().matches("M[-0-9 Ma-z]+"), "whole numbers, relative: " + part.path());
      for (Point p : points(part.path())) {
        assertTrue(p.x() >= 0 && p.x() <= car.width(), part.spot() + p);
        assertTrue(p.y() >= car.top() && p.y() <= car.bottom(), part.spot() + p);
        assertTrue(!part.above() || p.y() <= 0, "one half only: " + part.spot() + p);
      }
    }
  }

  /** Both views are of one car: they begin and end at the same places. */
  @ParameterizedTest
  @EnumSource(BodyType.class)
  void viewsAreAligned(BodyType body) {
    for (boolean end : new boolean[] {false, true}) {
      int side = edge(body, false, end);
      int above = edge(body, true, end);
      assertTrue(Math.abs(side - above) <= 4, body + " " + side + " " + above);
    }
  }

  private static int edge(BodyType body, boolean above, boolean end) {
    var xs =
        CarDrawing.of(body).parts().stream()
            .filter(p -> p.kind() == Kind.BODY && p.above() == above)
            .flatMap(p -> points(p.path()).stream())
            .mapToInt(Point::x);
    return end ? xs.max().orElseThrow() : xs.min().orElseThrow();
  }

  /** All spots of the catalogue, on two items that lie on each other. */
  private static Demo everywhere(BodyType body) {
    Demo demo = Demo.tint();
    demo.body = body;
    demo.items.clear();
    String[] spots = Demo.CATALOGUE.spots().keySet().toArray(String[]::new);
    demo.fit("paint-film", "fieldcoat-gloss", "2026-11-30T18:00", -1, spots);
    demo.fit("paint-coating", "tidewater-paint", "2026-12-01T12:00", -1, spots);
    return demo;
  }

  private static CarPicture.Picture picture(Demo demo) {
    return new CarPicture(demo.view(), CarOutline.file(demo.body)).picture();
  }

  /** A picture takes no colour from its page, so both have to name the same. */
  @Test
  void theCarHasTheInkOfThePages() {
    List<String> inks =
        Pattern.compile("--ink:([^;}]+)")
            .matcher(PageLook.customer(Demo.FILES, ShopLook.NONE, new Problems()).style())
            .results()
            .map(m -> m.group(1))
            .toList();
    assertEquals(List.of(CarOutline.INK, CarOutline.INK_IN_THE_DARK), inks);
  }

  /** What is drawn of every car stands in its file, and in it what the page shows of it. */
  @ParameterizedTest
  @EnumSource(BodyType.class)
  void theFileOfACarHasAllOfItsLines(BodyType body) {
    SharedFile file = CarOutline.file(body);
    for (Part part : CarDrawing.of(body).parts()) {
      boolean always = part.kind() != Kind.ONLY && part.kind() != Kind.INSIDE;
      assertEquals(always, file.text().contains(part.path()), body + " " + part.spot());
    }
    Demo demo = Demo.tint();
    demo.body = body;
    CarPicture.Picture picture = picture(demo);
    String box = "0 %d %d %d".formatted(picture.top(), picture.width(), picture.height());
    assertTrue(file.text().contains("viewBox=\"" + box + "\""), box);
    assertEquals(file.href(), picture.car());
    assertTrue(picture.car().startsWith("../../" + file.name() + "?"), picture.car());
  }

  @ParameterizedTest
  @EnumSource(BodyType.class)
  void noNumberLiesOnAnother(BodyType body) {
    CarPicture.Picture picture = picture(everywhere(body));
    List<CarPicture.Mark> marks =
        picture.items().stream().flatMap(i -> i.marks().stream()).toList();
    assertEquals(body == BodyType.COUPE ? 60 : 62, marks.size());
    String[] box = picture.box().split(" ");
    int top = Integer.parseInt(box[1]);
    int bottom = top + Integer.parseInt(box[3]);
    for (int i = 0; i < marks.size(); i++) {
      CarPicture.Mark a = marks.get(i);
      assertTrue(a.x() > CarMarks.RADIUS && a.x() < 400 - CarMarks.RADIUS, "" + a);
      assertTrue(a.y() > top + CarMarks.RADIUS && a.y() < bottom - CarMarks.RADIUS, "" + a);
      for (int k = i + 1; k < marks.size(); k++) {
        double apart = Math.hypot(a.x() - marks.get(k).x(), a.y() - marks.get(k).y());
        assertTrue(apart >= 2 * CarMarks.RADIUS, a + " " + marks.get(k));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(BodyType.class)
  void everyItemHasItsNumberAndEveryLinkItsTarget(BodyType body) {
    String html = section(everywhere(body).html());
    Set<String> ids = new HashSet<>();
    Matcher id = Pattern.compile(" id=\"?([^\\s\">]+)").matcher(html);
    while (id.find()) {
      assertTrue(ids.add(id.group(1)), "twice: " + id.group());
    }
    Matcher link = Pattern.compile("(?:href=\"?#|url\\(#)([^\\s\")>]+)").matcher(html);
    int links = 0;
    while (link.find()) {
      assertTrue(ids.contains(link.group(1)), link.group());
      links++;
    }
    assertTrue(links > 8, "links " + links);
    for (int i = 1; i <= 2; i++) {
      assertTrue(html.contains("<li id=f" + i + ">"), "in the list: " + i);
      assertTrue(html.contains(">" + i + "</text>"), "in the picture: " + i);
    }
    assertEquals(html, section(everywhere(body).html()), "the same bytes each time");
  }

  private static String section(String html) {
    Matcher m = SECTION.matcher(html);
    assertTrue(m.find());
    return m.group();
  }

  /** A shop's own spot, and a spot that this body lacks, stand in the list only. */
  @Test
  void whatTheDrawingDoesNotKnowStandsInTheList() {
    Demo demo = Demo.tint();
    demo.body = BodyType.COUPE;
    demo.items.clear();
    demo.fit("tint", "harbor-35", "2026-12-01T14:00", 31, "rear-door-glass");
    CarPicture.Item item = picture(demo).items().get(0);
    assertEquals(List.of(), item.marks());
    assertEquals(1, item.number());
    String html = section(demo.html());
    assertTrue(html.contains("<li id=f1>"));
    assertFalse(html.contains("</text>"));
    assertEquals(
        List.of("Harbor 35", "Visible light (VLT) 31%, glass and film together, as measured"),
        item.facts());
    assertEquals(
        new Contact.Pair(
            "Window tint",
            "Batch B-77310 · Warranty until December 1, 2036 · finished Tue, Dec 1, 2 PM"),
        plain(new Fittings(demo.view()).work().facts().get(0)));
  }

  private static Contact.Pair plain(Contact.Pair pair) {
    return new Contact.Pair(pair.name(), pair.text().replaceAll("[\\u00a0\\u202f]", " "));
  }

  @Test
  void eachServiceHasItsOwnPattern() {
    CarPicture.Picture picture = picture(everywhere(BodyType.SUV));
    assertEquals(List.of("k0", "k1"), picture.items().stream().map(CarPicture.Item::fill).toList());
    assertEquals(2, picture.patterns().size());
    CarPicture.Picture tint = picture(Demo.tint());
    assertEquals(List.of("k0", "k0"), tint.items().stream().map(CarPicture.Item::fill).toList());
    assertEquals(1, tint.patterns().size());
    assertEquals(CarPicture.PATTERNS.size(), Set.copyOf(CarPicture.PATTERNS).size());
  }

  private static int gzipped(String text) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip = new GZIPOutputStream(out)) {
      gzip.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return out.size();
  }

  /** What the section costs a page, without its style: ten packets must hold the whole page. */
  @ParameterizedTest
  @EnumSource(BodyType.class)
  void theSectionIsLight(BodyType body) throws IOException {
    Demo demo = Demo.tint();
    demo.body = body;
    String html = demo.html();
    int cost = gzipped(html) - gzipped(html.replace(section(html), ""));
    assertTrue(cost <= 1100, body + ": " + cost);
  }
}
