package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Calls of customers are kept, and nothing of them is lost. */
class CallbacksTest {

  private static final String HEADER = "job,at,question,outcome\n";

  /** In the evening of November 25 by the shop's clock. */
  private static final Instant AT = Instant.parse("2026-11-26T04:05:06.789Z");

  private static final Clock CLOCK = Clock.fixed(AT, ZoneOffset.UTC);

  @TempDir Path shop;

  @BeforeEach
  void layOut() throws IOException {
    PressedDemo.layOutShop(shop, "Q-3101", "Q-3102");
  }

  private LoadedShop load() {
    return LoadedShop.load(shop, CLOCK);
  }

  private void note(String job, String question, CallOutcome outcome) throws IOException {
    CallNotes.note(load(), job, question, outcome, AT);
  }

  private String text() throws IOException {
    return Files.readString(shop.resolve(Callbacks.FILE));
  }

  private void write(String rows) throws IOException {
    Files.writeString(shop.resolve(Callbacks.FILE), HEADER + rows);
  }

  private List<String> told() {
    Problems problems = new Problems();
    Callbacks.read(shop, problems);
    return problems.all().stream().map(Problem::oneLine).toList();
  }

  @Test
  void aCallIsAddedByTheShopsClockToTheSecond() throws IOException {
    assertEquals(List.of(), CallNotes.of(load()).of("Q-3101"));
    note("Q-3101", "haze", CallOutcome.SOLVED);
    assertEquals(HEADER + "Q-3101,2026-11-25T20:05:06,haze,solved\n", text());
    note("Q-3102", "other", CallOutcome.COMING_IN);
    note("Q-3101", "dust", CallOutcome.OPEN);
    assertEquals(
        HEADER
            + "Q-3101,2026-11-25T20:05:06,haze,solved\n"
            + "Q-3102,2026-11-25T20:05:06,other,coming-in\n"
            + "Q-3101,2026-11-25T20:05:06,dust,open\n",
        text());
    assertEquals(
        List.of("haze", "dust"),
        CallNotes.of(load()).of("Q-3101").stream().map(CallNote::question).toList());
  }

  @Test
  void aHistoryBeginsWithTheFirstCall() throws IOException {
    write(
        "Q-3101,2026-11-27,dust,open\nQ-3101,2026-11-27T09:00,corner,open\n"
            + "Q-3101,2026-11-26T18:00:01,haze,solved\n");
    assertEquals(
        List.of("2026-11-26T18:00:01", "2026-11-27T09:00", "2026-11-27T12:00"),
        CallNotes.of(load()).of("Q-3101").stream().map(n -> n.at().toString()).toList());
  }

  @Test
  void aQuestionOfEachLanguageIsKnown() {
    List<String> known = CallNotes.questions(load());
    assertTrue(known.containsAll(List.of("haze", "windows", "corner", "other")), known::toString);
  }

  @Test
  void whatIsNotKnownIsRefused() throws IOException {
    String job = refused("Q-3110", "haze", AT);
    assertTrue(job.startsWith("There is no job Q-3110; did you mean Q-310"), job);
    String question = refused("Q-3101", "hase", AT);
    assertTrue(question.startsWith("There is no question hase; did you mean haze?"), question);
    assertTrue(question.contains(" corner, "), question);
    refused("Q-3101", "haze", Instant.parse("2200-01-02T00:00:00Z"));
    assertFalse(Files.exists(shop.resolve(Callbacks.FILE)));
  }

  private String refused(String job, String question, Instant at) {
    return assertThrows(
            IllegalArgumentException.class,
            () -> CallNotes.note(load(), job, question, CallOutcome.OPEN, at))
        .getMessage();
  }

  /** A customer with a card can call, whatever became of the job's file. */
  @Test
  void whoHoldsACardCanCall() throws IOException {
    Files.writeString(
        shop.resolve("handed-over.csv"),
        "job,first-name,car,came-in\nQ-3109,Ada,white van,2026-11-20\n");
    Files.writeString(
        shop.resolve("link-ledger.csv"), "job,token,since\nQ-3109,7F3K9QX2M4TBAAAA,2026-11-20\n");
    note("Q-3109", "haze", CallOutcome.OPEN);
    Files.writeString(shop.resolve("jobs/Q-3102.yaml"), "id: [\n");
    note("Q-3102", "haze", CallOutcome.OPEN);
    assertEquals(1, CallNotes.of(load()).of("Q-3109").size());
    assertEquals(1, CallNotes.of(load()).of("Q-3102").size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Q-3101,2026-11-26T09:00,haze,done|\"done\" is none of solved, coming-in, open",
        "Q-3101,yesterday,haze,open|\"yesterday\" is not a date that Curewindow wrote",
        "Q-3101,2200-01-01T00:00,haze,open|\"2200-01-01T00:00\" is not a date",
        "Q-3101,2026-11-26T09:00,,open|the row lacks its job or its question",
        " ,2026-11-26T09:00,haze,open|the row lacks its job or its question",
        "Q-3101,2026-11-26T09:00,haze|the row has 3 fields instead of 4"
      })
  void aBrokenRowIsToldAndTheFileStaysAsItIs(String row, String what) throws IOException {
    write("Q-3102,2026-11-26T09:00,haze,open\n" + row + "\n");
    String before = text();
    assertEquals(1, told().size(), () -> told().toString());
    assertTrue(told().get(0).startsWith("callbacks.csv:3:1  " + what), () -> told().toString());
    assertTrue(load().ledgerIsBroken());
    assertThrows(IOException.class, () -> note("Q-3101", "haze", CallOutcome.OPEN));
    assertEquals(before, text());
    assertEquals(List.of(), CallNotes.of(load()).of("Q-3102"), "the file counts as a whole");
  }

  @Test
  void anotherHeaderIsTold() throws IOException {
    Files.writeString(shop.resolve(Callbacks.FILE), "job,day,hold,told\n");
    assertTrue(
        told().get(0).contains("the first line is not job,at,question,outcome"),
        () -> told().toString());
  }

  @Test
  void onlyItsOwnerReadsIt() throws IOException {
    assumeTrue(Files.getFileStore(shop).supportsFileAttributeView("posix"));
    Files.setPosixFilePermissions(shop, PosixFilePermissions.fromString("rwxr-xr-x"));
    note("Q-3101", "haze", CallOutcome.SOLVED);
    assertEquals(
        "rw-------",
        PosixFilePermissions.toString(Files.getPosixFilePermissions(shop.resolve(Callbacks.FILE))));
  }

  /** Each reads what stands there under the lock, and not what it knew before. */
  @Test
  void callsAtTheSameTimeAreAllKept() throws Exception {
    LoadedShop loaded = load();
    ExecutorService several = Executors.newFixedThreadPool(4);
    try {
      List<Callable<Void>> calls =
          IntStream.range(0, 20)
              .mapToObj(
                  i ->
                      (Callable<Void>)
                          () -> {
                            CallNotes.note(
                                loaded, "Q-3101", "haze", CallOutcome.OPEN, AT.plusSeconds(i));
                            return null;
                          })
              .toList();
      for (var done : several.invokeAll(calls)) {
        done.get();
      }
    } finally {
      several.shutdownNow();
    }
    assertEquals(20, CallNotes.of(load()).of("Q-3101").stream().distinct().count());
  }

  @Test
  void aPressMakesNothingAnewForACall() throws IOException {
    MadeBefore.From before = new Inputs(load(), shop.resolve("out")).open();
    note("Q-3101", "haze", CallOutcome.SOLVED);
    assertEquals(before, new Inputs(load(), shop.resolve("out")).open());
  }

  @Test
  void aRenamedJobTakesItsCallsAlongAndKeepsThoseOfItsNewId() throws IOException {
    Files.writeString(
        shop.resolve("link-ledger.csv"), "job,token,since\nQ-3101,7F3K9QX2M4TBAAAA,2026-11-20\n");
    write(
        "Q-3101,2026-11-25T09:00,haze,open\nQ-3102,2026-11-25T10:00,dust,open\n"
            + "Q-3150,2026-11-25T11:00,haze,solved\n");
    Path job = shop.resolve("jobs/Q-3101.yaml");
    Files.writeString(job, Files.readString(job).replace("id: Q-3101", "id: Q-3150"));
    Outcome outcome = new JobRecords(load(), CLOCK).rename("Q-3101", "Q-3150");
    assertTrue(outcome.done(), outcome::toString);
    assertEquals(
        HEADER
            + "Q-3150,2026-11-25T09:00,haze,open\nQ-3102,2026-11-25T10:00,dust,open\n"
            + "Q-3150,2026-11-25T11:00,haze,solved\n",
        text());
  }

  @Test
  void aForgottenCustomersCallsGo() throws IOException {
    write("Q-3101,2026-11-25T09:00,haze,open\nQ-3102,2026-11-25T10:00,dust,open\n");
    Outcome outcome = new JobRecords(load(), CLOCK).forget("Q-3101");
    assertTrue(
        outcome.lines().get(0).contains("1 row of callbacks.csv"), outcome.lines()::toString);
    assertEquals(HEADER + "Q-3102,2026-11-25T10:00,dust,open\n", text());
  }

  /** The job's file was deleted by hand before anybody asked to forget the person. */
  @Test
  void callsOfAJobThatIsGoneCanBeForgotten() throws IOException {
    write("Q-3109,2026-11-25T09:00,haze,open\n");
    assertTrue(new JobRecords(load(), CLOCK).forget("Q-3109").done());
    assertEquals(HEADER, text());
  }
}
