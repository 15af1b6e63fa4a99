package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.handout.OfficeCallers;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.FittedItem;
import curewindow.shop.Handout;
import curewindow.shop.HandoutChoice;
import curewindow.shop.InkChoice;
import curewindow.shop.Job;
import curewindow.shop.SheetPaper;
import curewindow.shop.ShopFiles;
import curewindow.shop.ShopFolder;
import curewindow.shop.ShopRead;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A fault of the program that one job brings out is told with its file and stops no other job. The
 * jobs that bring one out are such as no reader lets through.
 */
final class OwnFaultTest {

  private static final Instant NOW = Instant.parse("2026-11-26T18:00:00Z");
  private static final Clock PICKUP_DAY =
      Clock.fixed(Instant.parse("2026-11-25T18:00:00Z"), ZoneOffset.UTC);
  private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

  @TempDir Path temp;
  private final Random random = new Random(1);
  private final Problems problems = new Problems();
  private ShopFiles files;
  private ShopRead read;
  private Job good;

  @BeforeEach
  void readShop() throws IOException {
    Path folder = Files.createDirectories(temp.resolve("shop/jobs")).getParent();
    Path starter = Path.of("content/starter-shop");
    Files.copy(starter.resolve("shop.yaml"), folder.resolve("shop.yaml"));
    Files.copy(starter.resolve("jobs/1001.yaml"), folder.resolve("jobs/1001.yaml"));
    files = new ShopFiles(folder);
    read = ShopFolder.read(files, NOW);
    good = read.jobs().get(0);
  }

  /** No date can be computed, as the catalogue lacks the service. */
  private Job dateless() {
    return job("BAD-1", item("no-such-service", OptionalInt.empty()));
  }

  /** Its page and calendar cannot be made, as its warranty ends after the last day of the world. */
  private Job endless() {
    return job("BAD-2", item("tint", OptionalInt.of(Integer.MAX_VALUE)));
  }

  private FittedItem item(String service, OptionalInt warranty) {
    FittedItem like = good.items().get(0);
    return new FittedItem(
        service, like.film(), like.spots(), like.finished(), like.vlt(), like.batch(), warranty);
  }

  private Job job(String id, FittedItem item) {
    return new Job(
        id,
        good.firstName(),
        good.language(),
        good.car(),
        good.place(),
        good.parking(),
        good.stays(),
        List.of(item),
        List.of(),
        List.of(),
        new Where("jobs/" + id + ".yaml", 2, 1, "id"));
  }

  private LoadedShop with(Job... bad) {
    List<Job> jobs = new ArrayList<>(List.of(bad));
    jobs.add(good);
    return LoadedShop.of(files, read.with(jobs));
  }

  private static void told(List<Problem> problems, String... files) {
    assertEquals(List.of(files), problems.stream().map(Problem::file).distinct().toList());
    for (Problem problem : problems) {
      String line = problem.oneLine();
      assertTrue(line.matches("jobs/BAD-[12]\\.yaml:2:1  a fault of the program .*"), line);
      assertTrue(line.contains("please report"), line);
      assertTrue(line.matches(".*Exception at [A-Za-z]+\\.java:[0-9]+.*"), line);
    }
  }

  @Test
  void checkTellsIt() {
    told(Press.rehearse(with(dateless(), endless())), "jobs/BAD-1.yaml", "jobs/BAD-2.yaml");
  }

  @Test
  void pressBuildsTheOthers() throws IOException {
    Path out = temp.resolve("out");
    PressReport report =
        Press.run(with(dateless(), endless()), out, PICKUP_DAY, () -> Tokens.from(random));
    told(report.problems(), "jobs/BAD-1.yaml", "jobs/BAD-2.yaml");
    assertEquals(List.of("1001"), report.made().stream().map(PressReport.Made::job).toList());
    assertEquals(List.of("BAD-1", "BAD-2"), report.leftOut());
    assertTrue(Files.size(out.resolve("office/cards.pdf")) > 5_000);
    String today = Files.readString(out.resolve("office/today.html"));
    assertTrue(today.contains("1001") && today.contains("until fixed: BAD-1. "), today);
    assertTrue(Files.readString(out.resolve("office/inspections.ics")).contains("1001"));
  }

  @Test
  void cardPrintsTheOthers() throws IOException {
    LoadedShop shop = with(dateless());
    CardFile.Result result =
        new CardFile(shop, CLOCK, () -> Tokens.from(random))
            .write(
                shop.jobs(),
                new HandoutChoice(Handout.WALLET, Optional.of(SheetPaper.NONE), 1, InkChoice.USUAL),
                temp.resolve("cards.pdf"),
                CompletableFuture.completedFuture(null));
    told(result.problems(), "jobs/BAD-1.yaml");
    assertEquals(1, result.printed());
  }

  @Test
  void dueAndQuestionsTellOfTheOthers() throws IOException {
    String header = "job,hold,state,date,printed\n";
    String row = ",windows-up,safe-by,2026-11-26T14:00-08:00,2026-11-24\n";
    Files.writeString(
        files.root().resolve(PrintedDates.FILE), header + "1001" + row + "BAD-1" + row);
    LoadedShop shop = with(dateless());
    assertEquals("1001", DueCalls.of(shop, NOW, problems).tooEarly().get(0).job());
    told(problems.all(), "jobs/BAD-1.yaml");
    Office office = Office.of(shop, new Problems());
    OfficeCallers callers = office.callers(office.day(NOW), OfficeCallers.Most.ALL, problems);
    assertEquals(List.of("1001"), callers.callers().stream().map(c -> c.job()).toList());
    assertTrue(office.write(office.day(NOW), temp.resolve("day.html"), problems));
  }
}
