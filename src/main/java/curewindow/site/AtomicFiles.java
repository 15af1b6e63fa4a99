package curewindow.site;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.regex.Pattern;

/** Writes files so that a reader sees the old text or the new, never half of one. */
public final class AtomicFiles {

  private static final Pattern HALF = Pattern.compile("\\.half-\\d+\\.tmp");

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
   * one that stands there is replaced as a whole. It is on the disk when this returns, as ledgers
   * and lists have to be; a page can be made again.
   *
   * @param file the file
   * @param bytes its content
   * @throws IOException where it cannot be written; the message is for the user
   */
  public static void writePrivate(Path file, byte[] bytes) throws IOException {
    write(file, bytes, AtomicFiles::closeAndForce);
    forceName(file);
  }

  /**
   * Replaces a file of the shop's own as a whole; who may read it stays as it was.
   *
   * @param file the file, which is there
   * @param bytes its content
   * @throws IOException where it cannot be written; the message is for the user
   */
  static void replace(Path file, byte[] bytes) throws IOException {
    Path real = file.toRealPath();
    write(
        real,
        bytes,
        half -> {
          if (knowsRights(real)) {
            Files.setPosixFilePermissions(half, Files.getPosixFilePermissions(real));
          }
          force(half);
        });
    forceName(real);
  }

  private static void closeAndForce(Path half) throws IOException {
    closeToOthers(half);
    force(half);
  }

  /** What is done with the whole text before it gets its name. */
  private interface Finish {
    void accept(Path half) throws IOException;
  }

  private static void write(Path file, byte[] bytes, Finish finish) throws IOException {
    try {
      Path half = half(file);
      try {
        Files.write(half, bytes);
        finish.accept(half);
        move(half, file);
      } finally {
        Files.deleteIfExists(half);
      }
    } catch (IOException e) {
      throw notWritten(file, e);
    }
  }

  /** So that a machine that loses its power finds the whole text under the name. */
  private static void force(Path half) throws IOException {
    try (FileChannel channel = FileChannel.open(half, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** Windows has no such thing for a folder, and needs none. */
  private static void forceName(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // The text is on the disk, and its name follows within seconds.
    }
  }

  /** What is told where a file or folder cannot be written; the message is for the user. */
  static IOException notWritten(Path path, IOException e) {
    String reason = e instanceof FileSystemException disk ? disk.getReason() : e.getMessage();
    return new IOException(
        path
            + " cannot be written"
            + (reason == null ? "" : " (" + reason.strip() + ")")
            + "; check its permissions and the space on its disk, then try again",
        e);
  }

  /**
   * Removes the half-written files of a process that was killed.
   *
   * @param folder the folder that they stand in; nothing is done in those below
   * @param before what is not older stays
   * @throws IOException where the folder cannot be read or written
   */
  static void removeHalves(Path folder, FileTime before) throws IOException {
    try (DirectoryStream<Path> halves = Files.newDirectoryStream(folder, AtomicFiles::isHalf)) {
      for (Path half : halves) {
        if (Files.getLastModifiedTime(half, LinkOption.NOFOLLOW_LINKS).compareTo(before) < 0) {
          Files.deleteIfExists(half);
        }
      }
    }
  }

  /** Whether this is a file that {@link #write} had not yet given its name. */
  static boolean isHalf(Path path) {
    return HALF.matcher(path.getFileName().toString()).matches()
        && Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS);
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
    Files.createDirectories(folder);
    return Files.createTempFile(folder, ".half-", ".tmp");
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
