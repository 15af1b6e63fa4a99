package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.Result;
import com.google.zxing.ResultPoint;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.Ink;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The plates that Ghostscript makes of a handout, one for each ink. Where it is not installed this
 * is skipped, and says so; with {@code CUREWINDOW_REQUIRE_GS} set in the environment it fails.
 */
final class PlatesTest {

  private static final int DPI = 300;

  @TempDir private Path folder;

  /** The names of plates with anything on them within the cut. */
  @ParameterizedTest
  @CsvSource({
    "WALLET, BLACK, Black",
    "WALLET, PROCESS, Black Magenta Yellow",
    "WALLET, SPOT, Black Quillhaven Rust",
    "CARE_A5, SPOT, Black Quillhaven Rust",
    "CARE_A5, PROCESS, Black Magenta Yellow",
  })
  void platesHaveWhatTheyShould(Handout kind, Ink ink, String names) throws Exception {
    Map<String, BufferedImage> plates = plates(kind, ink);
    PaperFormat format = PaperFormat.of(kind);
    int inset = (int) Math.ceil(format.margin() * DPI / 25.4);
    Set<String> used = new java.util.TreeSet<>();
    plates.forEach(
        (name, plate) -> used.addAll(darkest(plate, inset) < 255 ? Set.of(name) : Set.of()));
    // The accent of the style sheets may need cyan or not.
    used.remove("Cyan");
    assertEquals(names, String.join(" ", used));
    codeIsOnOnePlate(plates);
    marksAreOnEveryPlate(plates, format, ink);
  }

  private static int darkest(BufferedImage plate, int inset) {
    int darkest = 255;
    for (int y = inset; y < plate.getHeight() - inset; y++) {
      for (int x = inset; x < plate.getWidth() - inset; x++) {
        darkest = Math.min(darkest, plate.getRaster().getSample(x, y, 0));
      }
    }
    return darkest;
  }

  /** It is read from the plate of black, and all others are bare there. */
  private static void codeIsOnOnePlate(Map<String, BufferedImage> plates) {
    Result code = CodeReaders.zxing(plates.get("Black")).orElseThrow();
    assertEquals(PrintedAddress.of(SampleJobs.tinted().view().address()).code(), code.getText());
    plates.forEach(
        (name, plate) -> {
          for (ResultPoint point : code.getResultPoints()) {
            for (int y = (int) point.getY() - 40; y < point.getY() + 40; y++) {
              for (int x = (int) point.getX() - 40; x < point.getX() + 40; x++) {
                int shade = plate.getRaster().getSample(x, y, 0);
                boolean solid = shade == 0 || shade == 255;
                assertTrue(name.equals("Black") ? solid : shade == 255, name + x + " " + y);
              }
            }
          }
        });
  }

  /** On the left edge, at the height of the lower cut. */
  private static void marksAreOnEveryPlate(
      Map<String, BufferedImage> plates, PaperFormat format, Ink ink) {
    if (format.bleed() == 0) {
      return;
    }
    int cut = (int) Math.round((format.page().height() - format.margin()) * DPI / 25.4);
    plates.forEach(
        (name, plate) -> {
          int darkest = 255;
          for (int y = cut - 3; y < cut + 4; y++) {
            darkest = Math.min(darkest, plate.getRaster().getSample(20, y, 0));
          }
          assertEquals(ink.isForPlates() || name.equals("Black"), darkest < 255, name);
        });
  }

  private Map<String, BufferedImage> plates(Handout kind, Ink ink) throws Exception {
    Problems problems = new Problems();
    byte[] pdf =
        HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), kind, problems)
            .flatMap(
                press ->
                    press.print(
                        List.of(SampleJobs.tinted().view()),
                        new PaperChoice(SheetPaper.NONE, 1, InkTest.inks(ink)),
                        problems))
            .orElseThrow();
    Files.write(folder.resolve("in.pdf"), pdf);
    Process made =
        start(
            "gs",
            "-q",
            "-dSAFER",
            "-dNOPAUSE",
            "-dBATCH",
            "-sDEVICE=tiffsep",
            "-r" + DPI,
            "-o",
            "plate%d.tif",
            "in.pdf");
    assertTrue(made.waitFor(120, TimeUnit.SECONDS));
    assertEquals(0, made.exitValue(), () -> said());
    Map<String, BufferedImage> plates = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(").tif")).toList()) {
        String name = file.getFileName().toString().replaceAll("plate1\\((.*)\\)\\.tif", "$1");
        plates.put(name, ImageIO.read(file.toFile()));
      }
    }
    return plates;
  }

  private String said() {
    try {
      return Files.readString(folder.resolve("said.txt"));
    } catch (IOException e) {
      return e.toString();
    }
  }

  private Process start(String... command) {
    try {
      return new ProcessBuilder(command)
          .directory(folder.toFile())
          .redirectErrorStream(true)
          .redirectOutput(folder.resolve("said.txt").toFile())
          .start();
    } catch (IOException e) {
      if (System.getenv("CUREWINDOW_REQUIRE_GS") != null) {
        return Assertions.fail("gs is missing, though CUREWINDOW_REQUIRE_GS asks for it", e);
      }
      return Assumptions.abort("Skipped: gs is not installed (Debian: ghostscript)");
    }
  }
}
