package curewindow.handout;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import java.util.logging.Level;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells what the style sheet says that paper does not know; such declarations have no effect. */
final class StyleMistakes {

  private static final Pattern MESSAGE =
      Pattern.compile("(?s)\\([^)]*\\) (.*) at line (\\d+)\\..*");

  static {
    XRLog.setLoggerImpl(new Silent());
  }

  private StyleMistakes() {}

  static void tell(PdfRendererBuilder builder, PaperTemplate template, Problems problems) {
    builder.withDiagnosticConsumer(
        diagnostic -> {
          if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()
              && diagnostic.getLogMessageId().toString().startsWith("CSS_PARSE")) {
            problems.add(mistake(diagnostic.getFormattedMessage(), template));
          }
        });
  }

  private static Problem mistake(String message, PaperTemplate template) {
    Matcher parts = MESSAGE.matcher(message);
    boolean placed = parts.matches();
    int line = placed ? Integer.parseInt(parts.group(2)) : 0;
    if (placed && parts.group(1).contains("unrecognized CSS property")) {
      line++; // Only in this message the library counts lines from 0.
    }
    return Problem.notice(
        "style-mistake",
        template.styleAt(line),
        placed ? parts.group(1) : message,
        "mend the declaration; until then it has no effect");
  }

  /** Keeps the library from printing its log. */
  private static final class Silent implements XRLogger {

    @Override
    public void log(String where, Level level, String message) {}

    @Override
    public void log(String where, Level level, String message, Throwable cause) {}

    @Override
    public void setLevel(String logger, Level level) {}

    @Override
    public boolean isLogLevelEnabled(Diagnostic diagnostic) {
      return false;
    }
  }
}
