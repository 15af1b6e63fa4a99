package curewindow.site;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes files so that a reader sees the old text or the new, never half of one. */
public final class AtomicFiles {

  private AtomicFiles() {}

  /**
   * Writes a file that everybody may read; one that stands there is replaced as a whole.
   *
   * @param file the file
   * @param bytes its content
   * @throws IOException where it cannot be written; the message is for the user
   */
  public static void write(Path file, byte[] bytes) throws IOException {
    Path half = half(file);
    try {
      Files.write(half, bytes);
      readableByAll(half);
      move(half, file);
    } finally {
      Files.deleteIfExists(half);
    }
  }

  private static Path half(Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    try {
      Files.createDirectories(folder);
      return Files.createTempFile(folder, ".half-", ".tmp");
    } catch (IOException e) {
      throw new IOException(
          file + " cannot be written; check the permissions of " + folder + " and its space", e);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Temporary files are private to their owner; a site has to be readable by a web server. */
  private static void readableByAll(Path file) throws IOException {
    if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(
          file, java.nio.file.attribute.PosixFilePermissions.fromString("rw-r--r--"));
    }
  }
}
