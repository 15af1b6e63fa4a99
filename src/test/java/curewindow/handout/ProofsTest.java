package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.cure.HoldKind;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.Ink;
import curewindow.shop.InkChoice;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.told.JobView;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Makes the proofs in {@code docs/proofs}: with {@code -Dpictures=true} only, as they are looked at
 * by people. A row for each language; a usual job of a shop with a logo and a color, the longest
 * texts, four services, and one date; and a row in one ink.
 */
@EnabledIfSystemProperty(named = "pictures", matches = "true")
final class ProofsTest {

  private static final Path FOLDER = Path.of("docs/proofs");
  private static final Color TABLE = new Color(0xd8dad6);
  private static final int GAP = 12;

  @ParameterizedTest
  @EnumSource(Handout.class)
  void proofs(Handout kind) throws Exception {
    List<List<BufferedImage>> rows = new ArrayList<>();
    for (String language : List.of("en", "es", "ar")) {
      List<BufferedImage> row = new ArrayList<>();
      row.addAll(pages(kind, DemoPapers.job(1, language), Ink.SCREEN));
      row.addAll(pages(kind, SampleJobs.longest(language).view(), Ink.SCREEN));
      row.addAll(pages(kind, DemoPapers.job(4, language), Ink.SCREEN));
      row.addAll(pages(kind, shortest(language), Ink.SCREEN));
      rows.add(row);
    }
    List<BufferedImage> black = new ArrayList<>();
    black.addAll(pages(kind, DemoPapers.job(1, "en"), Ink.BLACK));
    black.addAll(pages(kind, SampleJobs.longest("es").view(), Ink.BLACK));
    black.addAll(pages(kind, DemoPapers.job(4, "ar"), Ink.BLACK));
    black.addAll(pages(kind, shortest("en"), Ink.BLACK));
    rows.add(black);
    Files.createDirectories(FOLDER);
    ImageIO.write(table(rows), "png", FOLDER.resolve(kind.id() + ".png").toFile());
  }

  private static JobView shortest(String language) {
    return SampleJobs.bare()
        .shippedWords()
        .language(language)
        .firstName("")
        .car("")
        .shopName("Ida")
        .phone("5550142")
        .site("https://ida.example/")
        .hold("windows-up", HoldKind.HOLD, "2026-12-03T12:00")
        .view();
  }

  private static List<BufferedImage> pages(Handout kind, JobView view, Ink ink) throws Exception {
    Problems problems = new Problems();
    PaperChoice paper = new PaperChoice(SheetPaper.NONE, 1, InkChoice.USUAL.with(ink));
    byte[] bytes =
        HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), kind, problems)
            .orElseThrow()
            .print(List.of(view), paper, problems)
            .orElseThrow();
    assertEquals(List.of(), problems.all());
    List<BufferedImage> pages = new ArrayList<>();
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      int sides = kind == Handout.WINDOW_UP ? 1 : pdf.getNumberOfPages();
      for (int page = 0; page < sides; page++) {
        pages.add(new PDFRenderer(pdf).renderImageWithDPI(page, dpi(kind), ImageType.RGB));
      }
    }
    return pages;
  }

  private static int dpi(Handout kind) {
    return PaperFormat.of(kind).cut().height() > 110 ? 72 : 110;
  }

  private static BufferedImage table(List<List<BufferedImage>> rows) {
    int columns = rows.stream().mapToInt(List::size).max().orElseThrow();
    int wide = rows.get(0).get(0).getWidth() + GAP;
    int high = rows.get(0).get(0).getHeight() + GAP;
    BufferedImage table =
        new BufferedImage(
            columns * wide + GAP, rows.size() * high + GAP, BufferedImage.TYPE_INT_RGB);
    Graphics2D on = table.createGraphics();
    on.setColor(TABLE);
    on.fillRect(0, 0, table.getWidth(), table.getHeight());
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        on.drawImage(rows.get(row).get(column), GAP + column * wide, GAP + row * high, null);
      }
    }
    on.dispose();
    return table;
  }
}
