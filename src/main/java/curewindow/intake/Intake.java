package curewindow.intake;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.ImportMap;
import curewindow.shop.ImportMaps;
import curewindow.shop.ShopFiles;
import curewindow.site.AtomicFiles;
import curewindow.site.LoadedShop;
import curewindow.site.NewJobs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Takes jobs from the table of another program into a shop folder. */
public final class Intake {

  private static final Pattern NUMBERED_REST = Pattern.compile("-rest(-[0-9]+)?$");

  private Intake() {}

  /**
   * Whether a shop has a map.
   *
   * @param folder the shop folder
   * @param map the map's name
   * @return true where something has the name of its file
   */
  public static boolean hasMap(Path folder, String map) {
    return new ShopFiles(folder).isOwn(ImportMaps.file(map));
  }

  /**
   * Guesses the first map of a table; nothing is written.
   *
   * @param table the table
   * @param map the name of the map
   * @param shop the shop
   * @return the map
   */
  public static GuessedMap guess(ForeignTable table, String map, LoadedShop shop) {
    if (!ImportMaps.isName(map)) {
      throw new IllegalArgumentException("a map cannot be called " + map);
    }
    return FirstMap.of(table, map, shop.files(), shop);
  }

  /**
   * Keeps a map in the shop folder.
   *
   * @param map the map
   * @param folder the shop folder
   * @return false where a map of its name is there, which stays as it is
   * @throws IOException where somebody else is at work in the folder, or it cannot be written; the
   *     message is for the user
   */
  public static boolean keep(GuessedMap map, Path folder) throws IOException {
    try (NewJobs lock = NewJobs.in(folder)) {
      return lock.writeMap(map.name(), map.text());
    }
  }

  /**
   * Keeps a map as somebody changed it.
   *
   * @param map its name
   * @param text the text that its file gets
   * @param before the text that its file has; empty for a new map
   * @param folder the shop folder
   * @return false where it is another by now, which stays as it is
   * @throws IOException where somebody else is at work in the folder, or it cannot be written; the
   *     message is for the user
   */
  public static boolean keep(String map, String text, Optional<String> before, Path folder)
      throws IOException {
    if (!ImportMaps.isName(map)) {
      throw new IllegalArgumentException("a map cannot be called " + map);
    }
    try (NewJobs lock = NewJobs.in(folder)) {
      return before.isEmpty() ? lock.writeMap(map, text) : lock.changeMap(map, before.get(), text);
    }
  }

  /**
   * The maps that a shop has.
   *
   * @param folder the shop folder
   * @return their names, in alphabetical order
   */
  public static List<String> maps(Path folder) {
    return ImportMaps.names(new ShopFiles(folder));
  }

  /**
   * Tells what would become of each row; nothing is written.
   *
   * @param table the table
   * @param map the name of a map of the shop, which is read as its file stands now
   * @param shop the shop, as it was read before
   * @return the plan
   */
  public static IntakePlan plan(ForeignTable table, String map, LoadedShop shop) {
    ShopFiles files = shop.files();
    Problems problems = new Problems();
    Optional<ImportMap> read = ImportMaps.read(files, map, problems);
    if (shop.shop().isEmpty()) {
      // Without the shop no job is right.
      List<Problem> errors = shop.errors();
      problems.addAll(errors);
    }
    return read.isEmpty() || problems.hasErrors()
        ? IntakePlan.stopped(table, problems.all())
        : Planning.plan(table, read.get(), files, shop);
  }

  /**
   * Writes the file of each job that is good. What stands in the shop folder is read anew, and
   * nobody else writes into it meanwhile; where the work is cut off, the files that are written are
   * whole, and the same table can be imported again.
   *
   * @param table the table
   * @param map the name of a map of the shop
   * @param folder the shop folder
   * @param clock tells the time of reading
   * @return what became of each row
   * @throws IOException where somebody else is at work in the folder, or it cannot be written; the
   *     message is for the user
   */
  public static IntakePlan carryOut(ForeignTable table, String map, Path folder, Clock clock)
      throws IOException {
    try (NewJobs jobs = NewJobs.in(folder)) {
      IntakePlan plan = plan(table, map, LoadedShop.load(folder, clock));
      for (Map.Entry<String, String> job : plan.jobs().entrySet()) {
        if (!jobs.write(job.getKey(), job.getValue())) {
          throw new IOException(
              "jobs/" + job.getKey() + ".yaml has come meanwhile; import the table again");
        }
      }
      return plan;
    }
  }

  /**
   * Writes the rows that are left over beside their table, such as diary-rest.csv beside diary.csv.
   * A file with other rows in it is never written over; the next number is taken then.
   *
   * @param table the file of the table
   * @param plan what became of its rows
   * @return the file; empty where no row is left over
   * @throws IOException where it cannot be written; the message is for the user
   */
  public static Optional<Path> writeRest(Path table, IntakePlan plan) throws IOException {
    Optional<byte[]> rest = plan.rest();
    if (rest.isEmpty()) {
      return Optional.empty();
    }
    for (int number = 1; ; number++) {
      Path file = table.resolveSibling(restName(table.getFileName().toString(), number));
      boolean isThere = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
      if (!isThere) {
        AtomicFiles.writePrivate(file, rest.get());
      }
      if (!isThere || isJustSo(file, rest.get())) {
        return Optional.of(file);
      }
    }
  }

  private static boolean isJustSo(Path file, byte[] bytes) throws IOException {
    return Files.isRegularFile(file)
        && Files.size(file) == bytes.length
        && Arrays.equals(Files.readAllBytes(file), bytes);
  }

  /**
   * What the rows that are left over are called.
   *
   * @param name the name of their table's file, such as diary.csv
   * @return such as diary-rest.csv
   */
  public static String restName(String name) {
    return restName(name, 1);
  }

  private static String restName(String name, int number) {
    int dot = name.lastIndexOf('.');
    String ending = dot > 0 ? name.substring(dot) : "";
    String bare = dot > 0 ? name.substring(0, dot) : name;
    return NUMBERED_REST.matcher(bare).replaceFirst("")
        + "-rest"
        + (number == 1 ? "" : "-" + number)
        + ending;
  }
}
