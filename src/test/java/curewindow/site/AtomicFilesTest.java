package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be written is told by its own name, stays as it was and leaves nothing beside it. */
class AtomicFilesTest {

  @TempDir Path folder;

  @Test
  void aFileThatDoesNotFitOnTheDiskIsToldByName() throws Exception {
    assumeFalse(System.getProperty("os.name").startsWith("Windows"), "limits are set by a shell");
    Path page = Files.writeString(folder.resolve("index.html"), "old");
    List<String> write = SecondProgram.command("write", page, 100_000);
    // In blocks of 512 or 1024 bytes: longer files cannot be written, as on a full disk.
    Process small =
        new ProcessBuilder(
                Stream.concat(Stream.of("sh", "-c", "ulimit -f 8; \"$@\"", "sh"), write.stream())
                    .toList())
            .redirectErrorStream(true)
            .start();
    String told = SecondProgram.said(small);
    assertTrue(told.contains("IOException: " + page + " cannot be written ("), told);
    assertTrue(told.contains("; check its permissions and the space on its disk"), told);
    assertEquals("old", Files.readString(page));
    assertEquals(List.of(page), inside());
  }

  @Test
  void aNameThatCannotBeTakenIsTold() throws IOException {
    Path taken = folder.resolve("index.html");
    Files.createDirectories(taken.resolve("mine"));
    String told =
        assertThrows(IOException.class, () -> AtomicFiles.write(taken, new byte[1])).getMessage();
    assertTrue(told.startsWith(taken + " cannot be written"), told);
    assertEquals(List.of(taken), inside());
    Path below = Files.writeString(folder.resolve("file"), "").resolve("below.html");
    told =
        assertThrows(IOException.class, () -> AtomicFiles.write(below, new byte[1])).getMessage();
    assertTrue(told.startsWith(below + " cannot be written"), told);
  }

  private List<Path> inside() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.toList();
    }
  }
}
