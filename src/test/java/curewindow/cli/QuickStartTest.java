package curewindow.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.cli.QuickStart.Machine;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code quick-start}: its script, and the program called by it. */
final class QuickStartTest {

  private static final String MADE_BY_US = "curewindow.cli.CardCommand";

  @TempDir Path temp;

  /** The program as a jar that calls for its libraries where the tests have them. */
  private static Path jar(Path folder) throws IOException {
    Path jar = Files.createDirectories(folder).resolve("program.jar");
    Manifest manifest = new Manifest();
    Attributes main = manifest.getMainAttributes();
    main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
    main.put(Attributes.Name.MAIN_CLASS, "curewindow.cli.Curewindow");
    main.put(
        Attributes.Name.CLASS_PATH,
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(entry -> entry.endsWith(".jar"))
            .map(entry -> folder.toAbsolutePath().relativize(Path.of(entry)).toString())
            .collect(Collectors.joining(" ")));
    try (OutputStream file = Files.newOutputStream(jar);
        JarOutputStream out = new JarOutputStream(file, manifest)) {
      Path classes = Path.of("target/classes");
      out.putNextEntry(new ZipEntry("curewindow/starter/"));
      for (Map.Entry<String, byte[]> entry : Typed.contents(classes).entrySet()) {
        out.putNextEntry(new ZipEntry(entry.getKey().replace('\\', '/')));
        out.write(entry.getValue());
      }
    }
    return jar;
  }

  private static Typed call(Map<String, String> with, Object... words) throws IOException {
    List<String> command = new ArrayList<>();
    for (Object word : words) {
      command.add(word.toString());
    }
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().putAll(with);
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Typed(process.onExit().join().exitValue(), said);
  }

  @Test
  void theScriptMakesTheSameCardFromClassesThatJavaKept() throws IOException {
    Path jar = jar(temp.resolve("bin"));
    Path shop = temp.resolve("shop");
    assertEquals(Exit.OK, Typed.run("new-shop", shop).code());
    Path odd = Files.createDirectories(temp.resolve("it's 100 % ours"));
    Path script = QuickStart.of(jar).write(odd);
    assertEquals(
        List.of("curewindow", "curewindow.jsa"), List.copyOf(Typed.contents(odd).keySet()));

    Path quick = temp.resolve("quick one.pdf");
    Object[] card = {script, "card", "1001", "--shop", shop, "--out", quick};
    Typed typed = call(Map.of(), card);
    assertEquals(Exit.OK, typed.code(), typed.said());
    assertEquals(quick + ": wallet cards for 1 job\n", typed.said(), "and no word of Java's");
    Path usual = temp.resolve("usual.pdf");
    assertEquals(Exit.OK, Typed.run("card", "1001", "--shop", shop, "--out", usual).code());
    assertArrayEquals(Files.readAllBytes(usual), Files.readAllBytes(quick));

    Map<String, String> loud = Map.of("JDK_JAVA_OPTIONS", "-Xlog:class+load");
    assertTrue(fromArchive(call(loud, card).said()));

    Files.delete(odd.resolve("curewindow.jsa"));
    Typed without = call(Map.of(), card);
    assertEquals(Exit.OK, without.code(), without.said());
    assertEquals(quick + ": wallet cards for 1 job\n", without.said(), "without the archive too");
    assertFalse(fromArchive(call(loud, card).said()));
  }

  private static boolean fromArchive(String said) {
    return said.lines()
        .filter(line -> line.contains(MADE_BY_US + " "))
        .anyMatch(line -> line.contains("shared objects file (top)"));
  }

  @Test
  void anArchiveOfAnotherJarIsPassedOver() throws IOException {
    Path jar = jar(temp.resolve("bin"));
    Path script = QuickStart.of(jar).write(jar.getParent());
    Files.setLastModifiedTime(jar, java.nio.file.attribute.FileTime.fromMillis(1_000_000_000_000L));
    Typed typed = call(Map.of(), script, "--version");
    assertEquals(Exit.OK, typed.code(), typed.said());
    assertEquals(1, typed.said().lines().count(), typed.said());
  }

  @Test
  void aJarThatCannotMakeACardIsToldAndNothingIsLeft() throws IOException {
    Path folder = Files.createDirectories(temp.resolve("bin"));
    Path broken = Files.writeString(folder.resolve("broken.jar"), "no jar");
    IOException told = assertThrows(IOException.class, () -> QuickStart.of(broken).write(folder));
    assertTrue(told.getMessage().contains("call the program as before"), told.getMessage());
    assertTrue(told.getMessage().contains("broken.jar"), told.getMessage());
    assertEquals(List.of("broken.jar"), List.copyOf(Typed.contents(folder).keySet()));
  }

  @Test
  void aFolderInPlaceOfTheScriptIsLeftAlone() throws IOException {
    Path there = Files.createDirectories(temp.resolve("curewindow"));
    Path jar = temp.resolve("x.jar");
    IOException told = assertThrows(IOException.class, () -> QuickStart.of(jar).write(temp));
    assertEquals(there + " is a folder; name another place with --out", told.getMessage());
    assertEquals(List.of(), List.copyOf(Typed.contents(temp).keySet()));
  }

  @Test
  void onlyAJarCanBeStartedFast() {
    Typed typed = Typed.run("quick-start", "--out", temp);
    assertEquals(Exit.USAGE, typed.code());
    assertTrue(typed.said().contains("does not run from its jar"), typed.said());
  }

  @Test
  void scriptsQuoteWhatTheirShellsRead() {
    Path archive = Path.of("/a b/curewindow.jsa");
    Path java = Path.of("/usr/bin/java");
    Path jar = Path.of("/it's 100%/x.jar");
    assertEquals(
        """
        #!/bin/sh
        exec '/usr/bin/java' '-XX:TieredStopAtLevel=1' '-XX:+UseSerialGC' '-XX:-UsePerfData' '-Xlog:cds=off' \
        '-Xlog:cds+dynamic=off' '-XX:SharedArchiveFile=/a b/curewindow.jsa' '-jar' '/it'\\''s 100%/x.jar' "$@"
        """,
        new QuickStart(jar, java, Machine.POSIX).script(archive));
    assertEquals(
        "@\"/usr/bin/java\" \"-XX:TieredStopAtLevel=1\" \"-XX:+UseSerialGC\" \"-XX:-UsePerfData\" \"-Xlog:cds=off\""
            + " \"-Xlog:cds+dynamic=off\" \"-XX:SharedArchiveFile=/a b/curewindow.jsa\""
            + " \"-jar\" \"/it's 100%%/x.jar\" %*\r\n",
        new QuickStart(jar, java, Machine.WINDOWS).script(archive));
  }

  /** How Linux tells of large pages: its documentation, admin-guide/mm/transhuge. */
  @ParameterizedTest
  @CsvSource({
    "Windows 11, [always] madvise never, WINDOWS",
    "Mac OS X, , POSIX",
    "Linux, , POSIX",
    "Linux, always madvise [never], POSIX",
    "Linux, always [madvise] never, LARGE_PAGES",
    "Linux, [always] madvise never, LARGE_PAGES"
  })
  void largePagesAreUsedWhereLinuxGivesThem(String system, String mode, Machine machine)
      throws IOException {
    Path file = temp.resolve("enabled");
    if (mode != null) {
      Files.writeString(file, mode + "\n");
    }
    assertEquals(machine, Machine.of(system, file));
    String script =
        new QuickStart(Path.of("x.jar"), Path.of("java"), machine).script(Path.of("x.jsa"));
    assertEquals(machine == Machine.LARGE_PAGES, script.contains("HugePages"), script);
  }
}
