package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cure.CureCase;
import curewindow.cure.Parking;
import curewindow.cure.ParkingPlan;
import curewindow.cure.Timeline;
import curewindow.shop.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Dates that are kept for the next command are the dates that would be computed. */
class KeptDatesTest {

  @TempDir Path temp;
  private LoadedShop shop;

  @BeforeEach
  void copyTheDemo() throws IOException {
    PressedDemo.layOutShop(temp);
    try (Stream<Path> jobs = Files.list(Path.of("content/demo/jobs"))) {
      for (Path job : jobs.filter(f -> f.toString().endsWith(".yaml")).toList()) {
        Files.copy(job, temp.resolve("jobs").resolve(job.getFileName()));
      }
    }
    shop = load();
  }

  private LoadedShop load() {
    return LoadedShop.load(temp, PressedDemo.CLOCK);
  }

  private List<CureCase> cases() {
    return shop.jobs().stream()
        .flatMap(
            job ->
                Stream.of(
                    shop.cureCase(job),
                    shop.cureCase(job.parkedAs(new ParkingPlan(Parking.SHADE, Parking.SHADE)))))
        .toList();
  }

  private void save(KeptDates kept) throws IOException {
    try (FolderLock lock = FolderLock.on(temp)) {
      kept.save(lock);
    }
  }

  @Test
  void allDatesComeBackAsTheyWere() throws IOException {
    List<CureCase> cases = cases();
    List<Timeline> dates = cases.stream().map(c -> shop.dates().curing().timeline(c)).toList();
    assertTrue(cases.size() > 20);
    shop.dates().keep();
    KeptDates kept = new KeptDates(temp);
    assertEquals(dates.stream().map(Optional::of).toList(), cases.stream().map(kept::of).toList());
    assertEquals(
        PosixFilePermissions.fromString("rw-------"),
        Files.getPosixFilePermissions(temp.resolve(KeptDates.FILE)));
    byte[] before = Files.readAllBytes(temp.resolve(KeptDates.FILE));
    save(kept);
    assertArrayEquals(before, Files.readAllBytes(temp.resolve(KeptDates.FILE)));
  }

  @Test
  void whatChangesADateIsAnotherCase() {
    Job job = shop.jobs().get(0);
    CureCase own = shop.cureCase(job);
    KeptDates kept = new KeptDates(temp);
    kept.keep(own, shop.dates().curing().timeline(own));
    CureCase other =
        new CureCase(
            own.items(),
            own.stays(),
            own.parking(),
            own.paint(),
            own.place(),
            own.bay(),
            own.bondEnergy() + 1);
    assertEquals(Optional.empty(), kept.of(other));
    assertEquals(Optional.empty(), kept.of(own.with(own.items().subList(1, own.items().size()))));
  }

  @Test
  void onlyWhatWasAskedForIsKept() throws IOException {
    List<CureCase> cases = cases();
    cases.forEach(c -> shop.dates().curing().timeline(c));
    shop.dates().keep();
    KeptDates next = new KeptDates(temp);
    next.of(cases.get(0));
    save(next);
    KeptDates last = new KeptDates(temp);
    assertTrue(last.of(cases.get(0)).isPresent());
    assertEquals(Optional.empty(), last.of(cases.get(2)));
  }

  @Test
  void aTornOrForeignFileIsAsGoodAsNone() throws IOException {
    CureCase job = cases().get(0);
    Timeline dates = shop.dates().curing().timeline(job);
    shop.dates().keep();
    Path file = temp.resolve(KeptDates.FILE);
    byte[] whole = Files.readAllBytes(file);
    for (int length : List.of(0, 1, 30, whole.length / 2, whole.length - 1)) {
      Files.write(file, Arrays.copyOf(whole, length));
      assertEquals(Optional.empty(), new KeptDates(temp).of(job), "cut at " + length);
      assertEquals(dates, load().dates().curing().timeline(job));
    }
    whole[whole.length / 2] ^= 1;
    Files.write(file, whole);
    assertEquals(Optional.empty(), new KeptDates(temp).of(job), "one bit is wrong");
    Files.writeString(file, "not ours");
    assertEquals(Optional.empty(), new KeptDates(temp).of(job));
  }

  /** Measured weather moves dates, so they are computed where there is some. */
  @Test
  void whereWeatherWasMeasuredNothingIsTakenFromThere() throws IOException {
    CureCase job =
        cases().stream().filter(c -> c.place().id().equals("seattle")).findFirst().orElseThrow();
    Timeline usual = shop.dates().curing().timeline(job);
    shop.dates().keep();
    StringBuilder hours = new StringBuilder("place,time,air,dew-point\n");
    for (int hour = 0; hour < 24; hour++) {
      hours.append("seattle,2026-11-24T%02d:00-08:00,-9,-12\n".formatted(hour));
    }
    Files.createDirectories(temp.resolve("weather"));
    Files.writeString(temp.resolve("weather/observed.csv"), hours);
    Clock later = Clock.fixed(Instant.parse("2026-11-26T00:00:00Z"), ZoneOffset.UTC);
    LoadedShop cold = LoadedShop.load(temp, later);
    assertFalse(cold.hasErrors(), () -> cold.problems().toString());
    assertNotEquals(usual, cold.dates().curing().timeline(job));
  }
}
