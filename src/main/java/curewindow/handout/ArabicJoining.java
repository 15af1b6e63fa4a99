package curewindow.handout;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.support.ICUBidiReorderer;
import java.text.Normalizer;
import java.util.regex.Pattern;

/**
 * Puts text from right to left into the order in which it is drawn, and joins Arabic letters. A
 * letter that stands alone is given as the letter itself, as fonts need not have its isolated form
 * under a number of its own (Unicode, chapter 9.2: the nominal letter is drawn as that).
 */
final class ArabicJoining implements BidiReorderer {

  /** The isolated letters of the block Arabic Presentation Forms-B; lam with alef are two. */
  private static final Pattern ALONE =
      Pattern.compile(
          "[\uFE80\uFE81\uFE83\uFE85\uFE87\uFE89\uFE8D\uFE8F\uFE93\uFE95\uFE99\uFE9D\uFEA1\uFEA5"
              + "\uFEA9\uFEAB\uFEAD\uFEAF\uFEB1\uFEB5\uFEB9\uFEBD\uFEC1\uFEC5\uFEC9\uFECD\uFED1\uFED5"
              + "\uFED9\uFEDD\uFEE1\uFEE5\uFEE9\uFEED\uFEEF\uFEF1]");

  private final ICUBidiReorderer letters = new ICUBidiReorderer();

  @Override
  public String reorderRTLTextToLTR(String text) {
    return letters.reorderRTLTextToLTR(text);
  }

  @Override
  public String shapeText(String text) {
    return ALONE
        .matcher(letters.shapeText(text))
        .replaceAll(m -> Normalizer.normalize(m.group(), Normalizer.Form.NFKC));
  }

  @Override
  public String deshapeText(String text) {
    return letters.deshapeText(text);
  }

  @Override
  public boolean isLiveImplementation() {
    return true;
  }
}
