package curewindow.site;

import curewindow.handout.HandoutPress;
import curewindow.handout.QrCode;
import curewindow.shop.Handout;
import curewindow.shop.Job;
import curewindow.told.JobView;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tells of the code on each handout of a job how large it is and from how far it is read. */
public final class CodeReport {

  /** A code is read from about ten times its width; a rule of the trade's guides. */
  private static final double READ_FROM = 10;

  private CodeReport() {}

  /**
   * The report on a job. Nothing is written; a job without a page yet is told by an address of the
   * same length.
   *
   * @param shop a shop folder whose shop.yaml and link ledger are right
   * @param job one of its good jobs
   * @param kinds the handouts
   * @return lines of text, in English
   */
  public static List<String> of(LoadedShop shop, Job job, List<Handout> kinds) {
    Optional<String> known = shop.knownToken(job.id());
    JobView view = shop.view(job, known.orElse(Tokens.SAMPLE));
    List<String> lines = new ArrayList<>();
    for (Handout kind : kinds) {
      Optional<QrCode> code = HandoutPress.code(view, kind);
      if (code.isPresent() && lines.isEmpty()) {
        lines.add((known.isPresent() ? "" : "an address such as ") + code.get().text());
      }
      lines.add(
          String.format(Locale.ROOT, "%-12s ", kind.id())
              + code.map(c -> facts(c, HandoutPress.codeSide(kind)))
                  .orElseGet(() -> HandoutPress.tooLong(view, kind).orElseThrow().oneLine()));
    }
    return lines;
  }

  private static String facts(QrCode code, double side) {
    double module = code.module(side);
    double symbol = module * code.modules();
    return String.format(
        Locale.ROOT,
        "version %d, level %s, %d x %d modules of %.2f mm, %s; quiet zone %.1f mm; symbol %.1f mm,"
            + " read from up to about %.0f cm",
        code.version(),
        code.level(),
        code.modules(),
        code.modules(),
        module,
        segments(code),
        QrCode.QUIET_ZONE * module,
        symbol,
        symbol * READ_FROM / 10);
  }

  private static String segments(QrCode code) {
    return code.segments().stream()
        .map(s -> s.count() + " " + s.mode())
        .collect(Collectors.joining(" + "));
  }
}
