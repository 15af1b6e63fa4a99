package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import curewindow.handout.PaintedInks.Painted;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.Ink;
import curewindow.shop.InkChoice;
import curewindow.shop.Looks;
import curewindow.shop.PaperChoice;
import curewindow.shop.PrintingCondition;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.shop.Units;
import curewindow.told.JobView;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The inks of every handout, read back by a program that knows nothing of the one that wrote it.
 */
final class InkTest {

  static final String SPOT = "Quillhaven Rust";

  @TempDir private Path folder;
  private final Problems problems = new Problems();

  static InkChoice inks(Ink ink) {
    return new InkChoice(ink, Optional.of(SPOT), Optional.of(PrintingCondition.FOGRA39));
  }

  private byte[] bytes(Handout kind, SheetPaper paper, Ink ink) {
    JobView view = SampleJobs.tinted().shippedWords().view();
    List<JobView> views = new ArrayList<>(List.of(view, SampleJobs.longest("ar").view()));
    byte[] pdf =
        HandoutPress.read(new ShopFiles(Path.of("no-such-shop")), kind, problems)
            .flatMap(p -> p.print(views, new PaperChoice(paper, 1, inks(ink)), problems))
            .orElseThrow();
    assertFalse(problems.hasErrors());
    return pdf;
  }

  /** Every handout on every paper. */
  static Stream<List<Object>> all() {
    return Stream.of(Handout.values())
        .flatMap(kind -> Stream.of(SheetPaper.NONE, SheetPaper.A4).map(p -> List.of(kind, p)));
  }

  /** Every handout that a print shop prints, on every paper. */
  static Stream<List<Object>> plates() {
    return all().filter(which -> !PaperFormat.of((Handout) which.get(0)).edge().roll());
  }

  private PaintedInks painted(List<Object> which, Ink ink) throws IOException {
    return PaintedInks.of(bytes((Handout) which.get(0), (SheetPaper) which.get(1), ink));
  }

  /** The reader sees what is to be found nowhere else. */
  @Test
  void onAScreenThereIsRedGreenAndBlue() throws Exception {
    PaintedInks inks = painted(List.of(Handout.WALLET, SheetPaper.A4), Ink.SCREEN);
    assertTrue(inks.spaces().contains("DeviceRGB"), inks.spaces()::toString);
    assertTrue(inks.painted().stream().anyMatch(p -> p.what().equals("TEXT") && p.size() < 9));
  }

  @ParameterizedTest
  @MethodSource("all")
  void oneInkIsBlackAlone(List<Object> which) throws Exception {
    PaintedInks inks = painted(which, Ink.BLACK);
    assertEquals(Set.of("DeviceGray"), inks.spaces());
    assertEquals(Set.of(), inks.forbidden());
    codeAndSmallTypeAreSolid(inks);
  }

  @ParameterizedTest
  @EnumSource(Ink.class)
  void labelsFromARollAreBlackAloneWhateverTheInks(Ink ink) throws Exception {
    for (Handout kind : List.of(Handout.LABEL_62, Handout.LABEL_4X6, Handout.LABEL_SMALL)) {
      PaintedInks inks = painted(List.of(kind, SheetPaper.A4), ink);
      assertEquals(Set.of("DeviceGray"), inks.spaces());
      assertEquals(Set.of(), inks.forbidden());
    }
  }

  @ParameterizedTest
  @MethodSource("plates")
  void processHasFourInks(List<Object> which) throws Exception {
    PaintedInks inks = painted(which, Ink.PROCESS);
    assertEquals(marked(which, "DeviceCMYK"), inks.spaces());
    assertEquals(Set.of(), inks.forbidden());
    codeAndSmallTypeAreSolid(inks);
    assertTrue(inks.painted().stream().anyMatch(p -> !p.inks().isBlackAlone()), "the accent");
  }

  @ParameterizedTest
  @MethodSource("plates")
  void spotHasBlackAndTheShopsColor(List<Object> which) throws Exception {
    PaintedInks inks = painted(which, Ink.SPOT);
    assertEquals(
        marked(which, "DeviceGray", "Separation " + SPOT.replace(" ", "#20")), inks.spaces());
    assertEquals(Set.of(), inks.forbidden());
    codeAndSmallTypeAreSolid(inks);
  }

  /** A care sheet on a page of its own is not cut; on a sheet every handout is. */
  private static Set<String> marked(List<Object> which, String... spaces) {
    Set<String> all = new TreeSet<>(List.of(spaces));
    boolean uncut = PaperFormat.of((Handout) which.get(0)).bleed() == 0;
    if (which.get(1) != SheetPaper.NONE || !uncut) {
      all.add("Separation All");
    }
    return all;
  }

  private static void codeAndSmallTypeAreSolid(PaintedInks inks) {
    int codes = 0;
    int small = 0;
    for (Painted one : inks.painted()) {
      boolean code = one.what().equals("FILL") && one.moves() > 100;
      boolean type = one.what().equals("TEXT") && one.size() < 12;
      if (code || type) {
        assertTrue(one.inks().isBlackAlone(), one::toString);
        assertEquals(code || one.inks().black() > 0 ? 1 : 0, one.inks().black(), one::toString);
        codes += code ? 1 : 0;
        small += type ? 1 : 0;
      }
    }
    assertTrue(codes >= 2 && small > 5, codes + " codes, " + small + " small texts");
  }

  @ParameterizedTest
  @EnumSource(Ink.class)
  void theSameJobsGiveTheSameBytes(Ink ink) {
    for (Handout kind : List.of(Handout.WALLET, Handout.CARE_A5)) {
      assertArrayEquals(bytes(kind, SheetPaper.A4, ink), bytes(kind, SheetPaper.A4, ink));
    }
  }

  /**
   * What ISO 15930-4:2003 asks for PDF/X-1a:2003 beside the inks; from memory, with the keys of the
   * PDF Reference, fourth edition (PDF 1.5), 10.10.4 and table 10.2.
   */
  @ParameterizedTest
  @MethodSource("plates")
  void theFileIsWhatItClaims(List<Object> which) throws Exception {
    byte[] pdf = bytes((Handout) which.get(0), (SheetPaper) which.get(1), Ink.PROCESS);
    String plain = new String(pdf, StandardCharsets.ISO_8859_1);
    assertTrue(plain.startsWith("%PDF-1.4\n"));
    assertFalse(plain.contains("/ObjStm") || plain.contains("/XRef"), "newer than PDF 1.4");
    try (PdfReader reader = new PdfReader(pdf)) {
      PdfDictionary catalog = reader.getCatalog();
      assertNull(catalog.get(PdfName.VERSION));
      assertEquals("[DisplayDocTitle]", keys(catalog.getAsDict(PdfName.VIEWERPREFERENCES)));
      PdfDictionary intent = catalog.getAsArray(PdfName.OUTPUTINTENTS).getAsDict(0);
      assertEquals("/GTS_PDFX", intent.getAsName(PdfName.S).toString());
      assertEquals("FOGRA39", string(intent, "OutputConditionIdentifier"));
      assertEquals("http://www.color.org", string(intent, "RegistryName"));
      PdfDictionary info = reader.getTrailer().getAsDict(PdfName.INFO);
      assertEquals("PDF/X-1a:2003", string(info, "GTS_PDFXVersion"));
      assertEquals("/False", info.getAsName(PdfName.TRAPPED).toString());
      for (String needed : List.of("Title", "Creator", "Producer", "CreationDate", "ModDate")) {
        assertFalse(string(info, needed).isEmpty(), needed);
      }
      assertEquals(2, reader.getTrailer().getAsArray(PdfName.ID).size());
      assertNull(reader.getTrailer().get(PdfName.ENCRYPT));
      for (int page = 1; page <= reader.getNumberOfPages(); page++) {
        boxes(reader.getPageN(page));
      }
      metadata(new String(reader.getMetadata(), StandardCharsets.UTF_8), info);
    }
  }

  private static String keys(PdfDictionary dictionary) {
    return dictionary.getKeys().stream().map(k -> k.toString().substring(1)).toList().toString();
  }

  private static String string(PdfDictionary dictionary, String key) {
    return dictionary.getAsString(new PdfName(key)).toUnicodeString();
  }

  /** One of trim and art, not both; media holds bleed, and bleed holds trim. */
  private static void boxes(PdfDictionary page) {
    assertNull(page.get(PdfName.ARTBOX));
    assertNull(page.get(PdfName.ANNOTS));
    assertNotNull(page.get(PdfName.TRIMBOX));
    holds(page.getAsArray(PdfName.MEDIABOX), page.getAsArray(PdfName.BLEEDBOX));
    holds(page.getAsArray(PdfName.BLEEDBOX), page.getAsArray(PdfName.TRIMBOX));
  }

  private static void holds(PdfArray outer, PdfArray inner) {
    for (int i = 0; i < 4; i++) {
      double out = outer.getAsNumber(i).doubleValue();
      double in = inner.getAsNumber(i).doubleValue();
      assertTrue(i < 2 ? out <= in : out >= in, outer + " does not hold " + inner);
    }
  }

  private static void metadata(String packet, PdfDictionary info) throws Exception {
    var factory = javax.xml.parsers.DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    var parsed =
        factory
            .newDocumentBuilder()
            .parse(new org.xml.sax.InputSource(new java.io.StringReader(packet.strip())));
    assertEquals(
        string(info, "Title"), parsed.getElementsByTagName("rdf:li").item(0).getTextContent());
    assertEquals(
        "PDF/X-1a:2003",
        parsed.getElementsByTagName("pdfx:GTS_PDFXVersion").item(0).getTextContent());
    assertEquals("False", parsed.getElementsByTagName("pdf:Trapped").item(0).getTextContent());
    assertTrue(packet.contains("<xmpMM:DocumentID>uuid:"));
  }

  /** A file for a screen or a label printer is for no print shop, and says nothing to one. */
  @ParameterizedTest
  @EnumSource(
      value = Ink.class,
      names = {"SCREEN", "BLACK"})
  void nothingElseClaimsToBeForAPrintShop(Ink ink) throws Exception {
    try (PdfReader reader = new PdfReader(bytes(Handout.WALLET, SheetPaper.NONE, ink))) {
      assertNull(reader.getCatalog().get(PdfName.OUTPUTINTENTS));
      assertNull(reader.getInfo().get("GTS_PDFXVersion"));
    }
  }

  @ParameterizedTest
  @CsvSource({"US, CGATS TR 006", "METRIC, FOGRA39"})
  void theUnitsChooseAConditionWhereTheShopDoesNot(Units units, String condition) {
    InkChoice none = new InkChoice(Ink.PROCESS, Optional.empty(), Optional.empty());
    assertEquals(condition, none.orUsual(units).condition().orElseThrow().id());
    assertEquals(inks(Ink.PROCESS), inks(Ink.PROCESS).orUsual(units));
  }

  /** On a screen {@link ScanTest} reads it. */
  @ParameterizedTest
  @EnumSource(value = Ink.class, mode = EnumSource.Mode.EXCLUDE, names = "SCREEN")
  void theCodeIsReadInAllInks(Ink ink) throws Exception {
    String address = PrintedAddress.of(SampleJobs.tinted().view().address()).code();
    List<BufferedImage> pictures = new ArrayList<>();
    for (Handout kind : List.of(Handout.WALLET, Handout.HANG_TAG, Handout.WINDOW_UP)) {
      try (PrintedCard pdf = new PrintedCard(bytes(kind, SheetPaper.NONE, ink))) {
        int back = kind == Handout.HANG_TAG ? 1 : 0;
        assertEquals(address, pdf.scanned(back), () -> kind + " " + ink);
        pictures.add(pdf.picture(back));
      }
    }
    assertEquals(Collections.nCopies(3, address), CodeReaders.zbar(pictures, folder));
  }

  /** A style sheet that asks for what inks cannot do is told, and nothing is printed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "background-image: linear-gradient(#ffffff, #b4451f) | gradient",
        "color: rgba(0, 0, 0, 0.5) | shine through",
      })
  void whatInksCannotDoIsTold(String style, String said) throws Exception {
    Path file = folder.resolve("site-templates/card.css");
    Files.createDirectories(file.getParent());
    String own = Files.readString(Path.of("site-templates/card.css"));
    Files.writeString(file, own + ".edge { " + style + "; } .what { " + style + "; }\n");
    List<JobView> views = List.of(SampleJobs.tinted().view());
    for (Ink ink : Ink.values()) {
      Problems found = new Problems();
      Optional<byte[]> pdf =
          HandoutPress.read(new ShopFiles(folder), Handout.WALLET, found)
              .flatMap(p -> p.print(views, new PaperChoice(SheetPaper.NONE, 1, inks(ink)), found));
      assertEquals(ink == Ink.SCREEN, pdf.isPresent(), ink + style);
      assertEquals(ink == Ink.SCREEN ? 0 : 1, found.all().size(), () -> found.all().toString());
      for (Problem problem : found.all()) {
        assertEquals("ink-mistake", problem.code());
        assertTrue(problem.message().contains(said), problem::message);
      }
    }
  }

  /** The shop mends the file in which it is, not a template that it never saw. */
  @Test
  void aGradientInALogoIsToldAtTheLogo() throws Exception {
    String logo =
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 90 30'><linearGradient id='g'>"
            + "<stop offset='0' stop-color='#fff'/><stop offset='1' stop-color='#000'/>"
            + "</linearGradient><rect width='90' height='30' fill='url(#g)'/></svg>";
    Problems found = new Problems();
    List<JobView> views = List.of(SampleJobs.tinted().look(Looks.svg(folder, logo)).view());
    HandoutPress.read(new ShopFiles(folder), Handout.WALLET, found)
        .flatMap(
            p -> p.print(views, new PaperChoice(SheetPaper.NONE, 1, inks(Ink.PROCESS)), found));
    assertEquals(1, found.all().size(), () -> found.all().toString());
    assertEquals("logo.svg", found.all().get(0).file());
  }

  @Test
  void otherPagesHaveAnotherId() throws Exception {
    byte[] one = bytes(Handout.WALLET, SheetPaper.A4, Ink.PROCESS);
    byte[] other = bytes(Handout.WINDOW_UP, SheetPaper.A4, Ink.PROCESS);
    assertNotEquals(id(one), id(other));
  }

  private static String id(byte[] pdf) throws IOException {
    try (PdfReader reader = new PdfReader(pdf)) {
      return new String(reader.getMetadata(), StandardCharsets.UTF_8)
          .replaceAll("(?s).*uuid:([^<]*).*", "$1");
    }
  }
}
