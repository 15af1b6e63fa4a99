package curewindow.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;

/**
 * What a shop calls on most days, one after the other in one process: so {@link QuickStart} has all
 * their classes in one archive.
 */
final class CounterDay {

  private CounterDay() {}

  /**
   * Runs the commands; the first that fails ends it with its exit code.
   *
   * @param args the shop folder, a job of it, and a folder for what is made
   */
  public static void main(String[] args) {
    Locale.setDefault(Locale.ROOT);
    PrintWriter said = new PrintWriter(System.out, true);
    Path made = Path.of(args[2]);
    for (List<String> words : commands(args[0], args[1], made)) {
      int code = Curewindow.run(Clock.systemUTC(), said, said, words.toArray(String[]::new));
      if (code != Exit.OK) {
        System.exit(code);
      }
    }
  }

  private static List<List<String>> commands(String shop, String job, Path made) {
    String paper = made.resolve("paper.pdf").toString();
    String site = made.resolve("site").toString();
    return List.of(
        List.of("dates", job, "--shop", shop),
        List.of("card", job, "--shop", shop, "--sheet", "none", "--out", paper),
        List.of("card", job, "--shop", shop, "--out", paper),
        List.of("check", "--shop", shop),
        List.of("press", "--shop", shop, "--out", site),
        List.of("press", "--shop", shop, "--out", site),
        List.of("due", "--shop", shop));
  }
}
