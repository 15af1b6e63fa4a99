package curewindow.intake;

import static curewindow.intake.Diary.HEADINGS;
import static curewindow.intake.Diary.row;
import static curewindow.intake.RowPlan.State.GOOD;
import static curewindow.intake.RowPlan.State.THERE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.site.LoadedShop;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An import that is killed leaves whole files, and the same import brings in the others. */
class KilledIntakeTest {

  private static final int JOBS = 3_000;

  @TempDir Path temp;

  /** What the other process does. */
  public static void main(String[] args) throws IOException {
    Intake.carryOut(
        Diary.table(Files.readString(Path.of(args[0]))), "diary", Path.of(args[1]), Diary.CLOCK);
  }

  private static String text() {
    StringBuilder text = new StringBuilder(HEADINGS);
    for (int i = 0; i < JOBS; i++) {
      text.append(row("Q-" + (3200 + i), "Hafen 35", "Heckscheibe"));
    }
    return text.toString();
  }

  private static long written(Path shop) throws IOException {
    try (Stream<Path> files = Files.list(shop.resolve("jobs"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).count();
    }
  }

  @Test
  void nothingIsTornAndNothingLost() throws Exception {
    Path shop = Diary.shop(temp.resolve("shop"));
    Path file = Files.writeString(temp.resolve("diary.csv"), text());
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                KilledIntakeTest.class.getName(),
                file.toString(),
                shop.toString())
            .redirectErrorStream(true)
            .redirectOutput(temp.resolve("said").toFile())
            .start();
    while (other.isAlive() && written(shop) < 5) {
      Thread.sleep(1);
    }
    other.destroyForcibly().waitFor();
    Map<String, String> before = jobs(shop);
    assertTrue(before.size() >= 5 && before.size() < JOBS, "killed after " + before.size());
    String whole =
        Intake.plan(
                Diary.table(HEADINGS + row("Q-1", "Hafen 35", "Heckscheibe")),
                "diary",
                LoadedShop.load(shop, Diary.CLOCK))
            .jobs()
            .get("Q-1");
    before.forEach(
        (name, job) -> assertEquals(whole.replace("Q-1", name.replace(".yaml", "")), job));
    IntakePlan again = Diary.carryOut(shop, text());
    assertEquals(before.size(), again.count(THERE));
    assertEquals(JOBS - before.size(), again.count(GOOD));
    assertEquals(JOBS, Diary.jobs(shop).size(), "and no half-written file is left");
  }

  private static Map<String, String> jobs(Path shop) throws IOException {
    Map<String, String> jobs = new TreeMap<>(Diary.jobs(shop));
    jobs.keySet().removeIf(name -> !name.endsWith(".yaml"));
    return jobs;
  }

  /**
   * Ten times the rows take hardly more than ten times as long: no time of the machine is named.
   */
  @Test
  void tenThousandRowsTakeTheirTimeByTheRow() throws IOException {
    Path shop = Diary.shop(temp.resolve("shop"));
    plan(shop, 1_000);
    long few = Math.min(plan(shop, 1_000), plan(shop, 1_000));
    long many = plan(shop, 10_000);
    assertTrue(many < 25 * few, few + " ns for 1,000 rows, " + many + " for 10,000");
  }

  private static long plan(Path shop, int rows) {
    StringBuilder text = new StringBuilder(HEADINGS);
    for (int i = 0; i < rows; i++) {
      text.append(row("Q-" + i / 2, "Hafen 35", i % 2 == 0 ? "Heckscheibe" : "Vordere T\u00FCren"));
    }
    ForeignTable table = Diary.table(text.toString());
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long begin = clock.getCurrentThreadCpuTime();
    IntakePlan plan = Intake.plan(table, "diary", LoadedShop.load(shop, Diary.CLOCK));
    long took = clock.getCurrentThreadCpuTime() - begin;
    assertEquals(List.of((long) rows, rows / 2), List.of(plan.count(GOOD), plan.jobs().size()));
    return took;
  }
}
