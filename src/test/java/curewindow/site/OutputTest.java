package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
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
    Files.setLastModifiedTime(out.resolve("site/index.html"), FileTime.fromMillis(0));
    Files.writeString(out.resolve("site/C/OLD/mine.txt"), "not ours");

    Output second = Output.open(out);
    second.put("site/index.html", "home");
    second.put("site/new.html", "new");
    assertEquals(new Output.Written(2, 1, 1), second.write(n -> n.startsWith("site/C/KEPT/")));
    assertEquals(0, Files.getLastModifiedTime(out.resolve("site/index.html")).toMillis());
    assertFalse(Files.exists(out.resolve("site/C/OLD/index.html")));
    assertTrue(Files.exists(out.resolve("site/C/OLD/mine.txt")));
    assertEquals("kept", Files.readString(out.resolve("site/C/KEPT/index.html")));

    Output third = Output.open(out);
    third.put("site/index.html", "home");
    third.write(n -> false);
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
    Output out = Output.open(temp.resolve("out"));
    assertThrows(IllegalArgumentException.class, () -> out.put("../up.txt", ""));
    out.put("a.txt", "");
    assertThrows(IllegalArgumentException.class, () -> out.put("a.txt", ""));
  }

  @Test
  void aListThatNamesFilesOutsideRemovesNothingThere() throws IOException {
    Path out = temp.resolve("out");
    Path outside = Files.writeString(temp.resolve("outside.txt"), "stays");
    Files.createDirectories(out.resolve("office"));
    Files.writeString(out.resolve(Output.LIST), "../outside.txt\n");
    Output.open(out).write(n -> false);
    assertTrue(Files.exists(outside));
  }

  @Test
  void leavesNoHalfWrittenFiles() throws IOException {
    Path out = temp.resolve("out");
    Output output = Output.open(out);
    output.put("site/a.html", "a");
    output.write(n -> false);
    try (var files = Files.walk(out)) {
      assertTrue(files.noneMatch(f -> f.getFileName().toString().startsWith(".half-")));
    }
  }
}
