package curewindow.handout;

import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.ShopLook;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/**
 * Gets the program ready to print while it still reads the shop folder and computes dates: for a
 * single card it takes longer to load the libraries that set it than to set it. A sheet is set as
 * any other is, and thrown away.
 */
public final class PressStart {

  private static final String PAGE =
      """
      <html xmlns="http://www.w3.org/1999/xhtml" xmlns:th="http://www.thymeleaf.org"><body>
        <div class="sheet" th:each="card, at : ${cards}" th:with="one=${card.list.size() == 1}"
            th:attr="lang=${card.language}">
          <div class="card" data-room="9mm 1.1" th:class="${one ? 'card' : 'card card' + at.count}">
            <p data-box="50mm 2 9pt text" th:text="${card.text}" th:if="${card.text != ''}">A</p>
            <p data-box="50mm 1 9pt bold" th:text="|${card.text} ${card.language}|">A</p>
            <p data-box="50mm 1 9pt narrow" th:text="${card.text}">A</p>
            <p data-box="50mm 1 9pt narrow-bold" th:text="${card.text}">A</p>
            <object type="application/x-code" th:attr="data-code=${card.code}"></object>
          </div>
        </div>
      </body></html>
      """;
  private static final String STYLE =
      """
      @page { size: 105mm 75mm; margin: 0 }
      body { margin: 0; font-family: 'Card Text'; font-size: 7pt; color: #000000; }
      .sheet { position: relative; width: 105mm; height: 75mm; page-break-after: always; }
      .card { position: absolute; left: 10mm; top: 10mm; width: 85mm; border: 0.5mm solid #000000;
        border-radius: 1mm; transform: rotate(1deg); background: #ffffff; }
      .card p { margin: 0; line-height: 1.15; text-align: center; }
      object { position: absolute; left: 56mm; top: 3mm; width: 24mm; height: 24mm; }
      [dir=rtl] p { text-align: right; }
      """;
  private static final PaperFormat WALLET = PaperFormat.of(Handout.WALLET);
  private static final PaperPress.Label LABEL = new PaperPress.Label("Start", "en", Instant.EPOCH);

  private PressStart() {}

  /**
   * Begins in a thread of its own, or does nothing where there is only one processor.
   *
   * @return done when printing is ready; it never fails, as whatever is wrong is told by the
   *     printing itself
   */
  public static CompletableFuture<Void> begin() {
    return Runtime.getRuntime().availableProcessors() < 2
        ? CompletableFuture.completedFuture(null)
        : CompletableFuture.runAsync(PressStart::sheet, PressStart::aside).exceptionally(e -> null);
  }

  private static void aside(Runnable work) {
    Thread thread = new Thread(work, "press-start");
    thread.setDaemon(true);
    thread.start();
  }

  /** The sheet as a PDF. */
  static Optional<byte[]> sheet() {
    Problems problems = new Problems();
    PaperTemplate template = PaperTemplate.of("start", PAGE, STYLE);
    List<QrCode> codes = QrCode.fitting("HTTPS://CARE.EXAMPLE/", 24).stream().toList();
    Map<String, Object> card =
        Map.of("language", "en", "text", "Wait until 2 PM", "code", 0, "list", List.of(1));
    Optional<Document> filled =
        template.fill(Map.of("cards", List.of(card)), ShopLook.NONE, "", problems);
    filled.ifPresent(
        document -> new TextBoxes(template.file(), WALLET.smallest(), problems).fit(document));
    return filled.flatMap(
        document ->
            new PaperPress(template, ShopLook.NONE, problems)
                .print(
                    document, new PaperPress.Codes(codes, List.of(0)), LABEL, PressStart::single));
  }

  private static Optional<Boolean> single(PDDocument pdf, int sides) throws IOException {
    CutMarks.single(pdf, WALLET, CutMarks.Pen.BLACK);
    return Optional.of(sides == 1);
  }
}
