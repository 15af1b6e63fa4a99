package curewindow.site;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import curewindow.shop.OwnCopies;
import curewindow.shop.Sha256;
import curewindow.shop.ShopFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * A file of the shop folder as it stands, the shop's own or the program's.
 *
 * @param file relative to the shop folder
 * @param text its text
 * @param version changes whenever the text does
 */
public record KeptFile(String file, String text, String version) {

  /** Refuses missing parts. */
  public KeptFile {
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(version, "version");
  }

  /**
   * A file as it stands.
   *
   * @param files the shop folder
   * @param file relative to the shop folder
   * @return the file; empty where there is none that can be read
   */
  public static Optional<KeptFile> of(ShopFiles files, String file) {
    return files
        .text(file, new Problems())
        .map(text -> new KeptFile(file, text, HexFormat.of().formatHex(Sha256.of(text))));
  }

  /** What of a text is to be written: it is looked at before it is. */
  record Change(String file, String version, Function<String, Optional<String>> how) {}

  /**
   * Changes a file, never over what somebody else wrote meanwhile, and as a whole. What the program
   * brings is copied into the shop folder first.
   *
   * @param tried looks at the new text and says whether it may be written
   */
  static <T> Saved<T> change(ShopFiles files, Change change, Function<String, Saved<T>> tried)
      throws IOException {
    try (FolderLock lock = FolderLock.on(files.root())) {
      Optional<KeptFile> kept = of(files, change.file());
      if (kept.isPresent() && !kept.get().version().equals(change.version())) {
        return new Saved.Overtaken<>(kept.get());
      }
      Optional<String> text = kept.flatMap(k -> change.how().apply(k.text()));
      if (kept.isEmpty()) {
        return gone(change.file());
      }
      if (text.isEmpty()) {
        return byHand(change.file());
      }
      Saved<T> result = tried.apply(text.get());
      if (result instanceof Saved.Written && !text.get().equals(kept.get().text())) {
        write(lock.folder(), files, change.file(), text.get());
      }
      return result;
    }
  }

  private static void write(Path folder, ShopFiles files, String file, String text)
      throws IOException {
    if (!files.isOwn(file)) {
      OwnCopies.make(folder, file);
    }
    AtomicFiles.replace(folder.resolve(file), text.getBytes(StandardCharsets.UTF_8));
  }

  private static <T> Saved<T> gone(String file) {
    return new Saved.Refused<>(
        List.of(
            Problem.error(
                "file-gone",
                Where.file(file),
                "the file is gone, or cannot be read",
                "put it back, then save again")));
  }

  /** A file that only a person can change. */
  static <T> Saved<T> byHand(String file) {
    return new Saved.Refused<>(
        List.of(
            Problem.error(
                    "by-hand",
                    Where.file(file),
                    "this cannot be changed here",
                    "change it in " + file)
                .with("file", file)));
  }
}
