package curewindow.intake;

import static curewindow.intake.Diary.HEADINGS;
import static curewindow.intake.Diary.row;
import static curewindow.intake.RowPlan.State.GOOD;
import static curewindow.intake.RowPlan.State.LEFT;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is left over of a table is mended and imported again: all is there then, and nothing twice.
 */
class RestTest {

  private static final Charset WESTERN = Charset.forName("windows-1252");

  @TempDir Path temp;
  private Path shop;

  @BeforeEach
  void layOut() throws IOException {
    shop = Diary.shop(temp.resolve("shop"));
  }

  private IntakePlan carryOut(Path file) throws IOException {
    Problems problems = new Problems();
    ForeignTable table = ForeignTable.read(file, problems).orElseThrow();
    return Intake.carryOut(table, "diary", shop, Diary.CLOCK);
  }

  private Path write(String name, String text) throws IOException {
    return Files.write(temp.resolve(name), text.getBytes(WESTERN));
  }

  @Test
  void theMendedRestBringsInWhatWasLeftAndNothingTwice() throws IOException {
    Path file =
        write(
            "diary.csv",
            HEADINGS
                + row("Q-3140", "Hafen 35", "Heckscheibe")
                + row("Q-3141", "Hafen 36", "Heckscheibe")
                + row("Q-3142", "Hafen 20", "Heckscheibe")
                + row("Q-3141", "Hafen 20", "Vordere T\u00FCren")
                + "\"Q-3143;x\n"
                + row("Q-3144", "Hafen 20", "Heckscheibe").replace("Q-", "Q_"));
    byte[] theirs = Files.readAllBytes(file);
    IntakePlan done = carryOut(file);
    assertEquals(List.of(GOOD, LEFT, GOOD, LEFT, LEFT, LEFT), Diary.states(done));
    Path rest = Intake.writeRest(file, done).orElseThrow();
    assertEquals(temp.resolve("diary-rest.csv"), rest);
    String text = Files.readString(rest, WESTERN);
    assertTrue(text.startsWith(HEADINGS.strip() + ";not imported because\n"), text);
    assertTrue(text.contains("\"Q-3143;x\"".replace("\"Q", "\"\"\"Q")), text);
    assertEquals(5, text.lines().count());
    // The same import again says the same and makes no other file.
    assertEquals(rest, Intake.writeRest(file, carryOut(file)).orElseThrow());
    String mended =
        text.replace("Hafen 36;", "Hafen 35;")
            .replace("Q_3144", "Q-3144")
            .replaceAll("(?m)^\"\"\"Q-3143.*$", row("Q-3143", "Hafen 20", "Heckscheibe").strip());
    Files.write(rest, mended.getBytes(WESTERN));
    IntakePlan second = carryOut(rest);
    assertEquals(
        List.of(GOOD, GOOD, GOOD, GOOD), Diary.states(second), () -> "" + Diary.lines(second));
    assertTrue(Intake.writeRest(rest, second).isEmpty());
    Set<String> all =
        Set.of("Q-3140.yaml", "Q-3141.yaml", "Q-3142.yaml", "Q-3143.yaml", "Q-3144.yaml");
    assertEquals(all, Diary.jobs(shop).keySet());
    String joined = Diary.jobs(shop).get("Q-3141.yaml");
    assertTrue(joined.contains("harbor-35") && joined.contains("harbor-20"), joined);
    assertArrayEquals(theirs, Files.readAllBytes(file));
  }

  @Test
  void aRestThatIsBeingMendedIsNeverWrittenOver() throws IOException {
    Path file = write("diary.csv", HEADINGS + row("Q-3140", "Hafen 36", "Heckscheibe"));
    Path rest = Intake.writeRest(file, carryOut(file)).orElseThrow();
    Files.writeString(
        rest, Files.readString(rest, WESTERN).replace(";Hafen 36;", ";Hafen 37;"), WESTERN);
    byte[] half = Files.readAllBytes(rest);
    Path second = Intake.writeRest(file, carryOut(file)).orElseThrow();
    assertEquals(temp.resolve("diary-rest-2.csv"), second);
    assertArrayEquals(half, Files.readAllBytes(rest));
    Path third = Intake.writeRest(rest, carryOut(rest)).orElseThrow();
    assertEquals(temp.resolve("diary-rest-3.csv"), third);
    assertEquals(2, Files.readString(third, WESTERN).lines().count());
    assertEquals(1, Files.readString(third, WESTERN).split("not imported because", -1).length - 1);
  }

  @Test
  void aRestKeepsWhatTheirCellsHold() throws IOException {
    String odd = "\"=HYPERLINK(\"\"x\"\")\r\n;\u00DC\u0081\"";
    String text =
        HEADINGS.replace("\n", "\r\n")
            + row("Q-3140", "Hafen 36", "Heckscheibe")
                .replace("schwarzer Wagen", odd)
                .replace("H-1\n", "H-1\r\n");
    Path file = Files.write(temp.resolve("diary.csv"), TableText.Coding.WINDOWS_1252.encode(text));
    Path rest = Intake.writeRest(file, carryOut(file)).orElseThrow();
    ForeignTable before = ForeignTable.read(file, new Problems()).orElseThrow();
    ForeignTable after = ForeignTable.read(rest, new Problems()).orElseThrow();
    List<String> cells = after.rows().get(0).cells();
    assertEquals(before.rows().get(0).cells(), cells.subList(0, cells.size() - 1));
    assertEquals("=HYPERLINK(\"x\")\r\n;\u00DC\u0081", cells.get(4));
    assertTrue(after.hasReturns());
  }
}
