package curewindow.shop;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The files of a shop folder, laid over those that come with the program: a file in the shop folder
 * replaces the program's file of the same relative path under {@code content} and {@code
 * site-templates}.
 */
public final class ShopFiles {

  /** The largest file that is read, in bytes; larger ones are a problem, not an attempt. */
  public static final long MAX_BYTES = 4L << 20;

  /** The largest table that is read, in bytes: some hundred thousand jobs in {@code jobs.csv}. */
  public static final long MAX_TABLE_BYTES = 256L << 20;

  private final Path root;
  private final boolean shopToo;
  private final Starter starter;

  /** Texts that are taken for those of the folder, by the file. */
  private final Map<String, String> instead;

  /**
   * The files of a shop folder.
   *
   * @param root the shop folder; need not exist, in which case only the program's files are found
   */
  public ShopFiles(Path root) {
    this(root, true, Map.of());
  }

  private ShopFiles(Path root, boolean shopToo, Map<String, String> instead) {
    this.root = root.toAbsolutePath().normalize();
    this.shopToo = shopToo;
    this.starter = Starter.bundled();
    this.instead = instead;
  }

  /**
   * The program's own files alone, for comparison with those of the shop.
   *
   * @return the same files without those of the shop folder
   */
  public ShopFiles withoutShop() {
    return new ShopFiles(root, false, Map.of());
  }

  /**
   * The same files, were one of them written anew; nothing is written.
   *
   * @param file {@code shop.yaml}, a table, or one that the program brings too; relative to the
   *     shop folder
   * @param text what it would say
   * @return the files as they would be read then
   */
  public ShopFiles with(String file, String text) {
    return new ShopFiles(root, shopToo, Map.of(file, text));
  }

  /**
   * The shop folder.
   *
   * @return an absolute path
   */
  public Path root() {
    return root;
  }

  /**
   * Whether there is a file of a name, in the shop folder or with the program.
   *
   * @param file relative to the shop folder, with forward slashes
   * @return true where there is
   */
  public boolean has(String file) {
    return instead.containsKey(file) || isOwn(file) || starter.all().contains(file);
  }

  /**
   * The names of all files of a folder, in the shop folder or with the program. What has such a
   * name but is no file is among them, so that {@link #text} tells it; unless it is hidden, as what
   * editors keep beside open files.
   *
   * @param folder relative to the shop folder, with forward slashes
   * @param ending how the names end, such as {@code .yaml}
   * @return relative paths with forward slashes, alphabetical
   */
  public List<String> list(String folder, String ending) {
    TreeSet<String> names = new TreeSet<>(starter.list(folder));
    Path dir = root.resolve(folder);
    if (shopToo && Files.isDirectory(dir)) {
      try (Stream<Path> files = Files.list(dir)) {
        files
            .filter(f -> Files.isRegularFile(f) || !f.getFileName().toString().startsWith("."))
            .forEach(f -> names.add(folder + "/" + f.getFileName()));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return new ArrayList<>(names.stream().filter(n -> n.endsWith(ending)).toList());
  }

  /**
   * The names of the folders in a folder, in the shop folder or with the program.
   *
   * @param folder relative to the shop folder, with forward slashes
   * @return the names alone, alphabetical
   */
  public List<String> folders(String folder) {
    TreeSet<String> names = new TreeSet<>(starter.folders(folder));
    Path dir = root.resolve(folder);
    if (shopToo && Files.isDirectory(dir)) {
      try (Stream<Path> files = Files.list(dir)) {
        files.filter(Files::isDirectory).forEach(f -> names.add(f.getFileName().toString()));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return List.copyOf(names);
  }

  /**
   * The text of a file.
   *
   * @param file relative to the shop folder, with forward slashes
   * @param problems where it is said that the file is missing, none, too large or not UTF-8
   * @return the text, without a byte order mark, or empty where there is a problem
   */
  public Optional<String> text(String file, Problems problems) {
    if (instead.containsKey(file)) {
      return Optional.of(instead.get(file));
    }
    Path own = root.resolve(file);
    try {
      if (!isOwn(file)) {
        Optional<byte[]> bundled = starter.bytes(file);
        if (bundled.isEmpty()) {
          problems.add(
              Problem.error("missing-file", Where.file(file), "the file is missing", "create it"));
          return Optional.empty();
        }
        return decode(file, bundled.get(), problems);
      }
      Optional<String> other = insteadOfFile(own);
      if (other.isPresent()) {
        problems.add(
            Problem.error(
                "no-file",
                Where.file(file),
                other.get(),
                "put a file of this name in its place, or take it away"));
        return Optional.empty();
      }
      long size = Files.size(own);
      long most = file.endsWith(".csv") ? MAX_TABLE_BYTES : MAX_BYTES;
      if (size > most) {
        problems.add(
            Problem.error(
                "too-large",
                Where.file(file),
                "the file has " + size + " bytes, more than the " + most + " that are read",
                "check that it is the file you meant, and split it if so"));
        return Optional.empty();
      }
      return decode(file, Files.readAllBytes(own), problems);
    } catch (IOException e) {
      problems.add(
          Problem.error(
              "unreadable", Where.file(file), "the file cannot be read", "check its permissions"));
      return Optional.empty();
    }
  }

  /**
   * The bytes of a file that is no text, such as a picture.
   *
   * @param file relative to the shop folder, with forward slashes
   * @param problems where it is said that the file is missing, too large or cannot be read
   * @return the bytes, or empty where there is a problem
   */
  public Optional<byte[]> bytes(String file, Problems problems) {
    try {
      if (isOwn(file) && Files.size(root.resolve(file)) <= MAX_BYTES) {
        return Optional.of(Files.readAllBytes(root.resolve(file)));
      }
      Optional<byte[]> bundled = isOwn(file) ? Optional.empty() : starter.bytes(file);
      if (bundled.isPresent()) {
        return bundled;
      }
    } catch (IOException e) {
      // Told below, as for a file that is too large or missing.
    }
    problems.add(
        Problem.error(
            "unreadable",
            Where.file(file),
            "the file is missing, too large or cannot be read",
            "put it there with at most " + MAX_BYTES + " bytes, or delete your own"));
    return Optional.empty();
  }

  /**
   * The text that the program itself brings for a file, whatever the shop folder has.
   *
   * @param file relative to the shop folder, with forward slashes
   * @return the text, or empty where the program brings none
   */
  public Optional<String> original(String file) {
    try {
      return starter.bytes(file).map(bytes -> new String(bytes, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Whether the shop folder itself has a file, in place of the program's or beside its files.
   *
   * @param file relative to the shop folder, with forward slashes
   * @return true where something has that name, be it no file
   */
  public boolean isOwn(String file) {
    return shopToo && Files.exists(root.resolve(file), LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Whether the shop folder has any file in a folder that the program does not bring just so.
   *
   * @param folder relative to the shop folder, with forward slashes
   * @return false where all that stands there would be the same without the shop's own files
   */
  public boolean changes(String folder) {
    return list(folder, "").stream().filter(this::isOwn).anyMatch(file -> !isAsBrought(file));
  }

  private boolean isAsBrought(String file) {
    try {
      Optional<byte[]> brought = starter.bytes(file);
      return brought.isPresent()
          && Files.isRegularFile(root.resolve(file))
          && Arrays.equals(brought.get(), Files.readAllBytes(root.resolve(file)));
    } catch (IOException e) {
      return false;
    }
  }

  /**
   * What stands in the place of a file that is no file.
   *
   * @param path where the file is meant to be
   * @return what it is, in a sentence; empty where it is a file, or nothing is there
   */
  public static Optional<String> insteadOfFile(Path path) {
    if (Files.isRegularFile(path) || !Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    return Optional.of(
        Files.isDirectory(path)
            ? "this is a folder, not a file"
            : Files.isSymbolicLink(path)
                ? "this is a link that leads to no file"
                : "this is no file that can be read");
  }

  /**
   * Tells where something that is no folder, such as a link to a disk that is not there today,
   * stands in the place of one.
   *
   * @param folder relative to the shop folder, with forward slashes
   * @param problems where it is told
   * @return true where it was told; what the folder holds is then not known
   */
  boolean isNoFolder(String folder, Problems problems) {
    boolean other = isOwn(folder) && !Files.isDirectory(root.resolve(folder));
    if (other) {
      String fix = "make it one, or let the link lead to one";
      problems.add(Problem.error("no-folder", Where.file(folder), "this is no folder", fix));
    }
    return other;
  }

  private static Optional<String> decode(String file, byte[] bytes, Problems problems) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    try {
      // A row that is no UTF-8 costs no other row: it has this sign in it, and is told as it is
      // read.
      CodingErrorAction action =
          file.endsWith(".csv") ? CodingErrorAction.REPLACE : CodingErrorAction.REPORT;
      String text =
          StandardCharsets.UTF_8.newDecoder().onMalformedInput(action).decode(in).toString();
      return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      int line = 1;
      for (int i = 0; i < in.position(); i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      problems.add(
          Problem.error(
              "not-utf8",
              Where.line(file, line, 1),
              "the text is not UTF-8",
              "save the file again with the encoding UTF-8"));
      return Optional.empty();
    }
  }
}
