package curewindow.handout;

import curewindow.cure.Release;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.Ink;
import curewindow.shop.InkChoice;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopLook;
import curewindow.told.JobView;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;

/**
 * Makes what customers carry away as a PDF, from a template of the shop folder: each handout on a
 * page of its own with bleed and crop marks, or several on a sheet that is ready to be cut. The
 * same jobs give the same bytes.
 */
public final class HandoutPress {

  private final Handout kind;
  private final PaperFormat format;
  private final PaperTemplate template;

  private HandoutPress(Handout kind, PaperTemplate template) {
    this.kind = kind;
    this.format = PaperFormat.of(kind);
    this.template = template;
  }

  /**
   * Reads the template of a handout.
   *
   * @param files the shop folder laid over the program's own files
   * @param kind the handout
   * @param problems where it is said that a file cannot be read
   * @return the press, or empty where there is such a problem
   */
  public static Optional<HandoutPress> read(ShopFiles files, Handout kind, Problems problems) {
    return PaperTemplate.read(files, PaperFormat.of(kind).template(), problems)
        .map(template -> new HandoutPress(kind, template));
  }

  /**
   * A job whose handouts are in a PDF.
   *
   * @param view the job
   * @param dates the releases whose dates stand on them
   */
  public record Made(JobView view, List<Release> dates) {

    /** Copies the list. */
    public Made {
      dates = List.copyOf(dates);
    }
  }

  /**
   * A PDF with handouts.
   *
   * @param pdf its bytes
   * @param made the jobs that have one in it
   */
  public record Handouts(byte[] pdf, List<Made> made) {

    /** Copies the list. */
    public Handouts {
      made = List.copyOf(made);
    }
  }

  /** The PDF alone of {@link #handouts}. */
  Optional<byte[]> print(List<JobView> views, PaperChoice paper, Problems problems) {
    return handouts(views, paper, problems).map(Handouts::pdf);
  }

  /**
   * The handouts of several jobs, in the order given. A job that gets none is left out; one whose
   * address is too long for a code that scans is left out and told.
   *
   * @param views the jobs
   * @param paper how they are laid on paper
   * @param problems where it is said what is wrong with the template or an address
   * @return the handouts, or empty where there is nothing to print or the template has a mistake
   */
  public Optional<Handouts> handouts(List<JobView> views, PaperChoice paper, Problems problems) {
    List<JobView> printed = new ArrayList<>();
    List<QrCode> codes = new ArrayList<>();
    for (JobView view : views) {
      Optional<QrCode> code = code(view, kind);
      if (code.isEmpty()) {
        problems.add(PaperProblems.tooLong(view, format));
      } else if (isFor(view, kind)) {
        codes.add(code.get());
        printed.add(view);
      }
    }
    if (printed.isEmpty()) {
      return Optional.empty();
    }
    PaperProblems.lackingSigns(printed).forEach(problems::add);
    return filled(printed, problems)
        .flatMap(pages -> print(pages, printed, codes, paper, problems));
  }

  /**
   * The template with the values of all jobs.
   *
   * @param codes the number of the code on each handout
   * @param room how much of their lists has room
   */
  private record Pages(Document document, List<Integer> codes, ListRoom room) {}

  private Optional<Handouts> print(
      Pages pages,
      List<JobView> printed,
      List<QrCode> codes,
      PaperChoice paper,
      Problems problems) {
    ShopLook house = printed.get(0).shop().look();
    return new PaperPress(template, house, problems)
        .print(
            pages.document(),
            new PaperPress.Codes(codes, pages.codes()),
            label(printed),
            (pdf, sides) -> finish(pdf, sides, paper, Accent.bits(house), problems))
        .map(pdf -> new Handouts(pdf, made(printed, pages.room())));
  }

  private List<Made> made(List<JobView> printed, ListRoom room) {
    return IntStream.range(0, printed.size())
        .mapToObj(i -> new Made(printed.get(i), HandoutValues.dates(printed.get(i), kind, room, i)))
        .toList();
  }

  /**
   * Lays the pages; true where a printer is to turn the paper, empty where no sheet is like that.
   */
  private Optional<Boolean> finish(
      PDDocument pdf, int sides, PaperChoice paper, int accent, Problems problems)
      throws IOException {
    Optional<SheetPlan> plan =
        paper.sheet() == SheetPaper.NONE || format.edge().roll()
            ? Optional.empty()
            : Optional.of(SheetPlan.of(format, sides, paper.sheet()));
    int places = plan.map(SheetPlan::places).orElse(1);
    if (paper.start() > places) {
      problems.add(PaperProblems.noPlace(paper.start(), places));
      return Optional.empty();
    }
    InkChoice chosen = format.edge().roll() ? paper.inks().with(Ink.BLACK) : paper.inks();
    InkPress inks = new InkPress(chosen, accent);
    inks.recolor(pdf);
    if (plan.isEmpty()) {
      CutMarks.single(pdf, format, inks.marks());
    } else {
      new Imposition(pdf, format, plan.get(), inks.marks()).lay(sides, paper.start() - 1);
    }
    inks.claim(pdf);
    // Print shops turn the paper as they do.
    return Optional.of(sides == 2 && !chosen.ink().isForPlates());
  }

  /** Filled with all rows of each list, then with those that have room. */
  private Optional<Pages> filled(List<JobView> printed, Problems problems) {
    ListRoom room = new ListRoom();
    while (true) {
      List<Map<String, Object>> cards = new ArrayList<>();
      for (int i = 0; i < printed.size(); i++) {
        cards.addAll(HandoutValues.of(printed.get(i), kind, room, i));
      }
      Problems mistakes = new Problems();
      TextBoxes boxes = new TextBoxes(template.file(), format.smallest(), mistakes);
      Optional<Document> filled =
          template.fill(Map.of("cards", cards), printed.get(0).shop().look(), pageRule(), mistakes);
      Map<String, Integer> fitting = filled.map(boxes::fit).orElse(Map.of());
      if (mistakes.hasErrors() || !room.narrow(fitting)) {
        problems.addAll(mistakes.all());
        filled.ifPresent(PaperSigns::keepPrintable);
        return filled
            .filter(document -> !mistakes.hasErrors())
            .map(document -> new Pages(document, codes(cards), room));
      }
    }
  }

  private static List<Integer> codes(List<Map<String, Object>> cards) {
    return cards.stream().map(card -> (Integer) card.get("code")).toList();
  }

  /**
   * Whether a job gets a handout: the sticker is for windows that must stay up after pickup, all
   * others are for every job.
   *
   * @param view the job
   * @param kind the handout
   * @return true where it gets one
   */
  public static boolean isFor(JobView view, Handout kind) {
    return kind != Handout.WINDOW_UP || !GlassWords.of(view).isEmpty();
  }

  /**
   * Whether a handout is a label from a roll, which is never laid on a sheet.
   *
   * @param kind the handout
   * @return true for labels
   */
  public static boolean isFromRoll(Handout kind) {
    return PaperFormat.of(kind).edge().roll();
  }

  /**
   * The code that a job's handout carries.
   *
   * @param view the job
   * @param kind the handout
   * @return the code, or empty where the address is too long for modules of {@link
   *     QrCode#SMALLEST_MODULE}
   */
  public static Optional<QrCode> code(JobView view, Handout kind) {
    return QrCode.fitting(PrintedAddress.of(view.address()).code(), codeSide(kind));
  }

  /**
   * The side of the square that the code fills on a handout, with its quiet zone.
   *
   * @param kind the handout
   * @return millimetres
   */
  public static double codeSide(Handout kind) {
    return PaperFormat.of(kind).code();
  }

  /**
   * That a job's address is too long for the code of a handout.
   *
   * @param view the job
   * @param kind the handout
   * @return the problem, or empty where the code scans
   */
  public static Optional<Problem> tooLong(JobView view, Handout kind) {
    return code(view, kind).isPresent()
        ? Optional.empty()
        : Optional.of(PaperProblems.tooLong(view, PaperFormat.of(kind)));
  }

  /**
   * The signs of the shop and of a job that no font of the handouts has.
   *
   * @param view the job
   * @return notes
   */
  public static List<Problem> lackingSigns(JobView view) {
    return PaperProblems.lackingSigns(List.of(view));
  }

  private String pageRule() {
    PaperFormat.Size page = format.page();
    return String.format(
        Locale.ROOT, "@page{size:%smm %smm;margin:0}", page.width(), page.height());
  }

  private PaperPress.Label label(List<JobView> printed) {
    JobView first = printed.get(0);
    Instant made =
        printed.stream().map(v -> v.job().pickup()).max(Comparator.naturalOrder()).orElseThrow();
    String title =
        first.words().text("handout.title." + kind.id(), Map.of("shop", first.shop().name()));
    return new PaperPress.Label(title, first.words().language(), made);
  }
}
