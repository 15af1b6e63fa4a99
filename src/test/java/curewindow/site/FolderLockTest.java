package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One at a time writes into a folder, among threads and among processes. */
class FolderLockTest {

  private static final Duration SHORT = Duration.ofMillis(100);

  @TempDir Path folder;

  @Test
  void theFileStaysAndTheNextOneWaits() throws IOException {
    FolderLock first = FolderLock.on(folder);
    CompletableFuture<FolderLock> second = CompletableFuture.supplyAsync(this::lock);
    assertThrows(IOException.class, () -> FolderLock.on(folder, SHORT));
    assertFalse(second.isDone());
    first.close();
    assertTrue(Files.exists(folder.resolve(FolderLock.FILE)));
    second.join().close();
    assertEquals(0, Files.size(folder.resolve(FolderLock.FILE)));
  }

  private FolderLock lock() {
    try {
      return FolderLock.on(folder);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void anotherProcessIsToldByNumberAndWhatItLeftGoesWhenItIsKilled() throws Exception {
    Process other = SecondProgram.start("hold", folder);
    try {
      assertEquals("held", other.inputReader().readLine());
      String told =
          assertThrows(IOException.class, () -> FolderLock.on(folder, SHORT)).getMessage();
      String start = folder + " is in use by another Curewindow (process " + other.pid() + ", ";
      assertTrue(told.startsWith(start), told);
      assertTrue(told.endsWith("); try again when it is done"), told);
    } finally {
      other.destroyForcibly().waitFor();
    }
    Path half = folder.resolve(".half-17.tmp");
    assertTrue(Files.exists(half));
    try (FolderLock lock = FolderLock.on(folder)) {
      assertTrue(lock.isAfterCut());
      assertFalse(Files.exists(half));
    }
    try (FolderLock lock = FolderLock.on(folder)) {
      assertFalse(lock.isAfterCut());
    }
  }

  @Test
  void aThreadThatWaitsInVainLeavesTheLockToItsHolder() throws Exception {
    try (FolderLock lock = FolderLock.on(folder)) {
      assertEquals(folder, lock.folder());
      assertThrows(IOException.class, () -> FolderLock.on(folder, SHORT));
      String told = SecondProgram.said(SecondProgram.start("try", folder));
      assertTrue(told.contains("(process " + ProcessHandle.current().pid()), told);
    }
    assertEquals("", SecondProgram.said(SecondProgram.start("try", folder)));
  }

  @Test
  void fourProcessesLoseNoRow() throws Exception {
    int rows = 40;
    List<Process> writers = new ArrayList<>();
    for (String name : List.of("A", "B", "C", "D")) {
      writers.add(SecondProgram.start("rows", folder, name, rows));
    }
    for (Process writer : writers) {
      assertEquals("", SecondProgram.said(writer));
      assertEquals(0, writer.waitFor());
    }
    assertEquals(1 + 4 * rows, Files.readAllLines(folder.resolve(LinkLedger.FILE)).size());
  }

  @Test
  void aFolderThatCannotBeWrittenIsToldByName() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    String told = assertThrows(IOException.class, () -> FolderLock.on(file)).getMessage();
    assertTrue(told.startsWith(file + " cannot be written"), told);
    assertTrue(told.contains("permissions"), told);
  }
}
