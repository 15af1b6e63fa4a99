package curewindow.site;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

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
    write(file, bytes, AtomicFiles::readableByAll);
  }

  /**
   * Writes a file that only its owner may read, and the group where it may write into the folder;
   * one that stands there is replaced as a whole.
   *
   * @param file the file
   * @param bytes its content
   * @throws IOException where it cannot be written; the message is for the user
   */
  static void writePrivate(Path file, byte[] bytes) throws IOException {
    write(file, bytes, AtomicFiles::closeToOthers);
  }

  /** What is done with the whole text before it gets its name. */
  private interface Rights {
    void give(Path half) throws IOException;
  }

  private static void write(Path file, byte[] bytes, Rights rights) throws IOException {
    Path half = half(file);
    try {
      Files.write(half, bytes);
      rights.give(half);
      move(half, file);
    } finally {
      Files.deleteIfExists(half);
    }
  }

  /**
   * Takes a file or folder from all but its owner, and the group where it may write into the folder
   * above, as that is how a shop shares it. Nothing is done where the disk knows no such rights, or
   * where somebody else owns it.
   *
   * @param path a file or folder of the program's own
   * @throws IOException where its rights cannot be read
   */
  static void closeToOthers(Path path) throws IOException {
    if (knowsRights(path)) {
      Path above = path.toAbsolutePath().getParent();
      boolean shared =
          Files.getPosixFilePermissions(above).contains(PosixFilePermission.GROUP_WRITE);
      String each = Files.isDirectory(path) ? "rwx" : "rw-";
      try {
        allow(path, each + (shared ? each : "---") + "---");
      } catch (FileSystemException e) {
        // Of another user, who alone may change it.
      }
    }
  }

  /** Temporary files are private to their owner; a site has to be readable by a web server. */
  private static void readableByAll(Path half) throws IOException {
    if (knowsRights(half)) {
      allow(half, "rw-r--r--");
    }
  }

  private static void allow(Path path, String rights) throws IOException {
    Set<PosixFilePermission> wanted = PosixFilePermissions.fromString(rights);
    if (!Files.getPosixFilePermissions(path).equals(wanted)) {
      Files.setPosixFilePermissions(path, wanted);
    }
  }

  private static boolean knowsRights(Path path) throws IOException {
    return Files.getFileStore(path).supportsFileAttributeView("posix");
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
}
