package curewindow.handout;

import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.Handout;
import curewindow.shop.HandoutChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.Shop;
import curewindow.shop.ShopFiles;
import curewindow.shop.Units;
import curewindow.told.JobView;
import curewindow.words.Words;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Document;

/**
 * The paper of a day for the counter, as a PDF and for a screen, from a template of the shop
 * folder. The same day of the same jobs gives the same bytes.
 */
public final class OfficePaper {

  private static final String NAME = "office-day";

  private final PaperTemplate paper;
  private final PaperTemplate screen;

  private OfficePaper(PaperTemplate paper, PaperTemplate screen) {
    this.paper = paper;
    this.screen = screen;
  }

  /**
   * Reads the template.
   *
   * @param files the shop folder laid over the program's own files
   * @param problems where it is said that a file cannot be read
   * @return the paper, or empty where there is such a problem
   */
  public static Optional<OfficePaper> read(ShopFiles files, Problems problems) {
    Optional<PaperTemplate> paper = read(files, "-paper", problems);
    Optional<PaperTemplate> screen = read(files, "-screen", problems);
    return paper.isPresent() && screen.isPresent()
        ? Optional.of(new OfficePaper(paper.get(), screen.get()))
        : Optional.empty();
  }

  private static Optional<PaperTemplate> read(ShopFiles files, String where, Problems problems) {
    List<String> styles = List.of(NAME, NAME + where);
    return PaperTemplate.read(files, new PaperFormat.TemplateFiles(NAME, styles), problems);
  }

  /**
   * The paper for a screen.
   *
   * @param jobs the jobs that the day was gathered from
   * @param day the day
   * @param problems where mistakes of the template are told
   * @return HTML that needs no other file, or empty where the template has a mistake
   */
  public Optional<String> html(OfficeJobs jobs, OfficeDay day, Problems problems) {
    return screen.html(OfficeValues.of(jobs, day, false), jobs.shop().look(), problems);
  }

  /**
   * The paper as a PDF of as many pages as it takes, on {@link #paper}.
   *
   * @param jobs the jobs that the day was gathered from
   * @param day the day
   * @param problems where mistakes of the template are told, and signs that no font has
   * @return the PDF, or empty where the template has a mistake
   */
  public Optional<byte[]> pdf(OfficeJobs jobs, OfficeDay day, Problems problems) {
    Map<String, Object> values = OfficeValues.of(jobs, day, true);
    Optional<Document> filled =
        paper.fill(
            values, jobs.shop().look(), pageRule(paper(jobs.shop(), jobs.words())), problems);
    // The names of jobs with problems are told with those.
    filled
        .map(PaperSigns::keepPrintable)
        .map(lacking -> without(lacking, String.join("", day.leftOut())))
        .ifPresent(lacking -> tellLacking(lacking, jobs, problems));
    Instant made = jobs.start(day.day());
    String title = jobs.words().text("office.title") + ", " + jobs.shop().name();
    PaperPress.Label label = new PaperPress.Label(title, jobs.words().language(), made);
    return filled.flatMap(
        document ->
            new PaperPress(paper, jobs.shop().look(), problems)
                .print(document, PaperPress.Codes.NONE, label, PaperPress.Finish.NONE));
  }

  /**
   * The paper that a shop's office has: what its handouts are laid on; where they are laid on none,
   * Letter for a shop whose handouts or units go by inches, else A4.
   *
   * @param shop the shop
   * @param words the words of the shop's language
   * @return A4 or Letter
   */
  public static SheetPaper paper(Shop shop, Words words) {
    HandoutChoice usual = shop.handout();
    Optional<SheetPaper> named = usual.sheet().filter(sheet -> sheet != SheetPaper.NONE);
    if (named.isPresent()) {
      return named.get();
    }
    boolean inches =
        usual.as() == Handout.CARE_LETTER
            || usual.as() == Handout.WALLET_INCH
            || usual.as() == Handout.LABEL_4X6
            || usual.as() == Handout.LABEL_SMALL
            || words.units() == Units.US;
    return inches ? SheetPaper.LETTER : SheetPaper.A4;
  }

  private static String pageRule(SheetPaper paper) {
    return String.format(
        Locale.ROOT,
        "@page{size:%s}",
        paper == SheetPaper.LETTER ? "215.9mm 279.4mm" : "210mm 297mm");
  }

  /** Names and cars are told with their file; what else lacks signs are texts of the language. */
  private static void tellLacking(String lacking, OfficeJobs jobs, Problems problems) {
    String left = lacking;
    for (JobView view : lacking.isEmpty() ? List.<JobView>of() : jobs.views()) {
      String text = view.job().firstName() + view.job().car().text();
      String fix = "write the name or the car's text without it";
      problems.addAll(PaperProblems.lacking(common(text, lacking), view.job().where(), fix));
      left = without(left, text);
    }
    String name = jobs.shop().name();
    Where shop = new Where("shop.yaml", 0, 0, "name");
    problems.addAll(
        PaperProblems.lacking(common(name, lacking), shop, "write the shop's name without it"));
    problems.addAll(
        PaperProblems.lacking(
            without(left, name),
            Where.file("content/words/" + jobs.words().language()),
            "have the office's papers in a language with Latin, Greek, Cyrillic, Hebrew or Arabic"
                + " letters"));
  }

  private static String common(String text, String signs) {
    return without(signs, without(signs, text));
  }

  private static String without(String signs, String known) {
    return PaperSigns.without(signs, c -> known.indexOf(c) >= 0);
  }
}
