package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Against the pattern alone, on texts made of the pieces that matter, some of them broken off. */
class SpotsTest {

  private static final String[] PIECES = {
    "<b", " a=\"1\"", " a=1", "=", "\"", ">", "<", "</p>", "text", " ", "\n", "<b>", "$1", "\\"
  };

  private static final List<Spots> ALL =
      List.of(
          new Spots("<", "<b(?: a=(\"?)1\\1)*>"),
          new Spots("</", "</p>(?=\\s*<)"),
          new Spots("=", "=\"?\\d"),
          new Spots(" a", "(?: a=(?:1|\"1\")){2,}"));

  private static String text(SplittableRandom random) {
    StringBuilder text = new StringBuilder();
    for (int n = random.nextInt(40); n > 0; n--) {
      text.append(PIECES[random.nextInt(PIECES.length)]);
    }
    return text.toString();
  }

  @Test
  void findAndReplaceWhatThePatternFinds() {
    SplittableRandom random = new SplittableRandom(7);
    int places = 0;
    for (int i = 0; i < 4_000; i++) {
      String text = text(random);
      for (Spots spots : ALL) {
        Pattern pattern = spots.pattern();
        List<String> found = new ArrayList<>();
        spots.each(text, one -> found.add(one.start() + one.group()));
        List<String> all =
            pattern.matcher(text).results().map(one -> one.start() + one.group()).toList();
        assertEquals(all, found, text);
        places += all.size();
        assertEquals(
            pattern.matcher(text).replaceAll("[$0]"),
            spots.replaced(text, (MatchResult one) -> "[" + one.group() + "]"));
      }
    }
    assertTrue(places > 4_000, "the texts have places in them: " + places);
  }
}
