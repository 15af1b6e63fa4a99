package curewindow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A customer only ever gets the page of their car as it is now. */
class HandOverTest {

  private static final String CAR = "/job/Q-3101";
  private static final String SCREEN = CAR + "/hand-over";
  private static final String OLD = "out of date: make it again";

  @TempDir Path folder;
  private DeskClient desk;

  @BeforeEach
  void open() throws IOException {
    desk = DeskClient.open(folder);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private void change(String file, String from, String to) throws IOException {
    Path path = desk.shop.resolve(file);
    String text = Files.readString(path);
    assertTrue(text.contains(from), text);
    Files.writeString(path, text.replace(from, to));
  }

  /** A desk that read the folder as it is now. */
  private void again() throws IOException {
    desk.close();
    desk = DeskClient.open(folder, DeskClient.NOW);
  }

  /** Stands still for longer than a folder is waited for, once, while a page is being made. */
  private static final class SlowOnce extends Clock {

    private final CountDownLatch begun = new CountDownLatch(1);

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      String press = PagePress.class.getName();
      boolean first =
          begun.getCount() > 0
              && StackWalker.getInstance()
                  .walk(all -> all.anyMatch(f -> f.getClassName().equals(press)));
      if (first) {
        begun.countDown();
        LockSupport.parkNanos(Duration.ofSeconds(12).toNanos());
      }
      return DeskClient.NOW;
    }
  }

  /** The first page of a shop takes a while, in which another tablet may ask for the second. */
  @Test
  void whoAsksForAPageWhileAnotherIsMadeGetsItThen() throws Exception {
    SlowOnce clock = new SlowOnce();
    Desk.Setting own = desk.setting(DeskClient.NOW);
    try (Desk slow = Desk.open(new Desk.Setting(own.shop(), own.out(), 0, own.passcode(), clock))) {
      Browser browser = new Browser(slow);
      CompletableFuture<Integer> first =
          CompletableFuture.supplyAsync(() -> browser.post(CAR + "/press", Map.of()).statusCode());
      assertTrue(clock.begun.await(1, TimeUnit.MINUTES));
      HttpResponse<String> second = browser.post("/job/Q-3102/press", Map.of());
      assertEquals(303, second.statusCode(), second.body());
      assertEquals(303, first.get(1, TimeUnit.MINUTES));
    }
  }

  private boolean hasCode() {
    return desk.page(SCREEN).contains("class=\"code\"");
  }

  /** The job, and what all pages are made from: the shop's address and its own film. */
  @ParameterizedTest
  @CsvSource({
    "jobs/Q-3101.yaml,day: outside,day: garage",
    "shop.yaml,https://care.quillhaven.example/,https://pages.quillhaven.example/"
  })
  void aPageFromBeforeAChangeIsNotHandedOver(String file, String from, String to)
      throws IOException {
    desk.pressed("Q-3101");
    assertTrue(hasCode());
    assertFalse(desk.page(SCREEN).contains(OLD));
    assertFalse(desk.page(CAR).contains(OLD));
    assertFalse(desk.page("/").contains(OLD));
    change(file, from, to);
    again();
    assertFalse(hasCode());
    for (String path : new String[] {SCREEN, CAR, "/"}) {
      assertTrue(desk.page(path).contains(OLD), path + "\n" + desk.page(path));
    }
    desk.post(CAR + "/taken");
    desk.post(CAR + "/print", "as", "wallet");
    assertFalse(Files.exists(desk.shop.resolve("handed-over.csv")), "nothing left the shop");
    String made = desk.pressed("Q-3101");
    assertTrue(made.contains("class=\"code\"") && !made.contains(OLD), made);
    assertEquals(303, desk.post(CAR + "/taken").statusCode());
    assertTrue(Files.exists(desk.shop.resolve("handed-over.csv")));
  }

  /** Nobody at the counter waits for other cars' pages; they follow. */
  @Test
  void onePageIsMadeAtOnceAndTheOthersFollow() throws Exception {
    String made = desk.pressed("Q-3101");
    assertTrue(made.contains("class=\"code\""), made);
    assertTrue(made.contains("other pages are being updated too; no need to wait."), made);
    Instant end = Instant.now().plus(Duration.ofMinutes(2));
    while (!isMade("Q-3108")) {
      assertTrue(Instant.now().isBefore(end), "the page of Q-3108 is not made");
      Thread.sleep(100);
    }
    assertFalse(desk.pressed("Q-3101").contains("being updated"), "none is left");
  }

  private boolean isMade(String job) {
    return desk.page("/job/" + job + "/hand-over").contains("class=\"code\"");
  }

  /** The card says what the page says, so the page need not be made again for it. */
  @Test
  void aCardThatIsPrintedLeavesThePageAsItIs() throws IOException {
    desk.pressed("Q-3101");
    desk.post(CAR + "/print", "as", "wallet");
    assertTrue(Files.exists(desk.shop.resolve("printed-dates.csv")));
    assertTrue(hasCode());
    desk.pressed("Q-3101");
    assertTrue(hasCode());
    change("jobs/Q-3101.yaml", "day: outside", "day: garage");
    again();
    assertFalse(hasCode());
  }

  @Test
  void aPressLeadsToAScreenThatCanBeGoneBackTo() {
    HttpResponse<String> answer = desk.post(CAR + "/press");
    assertEquals(303, answer.statusCode());
    String at = answer.headers().firstValue("Location").orElseThrow();
    for (int i = 0; i < 2; i++) {
      assertTrue(desk.page(at).contains("The page is made."), "also after going back");
    }
    assertFalse(desk.page(SCREEN).contains("The page is made."), "said once, where it was done");
  }

  @Test
  void whereThePageIsNotOnlineYetNobodyIsToldToScanIt() {
    String made = desk.pressed("Q-3101");
    assertTrue(made.contains("does not answer with this page yet"), made);
    assertFalse(made.contains("scan this now"), made);
    assertTrue(made.contains("hand them the card now"), made);
    assertTrue(made.indexOf("id=\"h-print\"") < made.indexOf("id=\"h-code\""), "the card first");
    assertFalse(desk.page(SCREEN).contains("scan this now"));
  }
}
