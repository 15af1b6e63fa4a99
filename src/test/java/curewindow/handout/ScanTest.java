package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.handout.SpoiledCodes.Spoiled;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.told.JobView;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * The proof that codes scan: every handout is rasterised at 300 and 600 dpi, its code is spoiled in
 * many ways, and two readers that know nothing of each other read it. A picture counts as read
 * where a reader finds the very address on it, or on the same picture as a camera would see it from
 * farther away, with about four or three dots a module. What each reader manages is printed, and
 * stands in the manual.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class ScanTest {

  private static final String SMALLEST = "smallest code";
  private static final List<Integer> DOTS = List.of(4, 3);
  private static final List<Integer> DPI = List.of(300, 600);

  @TempDir static Path folder;

  private final Map<String, List<Spoiled>> codes = new LinkedHashMap<>();

  /** What a reader finds on some pictures, in their order; empty where nothing. */
  private interface Reader {

    List<String> read(List<BufferedImage> pictures) throws Exception;
  }

  @BeforeAll
  void spoilAll() throws Exception {
    JobView usual = SampleJobs.tinted().shippedWords().view();
    for (Handout kind : Handout.values()) {
      List<Integer> often = kind == Handout.WALLET ? List.of(300) : List.of();
      codes.put(kind.id(), spoiled(kind, usual, new ShopFiles(folder), often));
    }
    Path templates = Files.createDirectories(folder.resolve("site-templates"));
    Files.writeString(
        templates.resolve("window-up.html"),
        "<html xmlns:th='x'><body><object th:each='card : ${cards}' class='code'"
            + " type='application/x-code' th:attr='data-code=${card.code}'/></body></html>");
    Files.writeString(
        templates.resolve("window-up.css"),
        ".code { position: absolute; left: 40mm; top: 30mm; width: 18mm; height: 18mm; }");
    codes.put(SMALLEST, spoiled(Handout.WINDOW_UP, smallest(), new ShopFiles(folder), DPI));
  }

  /** The longest address with which a code is still made for the smallest square. */
  private static JobView smallest() {
    String site = "https://" + "care.".repeat(16) + "example/C/";
    JobView view = SampleJobs.tinted().shippedWords().site(site).view();
    QrCode code = HandoutPress.code(view, Handout.WINDOW_UP).orElseThrow();
    double module = code.module(HandoutPress.codeSide(Handout.WINDOW_UP));
    assertEquals("M 0.40", code.level() + String.format(Locale.ROOT, " %.2f", module));
    return view;
  }

  /** Of some resolutions more pictures of each kind. */
  private static List<Spoiled> spoiled(
      Handout kind, JobView view, ShopFiles files, List<Integer> often) throws Exception {
    Problems problems = new Problems();
    byte[] pdf =
        HandoutPress.read(files, kind, problems)
            .flatMap(press -> press.print(List.of(view), PaperChoice.on(SheetPaper.NONE), problems))
            .orElseThrow(() -> new AssertionError(problems.all()));
    QrCode code = HandoutPress.code(view, kind).orElseThrow();
    int page = kind == Handout.HANG_TAG ? 1 : 0;
    List<Spoiled> spoiled = new ArrayList<>();
    try (PrintedCard card = new PrintedCard(pdf)) {
      for (int dpi : DPI) {
        var whole = new PDFRenderer(card.pdf()).renderImageWithDPI(page, dpi, ImageType.GRAY);
        double side = HandoutPress.codeSide(kind) * dpi / 25.4;
        spoiled.addAll(SpoiledCodes.of(whole, code, side, often.contains(dpi)));
      }
    }
    return spoiled;
  }

  @Test
  void zxingReadsThem() throws Exception {
    judge(
        "ZXing",
        pictures ->
            pictures.parallelStream()
                .map(p -> CodeReaders.zxing(p).map(r -> r.getText()).orElse(""))
                .toList());
  }

  @Test
  void zbarReadsThem() throws Exception {
    judge("zbarimg", pictures -> CodeReaders.zbar(pictures, folder));
  }

  private void judge(String name, Reader reader) throws Exception {
    Map<String, Map<Harm, Tally>> tallies = new LinkedHashMap<>();
    List<Spoiled> all = codes.values().stream().flatMap(List::stream).toList();
    Map<Spoiled, Boolean> read = new IdentityHashMap<>();
    note(all, Spoiled::picture, reader, read);
    for (int dots : DOTS) {
      note(all.stream().filter(s -> !read.get(s)).toList(), s -> s.farther(dots), reader, read);
    }
    codes.forEach(
        (column, spoiled) -> {
          Map<Harm, Tally> rows = tallies.computeIfAbsent(column, c -> new EnumMap<>(Harm.class));
          spoiled.forEach(s -> rows.merge(s.harm(), Tally.of(read.get(s)), Tally::plus));
        });
    System.out.println(table(name, tallies));
    List<String> under = new ArrayList<>();
    for (Harm harm : Harm.values()) {
      under.addAll(under(harm, tallies));
    }
    assertEquals(List.of(), under, name);
  }

  /**
   * What is under the floor: of the usual codes all formats together, as few pictures of one format
   * say little about chance; though each format has to be read at least once.
   */
  private static List<String> under(Harm harm, Map<String, Map<Harm, Tally>> tallies) {
    List<String> under = new ArrayList<>();
    Tally usual = new Tally(0, 0);
    for (var column : tallies.entrySet()) {
      Tally tally = column.getValue().get(harm);
      boolean smallest = column.getKey().equals(SMALLEST);
      usual = smallest ? usual : usual.plus(tally);
      boolean never = harm.floor(smallest) > 0 && tally.read() == 0;
      if (never || smallest && tally.under(harm.floor(true))) {
        under.add(column.getKey() + ", " + harm.title() + ": " + tally);
      }
    }
    if (usual.under(harm.floor(false))) {
      under.add("usual codes, " + harm.title() + ": " + usual);
    }
    return under;
  }

  private static void note(
      List<Spoiled> some,
      Function<Spoiled, BufferedImage> seen,
      Reader reader,
      Map<Spoiled, Boolean> read)
      throws Exception {
    List<String> found = reader.read(some.stream().map(seen).toList());
    assertEquals(some.size(), found.size());
    for (int i = 0; i < some.size(); i++) {
      read.put(some.get(i), found.get(i).equals(some.get(i).of().text()));
    }
  }

  /** How many of some pictures were read. */
  private record Tally(int read, int of) {

    static Tally of(boolean read) {
      return new Tally(read ? 1 : 0, 1);
    }

    Tally plus(Tally other) {
      return new Tally(read + other.read, of + other.of);
    }

    boolean under(double floor) {
      return read < floor * of;
    }

    @Override
    public String toString() {
      return read + " of " + of;
    }
  }

  /** As it stands in the manual. */
  private static String table(String name, Map<String, Map<Harm, Tally>> tallies) {
    StringBuilder table = new StringBuilder("| " + name + " | ");
    table.append(String.join(" | ", tallies.keySet())).append(" |\n");
    table.append("|---".repeat(tallies.size() + 1)).append("|\n");
    for (Harm harm : Harm.values()) {
      table.append("| ").append(harm.title()).append(" | ");
      table.append(
          tallies.values().stream()
              .map(rows -> rows.get(harm).toString())
              .collect(Collectors.joining(" | ")));
      table.append(" |\n");
    }
    assertTrue(Arrays.stream(Harm.values()).allMatch(h -> table.indexOf(h.title()) > 0));
    return table.toString();
  }
}
