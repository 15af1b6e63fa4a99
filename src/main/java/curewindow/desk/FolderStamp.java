package curewindow.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.stream.LongStream;

/** How the files of a folder stand: which there are, how long they are, and since when. */
final class FolderStamp {

  /** Another number where a file came, went or changed. */
  private final long all;

  /** A number for each file and folder, in order. */
  private final long[] each;

  private FolderStamp(long all, LongStream each) {
    this.all = all;
    this.each = each.sorted().toArray();
  }

  /**
   * Looks at all files of a folder but hidden ones.
   *
   * @param without a folder in it that is not looked at, absolute
   */
  static FolderStamp of(Path folder, Path without) {
    Walk walk = new Walk(folder, without);
    try {
      Files.walkFileTree(folder, walk);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new FolderStamp(walk.all, walk.each.build());
  }

  /** Whether no file came, went or changed in between. */
  boolean isAs(FolderStamp other) {
    return all == other.all;
  }

  /**
   * Whether a file stands as it did, or a folder has the same files; also where there is none now.
   */
  boolean has(Path path) {
    try {
      BasicFileAttributes facts = Files.readAttributes(path, BasicFileAttributes.class);
      return Arrays.binarySearch(each, one(path, facts)) >= 0;
    } catch (IOException e) {
      return true;
    }
  }

  /** The same with what stands at some paths now, which is no news to {@link #has}. */
  FolderStamp knowing(Path... paths) {
    LongStream.Builder now = LongStream.builder();
    for (Path path : paths) {
      try {
        now.add(one(path, Files.readAttributes(path, BasicFileAttributes.class)));
      } catch (IOException e) {
        // It is away again, which the next look at all files tells.
      }
    }
    return new FolderStamp(all, LongStream.concat(Arrays.stream(each), now.build()));
  }

  /** The length of a folder hangs on the disk. */
  private static long one(Path path, BasicFileAttributes facts) {
    long length = facts.isDirectory() ? 0 : facts.size();
    return (31 * (31 * path.toString().hashCode() + length) + facts.lastModifiedTime().toMillis())
        * 0x9E3779B97F4A7C15L;
  }

  private static final class Walk extends SimpleFileVisitor<Path> {

    private final Path folder;
    private final Path without;
    private final LongStream.Builder each = LongStream.builder();
    private long all;

    Walk(Path folder, Path without) {
      this.folder = folder;
      this.without = without;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path dir, BasicFileAttributes facts) {
      boolean hidden = !dir.equals(folder) && dir.getFileName().toString().startsWith(".");
      if (hidden || dir.toAbsolutePath().normalize().equals(without)) {
        return FileVisitResult.SKIP_SUBTREE;
      }
      each.add(one(dir, facts));
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes facts) {
      if (!file.getFileName().toString().startsWith(".")) {
        long one = one(file, facts);
        each.add(one);
        all += one;
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException e) {
      return FileVisitResult.CONTINUE;
    }
  }
}
