package curewindow.handout;

import curewindow.cure.Release;
import curewindow.page.JobView;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.ShopFiles;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Document;

/**
 * Makes the cards that customers carry away: 85 by 55 mm, each on a sheet of its own with bleed and
 * crop marks, from the template {@code site-templates/card.html} and its style sheet. The same jobs
 * give the same bytes.
 */
public final class CardPress {

  private static final CardFormat FORMAT = CardFormat.WALLET;

  private final PaperTemplate template;

  private CardPress(PaperTemplate template) {
    this.template = template;
  }

  /**
   * Reads the template.
   *
   * @param files the shop folder laid over the program's own files
   * @param problems where it is said that a file cannot be read
   * @return the press, or empty where there is such a problem
   */
  public static Optional<CardPress> read(ShopFiles files, Problems problems) {
    return PaperTemplate.read(files, "card", problems).map(CardPress::new);
  }

  /**
   * The cards of several jobs, in the order given. A job whose address is too long for a code that
   * scans is left out and told.
   *
   * @param views the jobs
   * @param problems where it is said what is wrong with the template or an address
   * @return a PDF with one page a card, or empty where there is no card to print or the template
   *     has a mistake
   */
  public Optional<byte[]> cards(List<JobView> views, Problems problems) {
    List<JobView> printed = new ArrayList<>();
    List<QrCode> codes = new ArrayList<>();
    List<Map<String, Object>> cards = new ArrayList<>();
    for (JobView view : views) {
      Optional<QrCode> code = code(view);
      if (code.isEmpty()) {
        problems.add(tooLong(view));
        continue;
      }
      lackingLetters(view).ifPresent(problems::add);
      cards.add(CardWords.of(view, codes.size()));
      codes.add(code.get());
      printed.add(view);
    }
    if (printed.isEmpty()) {
      return Optional.empty();
    }
    return filled(cards, problems)
        .flatMap(
            document ->
                new PaperPress(template.styleFile(), problems)
                    .print(document, codes, FORMAT, label(printed)));
  }

  private Optional<Document> filled(List<Map<String, Object>> cards, Problems problems) {
    Problems mistakes = new Problems();
    Optional<Document> filled = template.fill(Map.of("cards", cards), sheet(), mistakes);
    filled.ifPresent(document -> new TextBoxes(template.file(), mistakes).fit(document));
    problems.addAll(mistakes.all());
    return mistakes.hasErrors() ? Optional.empty() : filled;
  }

  /**
   * The dates that stand on a job's card.
   *
   * @param view the job
   * @return at most two releases, the most urgent first; none where the job gets no card, because
   *     its address is too long for a code that scans
   */
  public static List<Release> dates(JobView view) {
    return code(view).isPresent() ? UrgentDates.of(view, CardWords.DATES) : List.of();
  }

  /**
   * The code that a job's card carries.
   *
   * @param view the job
   * @return the code, or empty where the address is too long for modules of {@link
   *     QrCode#SMALLEST_MODULE}
   */
  public static Optional<QrCode> code(JobView view) {
    return QrCode.fitting(PrintedAddress.of(view.address()).code(), FORMAT.code());
  }

  /**
   * The side of the square that the code fills on a card, with its quiet zone.
   *
   * @return millimetres
   */
  public static double codeSide() {
    return FORMAT.code();
  }

  private static String sheet() {
    return String.format(
        Locale.ROOT, "@page{size:%smm %smm;margin:0}", FORMAT.sheetWidth(), FORMAT.sheetHeight());
  }

  private static PaperPress.Label label(List<JobView> printed) {
    JobView first = printed.get(0);
    Instant made =
        printed.stream().map(v -> v.job().pickup()).max(Comparator.naturalOrder()).orElseThrow();
    String title = first.words().text("handout.card.title", Map.of("shop", first.shop().name()));
    return new PaperPress.Label(title, first.words().language(), made);
  }

  private static Optional<Problem> lackingLetters(JobView view) {
    String shown = view.shop().name() + view.job().firstName() + view.job().car().text();
    String lacking = PaperFont.BOLD.lacking(shown) + PaperFont.TEXT.lacking(shown);
    if (lacking.isEmpty()) {
      return Optional.empty();
    }
    int first = lacking.codePointAt(0);
    return Optional.of(
        Problem.notice(
            "missing-glyph",
            view.job().where(),
            "the card's font has no sign for '"
                + Character.toString(first)
                + String.format(Locale.ROOT, "' (U+%04X), which is left out", first),
            "write the name or the car's text without it"));
  }

  private static Problem tooLong(JobView view) {
    int letters = view.address().toString().length();
    return Problem.error(
        "code-too-fine",
        new Where("shop.yaml", 0, 0, "address"),
        "the page address of job "
            + view.job().id()
            + " has "
            + letters
            + " letters, too many for a code that scans on a card",
        "shorten the address of the site, such as https://care.example/ without folders");
  }
}
