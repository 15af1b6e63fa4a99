package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.shop.Handout;
import curewindow.told.JobView;
import curewindow.told.When;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every paper of every job of the demo shop, and of cars with much or little work. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class EveryPaperTest {

  /** What no eye sees and no text has twice alike. */
  private static final String UNSEEN = "[\\s\u00A0\u200B-\u200F\u2066-\u2069]";

  private final Map<String, List<Page>> printed = new HashMap<>();

  /**
   * A page.
   *
   * @param made the job
   * @param side 0 for its front
   * @param values what its template was given
   * @param modules of a side of its code
   */
  private record Page(
      HandoutPress.Made made,
      int side,
      Map<String, Object> values,
      int modules,
      String text,
      PDRectangle cut,
      List<PrintedInk> ink,
      List<Shape> shapes) {}

  private static String job(Page page) {
    return page.made().view().job().id() + " " + page.side();
  }

  static Stream<Arguments> papers() {
    return Stream.of(Handout.values())
        .flatMap(kind -> DemoPapers.LANGUAGES.stream().map(l -> Arguments.of(kind, l)));
  }

  private List<Page> pages(Handout kind, String language) {
    return printed.computeIfAbsent(kind + language, k -> print(kind, language));
  }

  private static List<Page> print(Handout kind, String language) {
    List<JobView> views =
        DemoPapers.jobs(language).stream().filter(v -> HandoutPress.isFor(v, kind)).toList();
    List<Page> pages = new ArrayList<>();
    HandoutPress.Handouts made = DemoPapers.print(kind, views);
    try (PrintedCard pdf = new PrintedCard(made.pdf())) {
      int at = 0;
      for (HandoutPress.Made one : made.made()) {
        JobView view = one.view();
        int modules = HandoutPress.code(view, kind).orElseThrow().modules();
        for (Map<String, Object> values : HandoutValues.of(view, kind, new ListRoom(), 0)) {
          for (int side = 0; side < sides(kind); side++, at++) {
            PDPage page = pdf.pdf().getPage(at);
            List<PrintedInk> ink = PrintedInk.of(pdf, at);
            pages.add(
                new Page(
                    one,
                    side,
                    values,
                    modules,
                    text(ink),
                    page.getTrimBox(),
                    upwards(ink),
                    PrintedShapes.of(page)));
          }
        }
      }
      assertEquals(at, pdf.pdf().getNumberOfPages());
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return pages;
  }

  private static List<PrintedInk> upwards(List<PrintedInk> ink) {
    return ink.stream().sorted(Comparator.comparing(i -> i.box().getMinY())).toList();
  }

  /** The signs in the order in which they are read; lines of Arabic are drawn from their end. */
  private static String text(List<PrintedInk> ink) {
    StringBuilder text = new StringBuilder();
    for (int from = 0, to = 0; from < ink.size(); from = to) {
      List<String> line = new ArrayList<>();
      for (; to < ink.size() && ink.get(to).line().equals(ink.get(from).line()); to++) {
        line.add(ink.get(to).sign());
      }
      if (line.stream().anyMatch(PaperFont::isRightToLeft)) {
        java.util.Collections.reverse(line);
      }
      text.append(String.join("", line));
    }
    return plain(text.toString());
  }

  private static int sides(Handout kind) {
    return kind == Handout.HANG_TAG ? 2 : 1;
  }

  @ParameterizedTest
  @MethodSource("papers")
  void noTextLiesOnAnotherNorOnALine(Handout kind, String language) {
    List<String> found = new ArrayList<>();
    for (Page page : pages(kind, language)) {
      List<PrintedInk> ink = page.ink();
      for (int i = 0; i < ink.size(); i++) {
        Rectangle2D box = ink.get(i).box();
        for (int j = i + 1; j < ink.size() && ink.get(j).box().getMinY() < box.getMaxY(); j++) {
          if (ink.get(i).disturbs(ink.get(j))) {
            found.add(job(page) + ": " + ink.get(i).text() + " on " + ink.get(j).text());
          }
        }
        if (page.shapes().stream().anyMatch(s -> lies(box, s))) {
          found.add(job(page) + ": " + ink.get(i).text() + " on a line");
        }
      }
    }
    assertEquals(List.of(), shortened(found));
  }

  /** By the boxes first, as a code has many outlines. */
  private static boolean lies(Rectangle2D box, Shape shape) {
    return shape.getBounds2D().intersects(box) && shape.intersects(box);
  }

  /** Cautions and names of holds say the opposite where their end is missing. */
  @ParameterizedTest
  @MethodSource("papers")
  void whatIsSaidIsSaidToTheEnd(Handout kind, String language) {
    List<String> found = new ArrayList<>();
    Map<Map<String, Object>, StringBuilder> texts = new IdentityHashMap<>();
    for (Page page : pages(kind, language)) {
      StringBuilder text = texts.computeIfAbsent(page.values(), v -> new StringBuilder());
      text.append(page.text());
      if (page.side() == sides(kind) - 1) {
        if (text.indexOf("…") >= 0) {
          found.add(job(page) + " is cut: " + text);
        }
        said(page).stream()
            .filter(said -> text.indexOf(plain(said)) < 0)
            .forEach(said -> found.add(job(page) + ": " + said + " is not in " + text));
      }
    }
    assertEquals(List.of(), shortened(found));
  }

  /** What has to be whole: of a caution its first sentence, and what a date is of. */
  private static List<String> said(Page page) {
    JobView view = page.made().view();
    List<String> said = new ArrayList<>();
    for (String key : List.of("sight", "danger")) {
      String caution = (String) page.values().getOrDefault(key, "");
      said.add(caution.replaceFirst("^(.*?[.!])(\\s.*|$)", "$1"));
    }
    if (page.values().containsKey("dates")) {
      page.made().dates().forEach(r -> said.add(When.shortLabel(r, view.words())));
    }
    return said;
  }

  private static String plain(String text) {
    return java.text.Normalizer.normalize(text, java.text.Normalizer.Form.NFKC)
        .replaceAll(UNSEEN, "")
        .replaceAll("[\u064B-\u0652\u0670]", "");
  }

  /** A code needs four of its modules free on each side (ISO/IEC 18004:2015). */
  @ParameterizedTest
  @MethodSource("papers")
  void aCodeStandsFree(Handout kind, String language) {
    List<String> found = new ArrayList<>();
    for (Page page : pages(kind, language)) {
      if (kind == Handout.HANG_TAG && page.side() == 0) {
        continue;
      }
      Shape code = PrintedShapes.code(page.shapes());
      Rectangle2D free = free(code, page);
      if (!whole(page).contains(free)) {
        found.add(job(page) + ": the code's border is cut");
      }
      for (PrintedInk ink : page.ink()) {
        if (ink.box().intersects(free)) {
          found.add(job(page) + ": " + ink.text() + " is too near to the code");
        }
      }
      for (Shape shape : page.shapes()) {
        if (shape != code && shape.intersects(free)) {
          found.add(job(page) + ": a line at " + shape.getBounds2D() + " is too near to the code");
        }
      }
    }
    assertEquals(List.of(), shortened(found));
  }

  private static Rectangle2D whole(Page page) {
    PDRectangle cut = page.cut();
    return new Rectangle2D.Double(
        cut.getLowerLeftX(), cut.getLowerLeftY(), cut.getWidth(), cut.getHeight());
  }

  /** The code with its border, a tenth of a millimetre less, as places are rounded. */
  private static Rectangle2D free(Shape code, Page page) {
    Rectangle2D box = code.getBounds2D();
    double border = QrCode.QUIET_ZONE * box.getWidth() / page.modules() - PaperFormat.points(0.1);
    return new Rectangle2D.Double(
        box.getX() - border,
        box.getY() - border,
        box.getWidth() + 2 * border,
        box.getHeight() + 2 * border);
  }

  /** What is cut runs over the cut or keeps away from it. */
  @ParameterizedTest
  @MethodSource("papers")
  void theMarginIsClear(Handout kind, String language) {
    List<String> found = new ArrayList<>();
    double beside = PaperFormat.points(beside(kind));
    double above = PaperFormat.points(above(kind));
    for (Page page : pages(kind, language)) {
      Rectangle2D whole = whole(page);
      Rectangle2D inner =
          new Rectangle2D.Double(
              whole.getX() + beside,
              whole.getY() + above,
              whole.getWidth() - 2 * beside,
              whole.getHeight() - 2 * above);
      for (PrintedInk ink : page.ink()) {
        if (ink.box().intersects(whole) && !inner.contains(ink.box())) {
          found.add(job(page) + ": " + ink.text() + " is in the margin");
        }
      }
      for (Shape shape : page.shapes()) {
        boolean apart = whole.contains(shape.getBounds2D()) && !isCode(shape);
        if (apart && !inner.contains(shape.getBounds2D())) {
          found.add(job(page) + ": a line at " + shape.getBounds2D() + " is in the margin");
        }
      }
    }
    assertEquals(List.of(), shortened(found));
  }

  /** Its border is its margin. */
  private static boolean isCode(Shape shape) {
    return PrintedShapes.outlines(shape) > 100;
  }

  /** From the cut to what is printed left and right, millimetres. */
  private static double beside(Handout kind) {
    return switch (kind) {
      case CARE_A5 -> 14.7;
      case CARE_LETTER -> 10.5;
      case LABEL_SMALL -> 2;
      default -> 2.8;
    };
  }

  /** From the cut to what is printed above and below, millimetres. */
  private static double above(Handout kind) {
    return switch (kind) {
      case CARE_A5, CARE_LETTER -> 9.5;
      case WINDOW_UP, LABEL_SMALL -> 1.2;
      default -> 2;
    };
  }

  private static List<String> shortened(List<String> found) {
    return found.size() > 12 ? found.subList(0, 12) : found;
  }
}
