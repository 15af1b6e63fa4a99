package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that no one means well with: each ends in problems, never in an exception. */
class HostileFilesTest {

  @TempDir Path dir;

  @BeforeEach
  void base() throws IOException {
    TestShops.base(dir);
    Files.delete(dir.resolve("jobs/1.yaml"));
  }

  private List<String> linesWith(String job) throws IOException {
    Files.writeString(dir.resolve("jobs/9.yaml"), job);
    ShopRead read = TestShops.read(dir);
    assertEquals(List.of(), read.jobs());
    return TestShops.lines(read);
  }

  @Test
  void aFileOfFiftyMegabytesIsNotRead() throws IOException {
    for (String name : List.of("jobs/9.yaml", "shop.yaml")) {
      size(name, 50L << 20);
    }
    List<String> lines = TestShops.lines(TestShops.read(dir));
    assertEquals(2, lines.size());
    for (String line : lines) {
      assertTrue(line.contains("the file has 52428800 bytes, more than the 4194304"), line);
    }
  }

  private void size(String name, long bytes) throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(dir.resolve(name).toFile(), "rw")) {
      file.setLength(bytes);
    }
  }

  /** Some ten thousand jobs were too many. */
  @Test
  void aTableMayHaveMoreThanOtherFiles() throws IOException {
    TestShops.base(dir);
    Files.delete(dir.resolve("jobs/1.yaml"));
    String header =
        "job,body,paint,parking-day,parking-night,pickup,service,film,spots,finished,car\n";
    String row = "1,sedan,dark,outside,garage,2026-11-25T16:30,tint,x,hood,2026-11-25T14:30,";
    String rows = (row + "x".repeat(60) + "\n").repeat(35_000);
    assertTrue(rows.length() > ShopFiles.MAX_BYTES);
    Files.writeString(dir.resolve("jobs.csv"), header + rows);
    List<String> lines = TestShops.lines(TestShops.read(dir));
    assertTrue(lines.stream().noneMatch(l -> l.contains("bytes")), lines::toString);
    size("jobs.csv", (256L << 20) + 1);
    lines = TestShops.lines(TestShops.read(dir));
    assertTrue(
        lines.stream().anyMatch(l -> l.contains("more than the 268435456")), lines::toString);
  }

  @Test
  void linksToNothingAndPipesAmongTheJobsAreTold() throws Exception {
    TestShops.base(dir);
    Files.createSymbolicLink(dir.resolve("jobs/older"), dir.resolve("gone"));
    for (String pipe : List.of("jobs/4.yaml", "jobs/5")) {
      String path = dir.resolve(pipe).toString();
      assertEquals(0, new ProcessBuilder("mkfifo", path).start().waitFor());
    }
    ShopRead read = TestShops.read(dir);
    String fix = "  put a file of this name in its place, or take it away";
    assertEquals(
        List.of(
            "jobs/4.yaml  this is no file that can be read" + fix,
            "jobs/5  this is no file that can be read" + fix,
            "jobs/older  this is a link that leads to no file" + fix),
        TestShops.lines(read));
    assertEquals(List.of("1"), read.jobs().stream().map(Job::id).toList());
  }

  /** Each would be missed by nobody, and a page from before would stay as if all were well. */
  @Test
  void foldersAndLinksToNothingThatAreNamedLikeFilesAreToldAndTheOtherJobsStay()
      throws IOException {
    TestShops.base(dir);
    Files.createDirectories(dir.resolve("content/places/far.yaml"));
    for (String folder : List.of("jobs/2.yaml", "jobs.csv")) {
      Files.createDirectory(dir.resolve(folder));
    }
    Files.createSymbolicLink(dir.resolve("jobs/3.yaml"), dir.resolve("gone.yaml"));
    // Some editors keep such a link beside a file that is open.
    Files.createSymbolicLink(dir.resolve("jobs/.#1.yaml"), Path.of("counter@desk.4711"));
    ShopRead read = TestShops.read(dir);
    String folder = "  this is a folder, not a file  ";
    String fix = "put a file of this name in its place, or take it away";
    assertEquals(
        List.of(
            "content/places/far.yaml" + folder + fix,
            "jobs.csv" + folder + fix,
            "jobs/2.yaml" + folder + fix,
            "jobs/3.yaml  this is a link that leads to no file  " + fix),
        TestShops.lines(read));
    assertEquals(List.of("1"), read.jobs().stream().map(Job::id).toList());
    assertEquals(
        List.of("jobs.csv", "jobs/2.yaml", "jobs/3.yaml"),
        read.brokenJobs().stream().map(BrokenJob::name).toList());
  }

  /** As of a disk that is not there today; no page may be lost by it. */
  @Test
  void aLinkToNothingInThePlaceOfTheJobsIsTold() throws IOException {
    Files.delete(dir.resolve("jobs"));
    Files.createSymbolicLink(dir.resolve("jobs"), dir.resolve("gone"));
    ShopRead read = TestShops.read(dir);
    assertEquals(
        List.of("jobs  this is no folder  make it one, or let the link lead to one"),
        TestShops.lines(read));
    assertEquals(List.of("jobs"), read.brokenJobs().stream().map(BrokenJob::name).toList());
  }

  /** The program's own texts and hours would count in its stead, and dates would move. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "content",
        "content/catalogue",
        "content/places",
        "content/words",
        "content/words/en",
        "content/guides/en",
        "site-templates",
        "weather"
      })
  void nothingIsMadeWhileAFolderIsALinkToNothing(String folder) throws IOException {
    TestShops.base(dir);
    Path link = dir.resolve(folder);
    Files.createDirectories(link.getParent());
    Files.deleteIfExists(link);
    Files.createSymbolicLink(link, dir.resolve("gone"));
    ShopRead read = TestShops.read(dir);
    assertEquals(
        List.of(folder + "  this is no folder  make it one, or let the link lead to one"),
        TestShops.lines(read));
    assertTrue(read.shop().isEmpty() && read.jobs().isEmpty());
  }

  /** The fault is that the languages are missing, which only a job with a language needs. */
  @Test
  void aFaultOfTheProgramLosesOneJobAlone() throws IOException {
    TestShops.base(dir);
    String job = Files.readString(dir.resolve("jobs/1.yaml"));
    Files.writeString(
        dir.resolve("jobs/2.yaml"), job.replace("id: 1", "id: 2").replace("language: en\n", ""));
    ShopRead read = TestShops.read(dir);
    Known faulty =
        new Known(
            read.catalogue(),
            Map.of(),
            List.of(),
            Names.of("place", List.of("seattle")),
            null,
            new ShopReader.Read(
                Optional.empty(),
                Optional.of(ZoneOffset.UTC),
                Optional.of("en"),
                Optional.of("seattle")),
            Instant.parse("2026-12-01T00:00:00Z"));
    Problems problems = new Problems();
    JobsReader.Read jobs = new JobsReader(new ShopFiles(dir), problems, faulty).read();
    assertEquals(List.of("2"), jobs.good().stream().map(Job::id).toList());
    assertEquals(List.of("jobs/1.yaml"), jobs.broken().stream().map(BrokenJob::name).toList());
    assertEquals(List.of("jobs/1.yaml"), problems.all().stream().map(Problem::file).toList());
  }

  @Test
  void anAliasBombIsOneProblem() throws IOException {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 30; i++) {
      bomb.append("a").append(i).append(": &a").append(i).append(" [");
      bomb.append(("*a" + (i - 1) + ", ").repeat(9)).append("*a").append(i - 1).append("]\n");
    }
    List<String> lines = linesWith(bomb.toString());
    assertEquals(1, lines.size());
    assertTrue(lines.get(0).startsWith("jobs/9.yaml:1:5  an anchor (&name) or an alias"));
  }

  @Test
  void nestingToTheLimitOfTheFileIsOneProblem() throws IOException {
    for (String bracket : List.of("[", "{a: ", "- ", "? ")) {
      String job = "id: 9\nx: " + (bracket.equals("- ") ? "\n  " : "");
      List<String> lines = linesWith(job + bracket.repeat(1_000_000));
      assertEquals(1, lines.size(), bracket);
    }
  }

  @Test
  void manyProblemsAreCutShort() throws IOException {
    StringBuilder job = new StringBuilder("id: 9\n");
    for (int i = 0; i < 100_000; i++) {
      job.append("key").append(i).append(": 1\n");
    }
    List<String> lines = linesWith(job.toString());
    assertEquals(51, lines.size());
    assertTrue(lines.get(0).contains("more problems than the first 50"), lines.get(0));
  }

  @Test
  void longKeysTextsAndNumbersAreShownShort() throws IOException {
    String nines = "9".repeat(1_000_000);
    String job =
        "id: x" + nines + "\nk" + nines + ": 1\npickup: " + nines + "\nlanguage: x" + nines;
    for (String line : linesWith(job)) {
      assertTrue(line.length() < 400, line.substring(0, 100));
    }
  }

  @Test
  void anyBytesAreRead() throws IOException {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      byte[] bytes = new byte[random.nextInt(300)];
      random.nextBytes(bytes);
      Files.write(dir.resolve("jobs/9.yaml"), bytes);
      Files.write(dir.resolve("jobs.csv"), bytes);
      assertSane(TestShops.read(dir));
    }
  }

  @Test
  void mutatedGoodFilesAreRead() throws IOException {
    TestShops.copy(TestShops.CASES.resolve("good"), dir);
    // A place with figures of its own reads faster than one between the built-in places.
    Path places = dir.resolve("content/places");
    Files.copy(
        places.resolve("own-normals.yaml"),
        places.resolve("mill-creek.yaml"),
        StandardCopyOption.REPLACE_EXISTING);
    List<String> names =
        List.of("shop.yaml", "jobs/1.yaml", "jobs.csv", "content/places/own-normals.yaml");
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 400; i++) {
      String name = names.get(i % names.size());
      byte[] good = Files.readAllBytes(TestShops.CASES.resolve("good").resolve(name));
      Files.write(dir.resolve(name), mutate(good, random));
      assertSane(TestShops.read(dir));
      Files.write(dir.resolve(name), good);
    }
  }

  @Test
  void mutatedCataloguesAreRead() throws IOException {
    SplittableRandom random = new SplittableRandom(12);
    List<String> names = List.of("services", "films", "spots", "holds");
    Files.createDirectories(dir.resolve("content/catalogue"));
    for (int i = 0; i < 200; i++) {
      String name = "content/catalogue/" + names.get(i % names.size()) + ".yaml";
      byte[] good = Files.readAllBytes(Path.of(name));
      Files.write(dir.resolve(name), mutate(good, random));
      assertSane(TestShops.read(dir));
      Files.delete(dir.resolve(name));
    }
  }

  /** What is read is whole, and each problem is one line that names its file. */
  private static void assertSane(ShopRead read) {
    for (Problem problem : read.problems()) {
      String line = problem.oneLine();
      assertTrue(line.codePoints().noneMatch(Character::isISOControl), line);
      assertTrue(!problem.message().isBlank() && !problem.fix().isBlank(), line);
    }
    if (read.problems().isEmpty()) {
      assertEquals(List.of(), read.brokenJobs());
      assertTrue(read.shop().isPresent());
    }
  }

  private static byte[] mutate(byte[] good, SplittableRandom random) {
    byte[] marks = "\n\n:- {}[]&*!|>'\"%@`,#?\t\0\u00e9~<".getBytes(StandardCharsets.UTF_8);
    StringBuilder out = new StringBuilder(new String(good, StandardCharsets.ISO_8859_1));
    for (int edits = 1 + random.nextInt(4); edits > 0 && out.length() > 2; edits--) {
      int at = random.nextInt(out.length());
      switch (random.nextInt(5)) {
        case 0 -> out.deleteCharAt(at);
        case 1 -> out.insert(at, (char) (marks[random.nextInt(marks.length)] & 0xff));
        case 2 -> out.setCharAt(at, (char) random.nextInt(256));
        case 3 -> out.setLength(at + 1);
        default -> out.insert(at, out.substring(random.nextInt(at + 1), at));
      }
    }
    return out.toString().getBytes(StandardCharsets.ISO_8859_1);
  }
}
