package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code import}, as it is typed. */
class ImportCommandTest {

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-30T12:00:00Z"), ZoneOffset.UTC);

  private static final String TABLE =
      "No,Body,Color,Pickup,Service,Film,Spots,Finished\n"
          + "Q-3140,sedan,black,11/24/2026 17:00,tint,harbor-35,back-glass,11/24/2026 14:30\n"
          + "Q-3141,sedan,black,11/24/2026 17:00,tint,harbor-35,back-glass,11/24/2026 14:30\n";

  @TempDir Path temp;
  private Path shop;
  private Path file;

  @BeforeEach
  void layOut() throws IOException {
    shop = temp.resolve("shop");
    Typed.run("new-shop", shop);
    file = Files.writeString(temp.resolve("Diary.csv"), TABLE);
  }

  private String run(int code, Object... args) {
    Object[] all = Arrays.copyOf(args, args.length + 3);
    System.arraycopy(args, 0, all, 1, args.length);
    all[0] = "import";
    all[args.length + 1] = "--shop";
    all[args.length + 2] = shop;
    Typed typed = Typed.run(CLOCK, all);
    assertEquals(code, typed.code(), typed.said());
    return typed.said();
  }

  @Test
  void firstAMapThenAPlanThenTheJobsThenNothingMore() throws IOException {
    String first = run(Exit.OK, file);
    assertTrue(first.contains("nothing was imported"), first);
    assertTrue(first.contains("note: imports/diary.yaml:"), first);
    assertTrue(Files.notExists(shop.resolve("jobs/Q-3140.yaml")));
    String plan = run(Exit.OK, file, "--map", "diary", "--plan");
    assertTrue(plan.contains("Diary.csv:2  Q-3140  good"), plan);
    assertTrue(plan.contains("Would be imported: 2 jobs from 2 rows"), plan);
    assertTrue(Files.notExists(shop.resolve("jobs/Q-3140.yaml")));
    assertTrue(run(Exit.OK, file, "--map", "diary").contains("Imported: 2 jobs from 2 rows"));
    assertTrue(Files.exists(shop.resolve("jobs/Q-3141.yaml")));
    String again = run(Exit.OK, file, "--map", "diary");
    assertTrue(again.contains("Imported: 0 jobs from 0 rows; already there: 2 rows"), again);
    assertEquals(Exit.OK, Typed.run(CLOCK, "check", "--shop", shop).code());
  }

  /** A press asks for no map, so a broken one is only told by check. */
  @Test
  void checkTellsWhatIsWrongWithAMap() throws IOException {
    run(Exit.OK, file);
    Path map = shop.resolve("imports/diary.yaml");
    Files.writeString(map, Files.readString(map).replace("  film:", "  flim:"));
    Files.writeString(shop.resolve("imports/My diary.yaml"), "columns: {job: No}\n");
    Typed check = Typed.run(CLOCK, "check", "--shop", shop);
    assertEquals(Exit.PROBLEMS, check.code(), check.said());
    assertTrue(
        check
            .said()
            .matches(
                "(?s).*imports/diary.yaml:\\d+:\\d+  the column flim is not known under columns  did you"
                    + " mean film\\?.*"),
        check.said());
    assertTrue(check.said().contains("imports/My diary.yaml  the name My diary"), check.said());
    assertEquals(Exit.OK, Typed.run(CLOCK, "dates", "--shop", shop).code());
  }

  @Test
  void whatIsLeftIsToldAndKept() throws IOException {
    run(Exit.OK, file);
    Files.writeString(file, TABLE.replaceFirst("harbor-35", "harbor-3"));
    String said = run(Exit.PROBLEMS, file, "--map", "diary");
    assertTrue(said.contains("Diary.csv:2:42  \"Film\": no film is called harbor-3"), said);
    assertTrue(
        said.contains("Imported: 1 job from 1 row; already there: 0 rows; left: 1 row"), said);
    Path rest = temp.resolve("Diary-rest.csv");
    assertTrue(said.contains(rest.toString()), said);
    Files.writeString(rest, Files.readString(rest).replace("harbor-3,", "harbor-35,"));
    assertTrue(run(Exit.OK, rest, "--map", "diary").contains("Imported: 1 job"));
  }

  @Test
  void misuseIsRefused() throws IOException {
    run(Exit.USAGE);
    run(Exit.USAGE, file, "--map", "No Name");
    assertTrue(run(Exit.PROBLEMS, temp.resolve("no.csv")).contains("there is no such file"));
    assertTrue(run(Exit.PROBLEMS, file, "--map", "x", "--plan").contains("there is no map"));
    assertTrue(Files.notExists(shop.resolve("imports/x.yaml")));
    run(Exit.OK, file);
    assertTrue(run(Exit.USAGE, file).contains("add: --map diary"));
    Files.writeString(shop.resolve("imports/diary.yaml"), "columns: {jobb: No}\n");
    assertTrue(run(Exit.PROBLEMS, file, "--map", "diary").contains("did you mean job?"));
    Path none = temp.resolve("none");
    assertEquals(Exit.DISK, Typed.run(CLOCK, "import", file, "--shop", none).code());
  }
}
