package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputTest {

  @TempDir Path temp;

  @Test
  void writesOnlyWhatDiffersAndRemovesWhatIsNoLongerWanted() throws IOException {
    Path out = temp.resolve("out");
    Output first = Output.open(out);
    first.put("site/index.html", "home");
    first.put("site/C/OLD/index.html", "old");
    first.put("site/C/KEPT/index.html", "kept");
    assertEquals(new Output.Written(3, 3, 0), first.write(n -> false));
    first.close();
    Files.setLastModifiedTime(out.resolve("site/index.html"), FileTime.fromMillis(0));
    Files.writeString(out.resolve("site/C/OLD/mine.txt"), "not ours");

    Output second = Output.open(out);
    second.put("site/index.html", "home");
    second.put("site/new.html", "new");
    assertEquals(new Output.Written(2, 1, 1), second.write(n -> n.startsWith("site/C/KEPT/")));
    second.close();
    assertEquals(0, Files.getLastModifiedTime(out.resolve("site/index.html")).toMillis());
    assertFalse(Files.exists(out.resolve("site/C/OLD/index.html")));
    assertTrue(Files.exists(out.resolve("site/C/OLD/mine.txt")));
    assertEquals("kept", Files.readString(out.resolve("site/C/KEPT/index.html")));

    Output third = Output.open(out);
    third.put("site/index.html", "home");
    third.write(n -> false);
    third.close();
    assertFalse(Files.exists(out.resolve("site/C/KEPT")));
    assertEquals(
        "office/files.txt\noffice/made.csv\nsite/index.html\n",
        Files.readString(out.resolve(Output.LIST)));
  }

  @Test
  void refusesAFolderThatHoldsSomethingElse() throws IOException {
    Path letters = Files.createDirectory(temp.resolve("letters"));
    Files.writeString(letters.resolve("dear.txt"), "Dear ...");
    assertTrue(
        assertThrows(IOException.class, () -> Output.open(letters)).getMessage().contains("empty"));
    Path file = letters.resolve("dear.txt");
    assertThrows(IOException.class, () -> Output.open(file));
  }

  @Test
  void refusesNamesThatLeaveTheFolderOrComeTwice() throws IOException {
    try (Output out = Output.open(temp.resolve("out"))) {
      assertThrows(IllegalArgumentException.class, () -> out.put("../up.txt", ""));
      out.put("a.txt", "");
      assertThrows(IllegalArgumentException.class, () -> out.put("a.txt", ""));
    }
  }

  @Test
  void aListThatNamesFilesOutsideRemovesNothingThere() throws IOException {
    Path out = temp.resolve("out");
    Path outside = Files.writeString(temp.resolve("outside.txt"), "stays");
    Files.createDirectories(out.resolve("office"));
    Files.writeString(out.resolve(Output.LIST), "../outside.txt\n");
    write(out);
    assertTrue(Files.exists(outside));
  }

  @Test
  void leavesNoHalfWrittenFiles() throws IOException {
    write(temp.resolve("out"), "site/a.html");
    assertEquals(List.of(), halves());
  }

  @Test
  void whatAKilledPressLeftHalfWrittenIsRemovedAndNothingElse() throws IOException {
    Path out = temp.resolve("out");
    write(out, "site/index.html", "site/C/X/index.html");
    killed(out);
    List<String> halves = List.of("site/.half-17.tmp", "site/C/X/.half-18.tmp");
    List<String> others = List.of("site/.half-mine.tmp", "site/half-1.tmp", "mine/.half-19.tmp");
    for (String name : Stream.concat(halves.stream(), others.stream()).toList()) {
      Files.createDirectories(out.resolve(name).getParent());
      old(Files.writeString(out.resolve(name), "half"));
    }
    Path young = Files.writeString(out.resolve("site/.half-20.tmp"), "of a card at work");
    Files.setLastModifiedTime(young, FileTime.from(Instant.now().plusSeconds(60)));
    write(out, "site/index.html");
    halves.forEach(name -> assertFalse(Files.exists(out.resolve(name)), name));
    others.forEach(name -> assertTrue(Files.exists(out.resolve(name)), name));
    assertTrue(Files.exists(young));
    assertFalse(Files.exists(out.resolve("site/C")));
  }

  @Test
  void aFirstPressThatWasKilledIsNoForeignFolder() throws IOException {
    Path out = temp.resolve("out");
    Files.createDirectories(out.resolve("office"));
    killed(out);
    old(Files.writeString(out.resolve("office/.half-17.tmp"), "half a list"));
    write(out, "site/index.html");
    assertEquals(List.of(), halves());
    Path letters = Files.createDirectories(temp.resolve("letters/office"));
    Files.writeString(letters.resolve("dear.txt"), "Dear ...");
    assertThrows(IOException.class, () -> Output.open(letters.getParent()));
    assertFalse(Files.exists(letters.resolve(FolderLock.FILE)), "a foreign folder is left alone");
  }

  @Test
  void anotherPressMeanwhileIsNoticed() throws IOException {
    Path out = temp.resolve("out");
    Optional<FileTime> never = Output.lastUsed(out);
    try (Output output = Output.open(out)) {
      assertTrue(output.isAsOf(never));
      assertFalse(output.isAsOf(Output.lastUsed(out)));
    }
    Optional<FileTime> before = Output.lastUsed(out);
    try (Output output = Output.open(out)) {
      assertTrue(output.isAsOf(before));
    }
    try (Output output = Output.open(out)) {
      assertFalse(output.isAsOf(before));
      assertFalse(output.isAsOf(never));
    }
  }

  private static void write(Path out, String... names) throws IOException {
    try (Output output = Output.open(out)) {
      Stream.of(names).forEach(name -> output.put(name, name));
      output.write(n -> false);
    }
  }

  /** The lock as a killed process leaves it. */
  private static void killed(Path out) throws IOException {
    Files.writeString(out.resolve("office").resolve(FolderLock.FILE), "process 1");
  }

  private static void old(Path file) throws IOException {
    Files.setLastModifiedTime(file, FileTime.fromMillis(0));
  }

  private List<Path> halves() throws IOException {
    try (Stream<Path> files = Files.walk(temp)) {
      return files.filter(f -> f.getFileName().toString().startsWith(".half-")).toList();
    }
  }
}
