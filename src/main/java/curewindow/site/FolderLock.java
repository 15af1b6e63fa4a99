package curewindow.site;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Lets one at a time write into a folder, among the threads of this program and all processes of
 * the machine. The lock's file stays for good: who deletes it lets a second one in. While somebody
 * is at work it says who; afterwards it is empty, so that one who was killed is noticed.
 */
final class FolderLock implements AutoCloseable {

  /** The lock's file in the folder. */
  static final String FILE = ".curewindow.lock";

  private static final Duration PATIENCE = Duration.ofSeconds(10);
  private static final Duration PAUSE = Duration.ofMillis(20);

  /** Beyond the text, as on some systems nobody else reads what is locked. */
  private static final long PLACE = Long.MAX_VALUE - 1;

  private static final int LONGEST = 200;
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss");

  /**
   * The files that this process has open. The system tells processes apart, not threads, and takes
   * a lock from a process that closes any channel of its file.
   */
  private static final Set<Path> OPEN = ConcurrentHashMap.newKeySet();

  private final Path folder;
  private final Path file;
  private final FileChannel channel;
  private final Optional<FileTime> lastUsed;
  private final boolean afterCut;

  private FolderLock(
      Path folder, Path file, FileChannel channel, Optional<FileTime> lastUsed, String text) {
    this.folder = folder;
    this.file = file;
    this.channel = channel;
    this.lastUsed = lastUsed;
    this.afterCut = lastUsed.isEmpty() || !text.isEmpty();
  }

  /**
   * Locks a folder until closed, and waits up to ten seconds for whoever is at work in it.
   *
   * @param folder the folder, which is there
   * @return the lock
   * @throws IOException where somebody else is still at work or the folder cannot be written; the
   *     message is for the user
   */
  static FolderLock on(Path folder) throws IOException {
    return on(folder, PATIENCE);
  }

  static FolderLock on(Path folder, Duration patience) throws IOException {
    long begin = System.nanoTime();
    Attempt attempt = attempt(folder);
    while (attempt.lock().isEmpty()) {
      if (System.nanoTime() - begin > patience.toNanos()) {
        throw new IOException(
            folder + " is in use by " + attempt.holder() + "; try again when it is done");
      }
      pause();
      attempt = attempt(folder);
    }
    return attempt.lock().get();
  }

  /** The lock, or else who holds it. */
  private record Attempt(Optional<FolderLock> lock, String holder) {

    static Attempt held(String holder) {
      String who = holder.isBlank() ? "" : " (" + holder.strip() + ")";
      return new Attempt(Optional.empty(), "another Curewindow" + who);
    }
  }

  private static Attempt attempt(Path folder) throws IOException {
    try {
      Path file = folder.toRealPath().resolve(FILE);
      return OPEN.add(file) ? attempt(folder, file) : Attempt.held(me());
    } catch (IOException e) {
      throw AtomicFiles.notWritten(folder, e);
    }
  }

  private static Attempt attempt(Path folder, Path file) throws IOException {
    boolean isNew = !Files.exists(file);
    FileChannel channel = null;
    boolean locked = false;
    try {
      channel =
          FileChannel.open(
              file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
      FileLock held = channel.tryLock(PLACE, 1, false);
      String text = text(channel);
      if (held == null) {
        return Attempt.held(text);
      }
      Optional<FileTime> used = isNew ? Optional.empty() : lastUsed(folder);
      FolderLock lock = new FolderLock(folder, file, channel, used, text);
      lock.begin();
      locked = true;
      return new Attempt(Optional.of(lock), "");
    } finally {
      if (!locked) {
        leave(file, channel);
      }
    }
  }

  /** Says who is at work; what a killed process left in the folder goes. */
  private void begin() throws IOException {
    AtomicFiles.closeToOthers(file);
    channel.truncate(0).write(ByteBuffer.wrap(me().getBytes(StandardCharsets.UTF_8)), 0);
    clear(folder);
  }

  private static String me() {
    ProcessHandle process = ProcessHandle.current();
    Optional<Instant> start = process.info().startInstant();
    return "process "
        + process.pid()
        + start.map(s -> ", started " + TIME.format(s.atZone(ZoneId.systemDefault()))).orElse("");
  }

  private static String text(FileChannel channel) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(LONGEST);
    channel.read(bytes, 0);
    return new String(bytes.array(), 0, bytes.position(), StandardCharsets.UTF_8);
  }

  private static void pause() throws IOException {
    try {
      Thread.sleep(PAUSE.toMillis());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw (IOException) new InterruptedIOException("interrupted while waiting").initCause(e);
    }
  }

  /**
   * Removes from a folder the half-written files of whoever held this lock before and was killed;
   * where nobody was, nothing is done.
   *
   * @param some the folder that is locked, or one that is only written under this lock
   * @throws IOException where it cannot be read or written
   */
  void clear(Path some) throws IOException {
    if (afterCut && Files.isDirectory(some)) {
      AtomicFiles.removeHalves(some, Files.getLastModifiedTime(file));
    }
  }

  /**
   * When somebody last held the lock of a folder.
   *
   * @param folder the folder
   * @return the time by the clock of the disk, empty where nobody did
   * @throws IOException where the folder cannot be read
   */
  static Optional<FileTime> lastUsed(Path folder) throws IOException {
    Path file = folder.resolve(FILE);
    return Files.exists(file) ? Optional.of(Files.getLastModifiedTime(file)) : Optional.empty();
  }

  /** When somebody held it before, as {@link #lastUsed(Path)} told until then. */
  Optional<FileTime> lastUsed() {
    return lastUsed;
  }

  /** Whether the last holder was killed, or nobody held this lock before. */
  boolean isAfterCut() {
    return afterCut;
  }

  /** The folder that is locked. */
  Path folder() {
    return folder;
  }

  @Override
  public void close() throws IOException {
    try {
      channel.truncate(0);
    } finally {
      leave(file, channel);
    }
  }

  /** The channel first: closing it later would take the lock from the next thread. */
  private static void leave(Path file, FileChannel channel) throws IOException {
    try {
      if (channel != null) {
        channel.close();
      }
    } finally {
      OPEN.remove(file);
    }
  }
}
