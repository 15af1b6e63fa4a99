package curewindow.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** What a second process does beside a test: a program of its own, on the test's class path. */
final class SecondProgram {

  private SecondProgram() {}

  /** Starts it; what it prints is read from the process. */
  static Process start(Object... args) throws IOException {
    return new ProcessBuilder(command(args)).redirectErrorStream(true).start();
  }

  /** How it is called. */
  static List<String> command(Object... args) {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-Xshare:auto", "-XX:TieredStopAtLevel=1", "-cp"));
    words.add(System.getProperty("java.class.path"));
    words.add(SecondProgram.class.getName());
    for (Object arg : args) {
      words.add(arg.toString());
    }
    return words;
  }

  /** All that a process printed, when it is done. */
  static String said(Process process) throws IOException {
    return new String(process.getInputStream().readAllBytes());
  }

  public static void main(String[] args) throws IOException {
    Path path = Path.of(args[1]);
    switch (args[0]) {
      case "hold" -> hold(path);
      case "try" -> FolderLock.on(path, Duration.ofMillis(100)).close();
      case "rows" -> rows(path, args[2], Integer.parseInt(args[3]));
      case "write" -> AtomicFiles.write(path, new byte[Integer.parseInt(args[2])]);
      case "press" -> press(path, Path.of(args[2]));
      default -> throw new IllegalArgumentException(args[0]);
    }
  }

  private static void press(Path shop, Path out) throws IOException {
    Press.run(LoadedShop.load(shop, PressedDemo.CLOCK), out, PressedDemo.CLOCK, Tokens.secure());
  }

  /** Holds a folder, in the middle of writing a file, until it is killed. */
  private static void hold(Path folder) throws IOException {
    FolderLock.on(folder);
    Files.writeString(folder.resolve(".half-17.tmp"), "half");
    System.out.println("held");
    System.in.read();
  }

  private static void rows(Path shop, String name, int count) throws IOException {
    for (int i = 0; i < count; i++) {
      try (FolderLock lock = FolderLock.on(shop, Duration.ofSeconds(60))) {
        LinkLedger ledger = Ledgers.links(lock);
        ledger.tokenOf(name + i, Tokens.secure(), LocalDate.of(2026, 11, 25));
        ledger.save(LocalDate.of(2026, 11, 25));
      }
    }
  }
}
