package curewindow.shop;

import curewindow.problem.Nearest;
import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The program's texts of which a shop has copies of its own, to change them. What has no copy
 * follows the program. Each copy's text as the program had it then is noted in the file {@code
 * content/copies.sha256}, as the tool {@code sha256sum} writes it, so that it can be told where the
 * program has a newer one.
 */
public final class OwnCopies {

  private static final String NOTES = "content/copies.sha256";

  /** Only in the starter for its own sake; a shop folder has these files elsewhere. */
  private static final String SAMPLES = "content/starter-shop/";

  private OwnCopies() {}

  /** What became of a copy. */
  public sealed interface Result {}

  /** The copy was made. */
  public record Made() implements Result {}

  /**
   * There is no such text, or it is the shop's own already; nothing was written.
   *
   * @param message what is wrong and what to do
   */
  public record Refused(String message) implements Result {}

  /**
   * The texts of the program of which a shop may have a copy.
   *
   * @return relative paths with forward slashes, alphabetical
   */
  public static List<String> texts() {
    return Starter.bundled().all().stream()
        .filter(f -> !f.startsWith(SAMPLES) && !f.endsWith(".json") && !f.endsWith(".png"))
        .toList();
  }

  /**
   * Copies one of the program's texts into a shop folder.
   *
   * @param shop the shop folder
   * @param file the text's relative path
   * @return what became of it
   * @throws IOException where the folder cannot be read or written
   */
  public static Result make(Path shop, String file) throws IOException {
    if (!texts().contains(file)) {
      String near =
          Nearest.to(file, texts())
              .map(n -> "; did you mean " + n + "?")
              .orElse("; edit lists them");
      return new Refused(Source.shown(file) + " is not one of the program's files" + near);
    }
    Path target = shop.resolve(file);
    if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      return new Refused(file + " is in the shop folder already: change it there");
    }
    Files.createDirectories(target.getParent());
    Files.write(target, Starter.bundled().bytes(file).orElseThrow());
    note(shop, List.of(file));
    return new Made();
  }

  /**
   * Notes from which of the program's texts some copies were just made.
   *
   * @param shop the shop folder
   * @param files the texts' relative paths
   * @throws IOException where the folder cannot be read or written
   */
  public static void note(Path shop, Collection<String> files) throws IOException {
    Path list = shop.resolve(NOTES);
    Map<String, String> notes = read(list);
    for (String file : files) {
      notes.put(file, print(Starter.bundled().bytes(file).orElseThrow()));
    }
    String text =
        notes.entrySet().stream()
            .map(n -> n.getValue() + "  " + n.getKey() + "\n")
            .collect(Collectors.joining());
    Files.createDirectories(list.getParent());
    Files.writeString(list, text);
  }

  private static Map<String, String> read(Path notes) throws IOException {
    Map<String, String> found = new TreeMap<>();
    if (Files.isRegularFile(notes)) {
      // A sum that is cut or spoilt is none that the program has, so nothing here needs mending.
      for (String line :
          new String(Files.readAllBytes(notes), StandardCharsets.UTF_8).split("\n")) {
        String[] parts = line.strip().split("  ", 2);
        if (parts.length == 2) {
          found.put(parts[1], parts[0]);
        }
      }
    }
    return found;
  }

  /** Tells of copies of texts that the program has changed since. */
  static void tell(ShopFiles files, Problems problems) {
    try {
      for (Map.Entry<String, String> note : read(files.root().resolve(NOTES)).entrySet()) {
        Path own = files.root().resolve(note.getKey());
        Optional<byte[]> now = Starter.bundled().bytes(note.getKey());
        if (now.isPresent() && Files.isRegularFile(own)) {
          tell(note, print(now.get()), print(Files.readAllBytes(own)), problems);
        }
      }
    } catch (IOException e) {
      // Whoever needs the file itself tells that it cannot be read.
    }
  }

  private static void tell(
      Map.Entry<String, String> note, String now, String own, Problems problems) {
    String file = note.getKey();
    if (now.equals(note.getValue()) || now.equals(own)) {
      return;
    }
    boolean untouched = own.equals(note.getValue());
    problems.add(
        Problem.notice(
            "older-copy",
            Where.file(file),
            "the program has a newer text than the one this copy was made from",
            untouched
                ? "delete the file, as you changed nothing in it"
                : "look at the newer one with edit --print "
                    + file
                    + ", take over what you want,"
                    + " then take the line of this file out of "
                    + NOTES));
  }

  /**
   * One of the program's texts.
   *
   * @param file the text's relative path
   * @return the text, or empty where there is none of that name
   * @throws IOException where the program cannot be read
   */
  public static Optional<String> text(String file) throws IOException {
    return texts().contains(file)
        ? Starter.bundled().bytes(file).map(b -> new String(b, StandardCharsets.UTF_8))
        : Optional.empty();
  }

  private static String print(byte[] bytes) {
    return HexFormat.of().formatHex(Sha256.of(bytes));
  }
}
