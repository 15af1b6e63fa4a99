package curewindow.cli;

import curewindow.shop.NewShop;
import curewindow.site.AtomicFiles;
import curewindow.site.LoadedShop;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes a script that starts the program with an archive of its classes as Java keeps them in
 * memory, and without the compiler that only pays in long runs. The archive is recorded while a
 * sample shop lives through a {@link CounterDay}. Java passes over an archive of another jar or of
 * another Java.
 *
 * @param jar the program's jar
 * @param java the command that runs Java
 * @param machine what the script is for
 */
record QuickStart(Path jar, Path java, Machine machine) {

  /** Kinds of machines. */
  enum Machine {
    /** Scripts of cmd.exe. */
    WINDOWS,
    /** Scripts of the POSIX shell. */
    POSIX,
    /** The same, and memory comes in large pages to those who ask, which saves a sixth. */
    LARGE_PAGES;

    /** The machine that the program runs on. */
    static Machine here() {
      return of(System.getProperty("os.name"), LARGE);
    }

    /** The kind by the name of the system and by the file in which Linux tells of large pages. */
    static Machine of(String system, Path large) {
      if (system.startsWith("Windows")) {
        return WINDOWS;
      }
      try {
        String mode = Files.readString(large);
        return mode.contains("[madvise]") || mode.contains("[always]") ? LARGE_PAGES : POSIX;
      } catch (IOException e) {
        return POSIX;
      }
    }
  }

  private static final String NAME = "curewindow";

  private static final String LOGO =
      """
      <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64">
        <g fill="none" stroke="#14252c" stroke-width="5" stroke-linecap="round">
          <circle cx="32" cy="32" r="27"/>
          <path fill="#0b5d57" d="M46 12C32 14 21 25 19 44L24 41C36 39 45 28 46 12Z"/>
        </g>
      </svg>
      """;

  /**
   * Each for a reason: no second compiler; memory tidied by one thread, which is ready at once; no
   * file for who watches; no word about an archive that cannot be used.
   */
  private static final List<String> OPTIONS =
      List.of(
          "-XX:TieredStopAtLevel=1",
          "-XX:+UseSerialGC",
          "-XX:-UsePerfData",
          "-Xlog:cds=off",
          "-Xlog:cds+dynamic=off");

  private static final Path LARGE = Path.of("/sys/kernel/mm/transparent_hugepage/enabled");

  /** For this machine and the Java that runs now. */
  static QuickStart of(Path jar) {
    Machine machine = Machine.here();
    String java = machine == Machine.WINDOWS ? "java.exe" : "java";
    return new QuickStart(
        jar.toAbsolutePath(), Path.of(System.getProperty("java.home"), "bin", java), machine);
  }

  /**
   * Writes the script and its archive.
   *
   * @param folder a folder
   * @return the script
   * @throws IOException where they cannot be written; the message is for the user
   */
  Path write(Path folder) throws IOException {
    Path archive = folder.toAbsolutePath().normalize().resolve(NAME + ".jsa");
    Path script = archive.resolveSibling(isWindows() ? NAME + ".cmd" : NAME);
    refuseFolders(archive, script);
    Path work = Files.createTempDirectory(NAME);
    try {
      Path recorded = work.resolve(NAME + ".jsa");
      record(work, recorded);
      AtomicFiles.write(archive, Files.readAllBytes(recorded));
    } finally {
      delete(work);
    }
    Charset charset = Charset.forName(System.getProperty("native.encoding", "UTF-8"));
    AtomicFiles.write(script, script(archive).getBytes(charset));
    if (!isWindows() && !script.toFile().setExecutable(true, false)) {
      throw new IOException(script + " cannot be made executable; name another folder with --out");
    }
    return script;
  }

  private static void refuseFolders(Path... files) throws IOException {
    for (Path file : files) {
      if (Files.isDirectory(file)) {
        throw new IOException(file + " is a folder; name another place with --out");
      }
    }
  }

  /** The script's text. */
  String script(Path archive) {
    List<String> options = new ArrayList<>(OPTIONS);
    if (machine == Machine.LARGE_PAGES) {
      options.add("-XX:+UseTransparentHugePages");
    }
    options.add("-XX:SharedArchiveFile=" + archive);
    List<String> command = command(options, List.of("-jar", jar.toString()));
    String line = command.stream().map(this::quoted).collect(Collectors.joining(" "));
    return isWindows() ? "@" + line + " %*\r\n" : "#!/bin/sh\nexec " + line + " \"$@\"\n";
  }

  private boolean isWindows() {
    return machine == Machine.WINDOWS;
  }

  private List<String> command(List<String> options, List<String> program) {
    List<String> command = new ArrayList<>(List.of(java.toString()));
    command.addAll(options);
    command.addAll(program);
    return command;
  }

  private String quoted(String word) {
    return isWindows()
        ? "\"" + word.replace("%", "%%") + "\""
        : "'" + word.replace("'", "'\\''") + "'";
  }

  private void record(Path work, Path archive) throws IOException {
    Path shop = work.resolve("shop");
    if (NewShop.write(shop) instanceof NewShop.Refused refused) {
      throw new IOException(refused.problem().message() + "; " + refused.problem().fix());
    }
    lookOwn(shop);
    String job = LoadedShop.load(shop, Clock.systemUTC()).jobs().get(0).id();
    List<String> options = new ArrayList<>(OPTIONS);
    options.add("-XX:ArchiveClassesAtExit=" + archive);
    List<String> command =
        command(options, List.of("-cp", jar.toString(), CounterDay.class.getName()));
    command.addAll(List.of(shop.toString(), job, work.resolve("made").toString()));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String said;
    try (InputStream in = process.getInputStream()) {
      said = new String(in.readAllBytes(), Charset.defaultCharset()).strip();
    }
    if (process.onExit().join().exitValue() != Exit.OK || !Files.exists(archive)) {
      throw new IOException(
          "Java made no archive of the classes in "
              + jar
              + "; call the program as before. It said: "
              + said.lines().findFirst().orElse("nothing"));
    }
  }

  /** A logo and a color, as what reads and draws them is a tenth of all classes. */
  private static void lookOwn(Path shop) throws IOException {
    Files.writeString(shop.resolve("logo.svg"), LOGO);
    Files.writeString(
        shop.resolve("shop.yaml"),
        "\nlogo: logo.svg\ncolor: \"#0b5d57\"\n",
        StandardOpenOption.APPEND);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
