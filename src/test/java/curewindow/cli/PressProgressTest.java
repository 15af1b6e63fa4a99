package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

/** A press that takes long says how far it is. */
class PressProgressTest {

  private static final long SECOND = 1_000_000_000;

  private final StringWriter said = new StringWriter();
  private long now = 5 * SECOND;

  private PressProgress progress(boolean terminal) {
    return new PressProgress(new PrintWriter(said), terminal, () -> now);
  }

  private void at(PressProgress progress, double seconds, int made) {
    now = 5 * SECOND + (long) (seconds * SECOND);
    progress.made(made, 2000);
  }

  @Test
  void onATerminalOneLineIsWrittenOverAndGoesInTheEnd() {
    PressProgress progress = progress(true);
    at(progress, 2, 50);
    at(progress, 2.9, 60);
    assertEquals("", said.toString(), "a press that ends soon says nothing");
    at(progress, 4, 100);
    at(progress, 4.2, 105);
    at(progress, 50, 1990);
    at(progress, 51, 2000);
    String first = "100 of 2,000 pages, 25 a second, 76 s left";
    String second = "1,990 of 2,000 pages, 40 a second, 0 s left";
    assertEquals(
        "\r" + first + "\r" + second + "\r" + " ".repeat(second.length()) + "\r", said.toString());
  }

  @Test
  void elsewhereALineIsSaidNowAndThen() {
    PressProgress progress = progress(false);
    at(progress, 9, 90);
    at(progress, 10, 100);
    at(progress, 15, 150);
    at(progress, 20, 400);
    at(progress, 60, 2000);
    assertEquals(
        "100 of 2,000 pages, 10 a second, 3 min left\n"
            + "400 of 2,000 pages, 28 a second, 57 s left\n",
        said.toString().replace("\r\n", "\n"));
  }

  @Test
  void aPressThatEndedSoonLeavesNothing() {
    PressProgress progress = progress(true);
    at(progress, 1, 2000);
    assertEquals("", said.toString());
  }
}
