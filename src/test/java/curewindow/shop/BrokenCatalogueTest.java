package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.guide.GuideLibrary;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Severity;
import curewindow.words.WordsLibrary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * An error in the catalogue, or in a place of the shop's own, leaves out the jobs whose dates it
 * concerns, and is told once; all others are as they were.
 */
class BrokenCatalogueTest {

  private static final String FOLDER = "content/catalogue/";

  private static final String JOB =
      """
      id: %s
      car: {body: sedan, paint: mid%s}
      parking: outside
      pickup: 2026-11-25T17:00
      items:
        - {service: %s, film: %s, spots: [%s], finished: 2026-11-25T15:00}
      """;

  @TempDir Path dir;

  @BeforeEach
  void layOut() throws IOException {
    TestShops.base(dir);
    Files.delete(dir.resolve("jobs/1.yaml"));
    job("DOOR", "", "tint", "harbor-35", "front-door-glass");
    job("BACK", "", "tint", "harbor-20", "back-glass");
    job("LACKS", ", lacks: [defroster]", "tint", "harbor-35", "back-glass");
    job("COAT", "", "paint-coating", "tidewater-paint", "hood");
  }

  private void job(String id, String car, String service, String film, String spot)
      throws IOException {
    Files.writeString(
        dir.resolve("jobs/" + id + ".yaml"), JOB.formatted(id, car, service, film, spot));
  }

  /** Replaces a text of a file of the catalogue, in the first line that has it. */
  private int edit(String file, String from, String to) throws IOException {
    ShopFiles files = new ShopFiles(dir);
    String text = files.text(FOLDER + file, new Problems()).orElseThrow();
    int at = from.endsWith(":") ? text.indexOf("\n" + from) + 1 : text.indexOf(from);
    assertTrue(at > 0, from);
    Files.createDirectories(dir.resolve(FOLDER));
    Files.writeString(
        dir.resolve(FOLDER + file),
        text.substring(0, at) + to + text.substring(at + from.length()));
    return (int) text.substring(0, at).lines().count();
  }

  /** The error, then the one that says whom it leaves out; commas are left out of what is told. */
  @ParameterizedTest
  @CsvSource({
    // A rule whose service, place and spots can be read leaves out the work it is for.
    "holds.yaml, '{service: tint, hold: windows-up, where: rolls, need: {bond: 48}, floor: 24, limit: 10}', '{service: tint, hold: windows-up, where: rolls, need: {bond: 48}, floor: 24}', limit is missing, BACK COAT LACKS",
    "holds.yaml, 'floor: 72, limit: 14}', 'floor: 72, limit: 1}', limit comes before floor, COAT DOOR LACKS",
    "holds.yaml, 'hold: demist, spots', 'hold: demits, spots', no hold is called demits, BACK COAT DOOR LACKS",
    "holds.yaml, 'tint, hold: hand-wash, need: {bond: 24}', 'tint, hold: hand-wash, need: {bond: soon}', bond should be a number, COAT",
    // What cannot be read leaves nobody out of those concerned.
    "holds.yaml, 'tint, hold: defroster', 'tnit, hold: defroster', did you mean tint?, COAT DOOR LACKS",
    "holds.yaml, 'hold: defroster, where: defroster', 'hold: defroster, where: defrost', did you mean defroster?, COAT",
    "holds.yaml, 'where: defroster', 'wher: defroster', the key wher is not known, COAT",
    "holds.yaml, '  - {service: tint, hold: hand-wash, need: {bond: 24}, floor: 24, limit: 4}', '  - hand-wash', should be keys with values, ''",
    "holds.yaml, 'visits:', 'visit:', did you mean visits?, ''",
    "holds.yaml, 'best: 14, latest: 185', 'best: 210, latest: 185', earliest best and latest, COAT",
    // A hold leaves out the work that has a rule of it.
    "holds.yaml, 'windows-up: {kind: hold', 'windows-up: {kind: held', no kind of hold is called held, BACK COAT LACKS",
    "holds.yaml, 'keep-dry: {kind: hold, rank: 1', 'keep-dry: {kind: hold, rank: 0', rank is 0, BACK DOOR LACKS",
    "holds.yaml, 'after: [rain]', 'after: [rian]', did you mean rain?, BACK DOOR LACKS",
    "holds.yaml, 'after: [rain]', 'after: [rinse]', rinse waits for itself, BACK DOOR LACKS",
    "holds.yaml, 'after: [rain]', 'after: [haze]', haze is a settle, BACK DOOR LACKS",
    "holds.yaml, 'looks-at: [haze, water-pockets]', 'looks-at: [hand-wash]', hand-wash is a hold, COAT",
    "holds.yaml, 'looks-at: [haze', 'looks-at: [hazy', did you mean haze?, COAT",
    // Whoever fits what is broken; who names it in the catalogue is none the worse for it.
    "spots.yaml, 'back-glass: {faces: up', 'back-glass: {faces: upp', did you mean up?, COAT DOOR",
    "films.yaml, 'name: Harbor 35', 'name: [Harbor 35]', should be a single value, BACK COAT",
    "services.yaml, 'inside: true', 'inside: often', inside should be true or false, COAT",
    "films.yaml, 'films:', 'films: [', this is not YAML, ''",
    "services.yaml, 'services:', 'servcies:', services is missing, ''",
    "spots.yaml, 'spots:', 'spots: 3', this is not YAML, ''",
    "holds.yaml, 'holds:', 'holds: [', this is not YAML, ''",
    "holds.yaml, 'rules:', 'rules: {', this is not YAML, ''"
  })
  void anErrorLeavesOutWhomItConcerns(String file, String from, String to, String told, String good)
      throws IOException {
    edit(file, from, to);
    ShopRead read = TestShops.read(dir);
    List<String> lines = TestShops.lines(read);
    List<String> concerned = lines.stream().filter(l -> l.contains("leaves out")).toList();
    List<String> left =
        List.of("BACK", "COAT", "DOOR", "LACKS").stream()
            .filter(id -> !List.of(good.split(" ")).contains(id))
            .toList();
    assertEquals(
        good, String.join(" ", read.jobs().stream().map(Job::id).toList()), lines::toString);
    assertEquals(left, read.brokenJobs().stream().map(BrokenJob::name).toList());
    assertTrue(
        lines.stream().anyMatch(l -> l.replace(",", "").contains(told)), () -> lines.toString());
    assertTrue(lines.stream().allMatch(l -> l.startsWith(FOLDER + file + ":")), lines::toString);
    assertEquals(left.isEmpty() ? 0 : 1, concerned.size(), lines::toString);
    for (String line : concerned) {
      assertTrue(line.contains("sure: " + String.join(", ", left) + "  "), line);
      String place = line.substring(0, line.indexOf(' '));
      assertTrue(
          lines.stream().filter(l -> l.startsWith(place + " ")).count() > 1, lines::toString);
    }
    // A key that is misspelt is missing as well.
    assertTrue(lines.size() - concerned.size() <= 2, lines::toString);
  }

  @Test
  void manyJobsAreToldOnceWithTheirNumber() throws IOException {
    for (int i = 10; i < 40; i++) {
      job("M-" + i, "", "tint", "harbor-35", "front-door-glass");
    }
    int line =
        edit("holds.yaml", "tint, hold: hand-wash, need: {bond: 24}", "tint, hold: hand-wash");
    edit("holds.yaml", "tint, hold: pressure-wash, need: {bond: 48}", "tint, hold: pressure-wash");
    List<String> lines = TestShops.lines(TestShops.read(dir));
    assertEquals(
        List.of(
            FOLDER
                + "holds.yaml:"
                + line
                + ":5  the error here leaves out 33 jobs, whose dates would not be sure: BACK,"
                + " DOOR, LACKS, M-10, M-11 and 28 more  mend it first"),
        lines.stream().filter(l -> l.contains("leaves out")).toList());
    assertEquals(3, lines.size(), lines::toString);
  }

  @Test
  void aJobOfACsvFileIsLeftOutAlone() throws IOException {
    String rows =
        "job,body,paint,parking-day,parking-night,pickup,service,film,spots,finished\n"
            + IntStream.range(0, 60)
                .mapToObj(
                    i ->
                        "R-%d,suv,mid,shade,shade,2026-11-25T17:00,%s,2026-11-25T15:00\n"
                            .formatted(
                                i,
                                i == 59
                                    ? "paint-coating,tidewater-paint,hood"
                                    : "tint,harbor-35,front-door-glass"))
                .reduce("", String::concat);
    Files.writeString(dir.resolve("jobs.csv"), rows);
    edit("films.yaml", "name: Harbor 35,", "name: [Harbor 35],");
    ShopRead read = TestShops.read(dir);
    assertEquals(List.of("BACK", "COAT", "R-59"), read.jobs().stream().map(Job::id).toList());
    assertEquals(2, read.problems().size(), () -> TestShops.lines(read).toString());
  }

  /** It also stands in place of the program's of that name. */
  @Test
  void aBrokenPlaceIsToldOnceWithTheJobsThatNameIt() throws IOException {
    place("miami", "latitude: 91");
    for (String id : List.of("DOOR", "BACK")) {
      Path job = dir.resolve("jobs/" + id + ".yaml");
      Files.writeString(job, Files.readString(job) + "place: miami\n");
    }
    Files.writeString(dir.resolve("visits.csv"), "job,day,result\nDOOR,2026-12-08,fine\n");
    ShopRead read = TestShops.read(dir);
    assertEquals(List.of("COAT", "LACKS"), read.jobs().stream().map(Job::id).toList());
    assertEquals(
        List.of(
            "content/places/miami.yaml:2:11  latitude is 91, outside -90 to 90  write a number from"
                + " -90 to 90",
            "content/places/miami.yaml:2:11  the error here leaves out 2 jobs, whose dates would not"
                + " be sure: BACK, DOOR  mend it first"),
        TestShops.lines(read));
  }

  /** Who looks into shop.yaml finds out why nothing is made. */
  @Test
  void aBrokenPlaceOfTheShopIsToldThereToo() throws IOException {
    place("cove", "latitude: 91");
    Path shop = dir.resolve("shop.yaml");
    Files.writeString(shop, Files.readString(shop).replace("seattle", "cove"));
    List<String> lines = TestShops.lines(TestShops.read(dir));
    assertEquals(2, lines.size(), lines::toString);
    assertEquals(
        "shop.yaml:7:8  no usable place is called cove  mend content/places first, which has"
            + " problems",
        lines.get(1));
  }

  private void place(String id, String latitude) throws IOException {
    Files.createDirectories(dir.resolve("content/places"));
    Files.writeString(
        dir.resolve("content/places/" + id + ".yaml"),
        "name: Cove\n" + latitude + "\nlongitude: -122\nheight: 5\nzone: America/Los_Angeles\n");
  }

  /** Nor does the row of visits.csv need mending. */
  @Test
  void aVisitOfAJobLeftOutIsNoProblem() throws IOException {
    Files.writeString(
        dir.resolve("visits.csv"), "job,day,result\nDOOR,2026-12-08,fine\nCOAT,2026-12-08,fine\n");
    edit("films.yaml", "name: Harbor 35,", "name: [Harbor 35],");
    ShopRead read = TestShops.read(dir);
    assertEquals(2, read.problems().size(), () -> TestShops.lines(read).toString());
    assertEquals(1, read.jobs().get(1).seen().size());
  }

  /** Holds that wait for each other end together, which works, so that is a note. */
  @Test
  void aCircleOfHoldsIsANoteAndLeavesOutNoJob() throws IOException {
    edit("holds.yaml", "after: [rain]", "after: [hand-wash]");
    ShopRead read = TestShops.read(dir);
    assertEquals(4, read.jobs().size());
    assertEquals(
        List.of(Severity.NOTICE), read.problems().stream().map(Problem::severity).toList());
  }

  /** One may wait for the other as it brings what that forbids, without naming it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sticker: true | sticker: true, brings: [dust], forbids: [lint] | rank: 12 | rank: 12, brings:"
            + " [lint], forbids: [dust] | windows-up after inside-glass after windows-up",
        "[water, sun] | [water, sun], after: [topper] | rank: 12 | rank: 12 | keep-dry after topper"
            + " after keep-dry"
      })
  void aCircleByWhatHoldsBringAndForbidIsANoteToo(
      String from, String to, String other, String then, String circle) throws IOException {
    edit("holds.yaml", from, to);
    edit("holds.yaml", other, then);
    ShopRead read = TestShops.read(dir);
    assertEquals(4, read.jobs().size());
    List<Problem> problems = read.problems();
    assertEquals(1, problems.size(), problems::toString);
    assertEquals(Severity.NOTICE, problems.get(0).severity());
    assertTrue(problems.get(0).message().startsWith(circle + ": they wait"), problems::toString);
  }

  /** What names a broken entry is right: a guide must not be lost to the other jobs. */
  @ParameterizedTest
  @CsvSource({
    "spots.yaml, 'back-glass: {faces: up', 'back-glass: {faces: upp'",
    "services.yaml, 'inside: true', 'inside: often'",
    "holds.yaml, 'windows-up: {kind: hold', 'windows-up: {kind: held'",
    "films.yaml, 'films:', 'films: ['",
    "services.yaml, 'services:', 'services: ['",
    "spots.yaml, 'spots:', 'spots: ['",
    "holds.yaml, 'holds:', 'holds: ['"
  })
  void guidesMayNameIt(String file, String from, String to) throws IOException {
    edit(file, from, to);
    ShopFiles files = new ShopFiles(dir);
    ShopRead read = TestShops.read(dir);
    Problems mistakes = new Problems();
    GuideLibrary.read(
        files, WordsLibrary.open(files), read.catalogue(), read.languages(), mistakes);
    assertEquals(List.of(), mistakes.all());
  }
}
