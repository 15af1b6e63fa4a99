package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.OperatingSystemMXBean;
import curewindow.handout.HandoutPress;
import curewindow.problem.Faults;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.PaperChoice;
import curewindow.shop.SheetPaper;
import curewindow.told.JobView;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every file that is read from a shop folder is spoilt at random, over and over: what is wrong is
 * told as the user's mistake, soon, and never as a fault of the program's own. Seeded; {@code
 * -Dspoilt=50000} spoils more files than a usual build does.
 */
class SpoiltInputsTest {

  private static final int FILES = Integer.getInteger("spoilt", 2000);

  /** So many spoilt jobs are read at a time, as one says nothing of another. */
  private static final int JOBS = 400;

  /** How much more of the processor's time spoilt files may take than whole ones. */
  private static final Duration MOST = Duration.ofSeconds(2);

  /** The time of a clock would tell of whatever else the machine does. */
  private static final OperatingSystemMXBean PROCESS =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

  private static final Duration HANGING = Duration.ofMinutes(2);

  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-01-05T12:00:00Z"), ZoneOffset.UTC);

  private static final Map<String, String> OWN =
      Map.of(
          "visits.csv",
          "job,day,what,result,finished,pickup,note\n"
              + "Q-3101,2026-12-16,,fine,,,\n"
              + "Q-3113,2026-12-21,haze,mended,,,lower corner pressed down\n",
          "weather/observed.csv",
          "place,time,air,dew-point,humidity,irradiance\n"
              + "seattle,2026-11-25T14:00,8.5,6.0,,120\n"
              + "seattle,2026-11-25T15:00,8.0,,86,\n",
          "content/places/mill-creek.yaml",
          "name: Mill Creek\nlatitude: 47.86\nlongitude: -122.20\nheight: 110\n"
              + "zone: America/Los_Angeles\n",
          "link-ledger.csv",
          "job,token,since\nQ-3101,7F3K9QX2M4TBAAAA,2026-11-24\n",
          "printed-dates.csv",
          "job,hold,state,date,printed\n"
              + "Q-3101,windows-up,safe-by,2026-11-29T18:00:00-08:00,2026-11-24T15:00\n",
          "calendar-dates.csv",
          "job,calendar,event,start,sequence,changed,text\n"
              + "Q-3101,,windows-up,2026-11-29T18:00:00Z,0,2026-11-24T23:00:00Z,abc\n",
          "calls.csv",
          "job,day,hold,told\nQ-3101,2026-11-26,windows-up,2026-11-29T18:00:00-08:00\n",
          "callbacks.csv",
          "job,at,question,outcome\nQ-3101,2026-11-26T09:05:30,haze,solved\n",
          "handed-over.csv",
          "job,first-name,car,came-in\nQ-3101,Mara,blue sedan,2026-11-24\n");

  private static final List<String> COPIES =
      List.of(
          "content/catalogue/films.yaml",
          "content/catalogue/holds.yaml",
          "content/catalogue/services.yaml",
          "content/catalogue/spots.yaml",
          "content/words/en/page.yaml",
          "content/words/en/catalogue.yaml",
          "content/guides/en/tint.md",
          "content/guides/en/normal.md");

  private static final String CARD = "site-templates/card.html";

  private static final List<String> TEMPLATES =
      List.of("site-templates/customer.html", "site-templates/page.css", CARD);

  private static final List<String> JOB_FILES = List.of("jobs/Q-3101.yaml", "jobs/Q-3113.yaml");

  @TempDir Path temp;
  private final Random random = new Random(20261130);
  private final Map<String, byte[]> whole = new TreeMap<>();
  private final List<String> wrong = new ArrayList<>();

  @BeforeEach
  void layOut() throws IOException {
    Path demo = Path.of("content/demo");
    for (String file :
        List.of("shop.yaml", "logo.svg", "jobs.csv", JOB_FILES.get(0), JOB_FILES.get(1))) {
      whole.put(file, Files.readAllBytes(demo.resolve(file)));
    }
    for (String file : COPIES) {
      whole.put(file, Files.readAllBytes(Path.of(file)));
    }
    OWN.forEach((file, text) -> whole.put(file, text.getBytes()));
    for (Map.Entry<String, byte[]> file : whole.entrySet()) {
      write(file.getKey(), file.getValue());
    }
    for (String file : List.of("shop.yaml", COPIES.get(0), TEMPLATES.get(0), CARD)) {
      assertEquals(List.of(), problems(file).stream().filter(Problem::isError).toList(), file);
    }
  }

  private void write(String file, byte[] bytes) throws IOException {
    Path path = temp.resolve(file);
    Files.createDirectories(path.getParent());
    Files.write(path, bytes);
  }

  /** Reads all of the shop folder, and makes what a file goes into. */
  private List<Problem> problems(String file) {
    LoadedShop shop = LoadedShop.load(temp, CLOCK);
    List<Problem> all = new ArrayList<>();
    if (COPIES.contains(file)) {
      all.addAll(shop.problems());
    }
    if (shop.shop().isPresent() && !shop.ledgerIsBroken()) {
      Problems more = new Problems();
      List<JobView> views = JobViews.of(shop, shop.jobs(), Tokens.SAMPLE, more);
      if (file.equals(CARD)) {
        HandoutPress.read(shop.files(), Handout.WALLET, more)
            .ifPresent(
                press ->
                    CardFile.print(
                        press, views.subList(0, 1), PaperChoice.on(SheetPaper.NONE), more));
      } else if (file.startsWith("site-templates")) {
        List<List<JobView>> first = List.of(views.subList(0, 1));
        Rendering.of(shop, more).customers(first, Calendars.unnoted(), () -> {});
      } else if (COPIES.contains(file)) {
        more.addAll(Press.rehearse(shop));
      }
      all.addAll(more.all());
    }
    return all;
  }

  @Test
  void noFileBringsOutAFaultOrTakesLong() throws IOException {
    List<String> names = whole.keySet().stream().filter(n -> !n.startsWith("jobs/")).toList();
    int done = 0;
    while (done < FILES) {
      for (String name : names) {
        byte[] spoilt = Mutations.of(whole.get(name), random);
        write(name, spoilt);
        look(name, Map.of(name, spoilt));
        write(name, whole.get(name));
        done++;
      }
      for (String name : TEMPLATES) {
        byte[] spoilt = Mutations.of(whole(name), random);
        write(name, spoilt);
        look(name, Map.of(name, spoilt));
        Files.delete(temp.resolve(name));
        done++;
      }
      done += jobs();
    }
    assertEquals(List.of(), wrong);
  }

  private int jobs() throws IOException {
    Map<String, byte[]> jobs = new TreeMap<>();
    for (int i = 0; i < JOBS; i++) {
      byte[] file = whole.get(JOB_FILES.get(i % JOB_FILES.size()));
      jobs.put("jobs/spoilt-" + i + ".yaml", Mutations.of(file, random));
    }
    for (Map.Entry<String, byte[]> job : jobs.entrySet()) {
      write(job.getKey(), job.getValue());
    }
    look("jobs", jobs);
    for (String job : jobs.keySet()) {
      Files.delete(temp.resolve(job));
    }
    return jobs.size();
  }

  private void look(String name, Map<String, byte[]> spoilt) throws IOException {
    try {
      Duration took = time(name);
      if (took.compareTo(MOST) > 0 && longer(name, spoilt).compareTo(MOST) > 0) {
        keep(name, "took " + took, spoilt);
      }
    } catch (RuntimeException | Error e) {
      keep(name, e.toString() + " " + List.of(e.getStackTrace()).subList(0, 3), spoilt);
    }
  }

  private Duration longer(String name, Map<String, byte[]> spoilt) throws IOException {
    for (String file : spoilt.keySet()) {
      write(file, whole(file));
    }
    Duration usual = time(name);
    for (Map.Entry<String, byte[]> file : spoilt.entrySet()) {
      write(file.getKey(), file.getValue());
    }
    return time(name).minus(usual);
  }

  private byte[] whole(String file) throws IOException {
    if (TEMPLATES.contains(file)) {
      return Files.readAllBytes(Path.of(file));
    }
    return whole.getOrDefault(file, whole.get(JOB_FILES.get(0)));
  }

  private Duration time(String name) {
    long start = PROCESS.getProcessCpuTime();
    List<Problem> told = assertTimeoutPreemptively(HANGING, () -> problems(name));
    Duration took = Duration.ofNanos(PROCESS.getProcessCpuTime() - start);
    List<String> faults = told.stream().filter(Faults::isFault).map(Problem::oneLine).toList();
    assertTrue(faults.isEmpty(), faults::toString);
    return took;
  }

  /** What went wrong is written down, so that it can be looked at. */
  private void keep(String name, String what, Map<String, byte[]> spoilt) throws IOException {
    Path kept = Path.of("target/spoilt-inputs", String.valueOf(wrong.size()));
    for (Map.Entry<String, byte[]> file : spoilt.entrySet()) {
      Path path = kept.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
    }
    wrong.add(name + ": " + what + " (" + kept + ")");
  }
}
