package curewindow.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The output folder and the only writer of it. It remembers in {@code office/files.txt} which files
 * it made, removes those of an earlier press that are no longer wanted, and touches nothing else.
 * What is in {@code office} only the owner may read. While it is open no other press writes there.
 */
public final class Output implements AutoCloseable {

  private static final String OFFICE = "office";
  private static final String PRIVATE = OFFICE + "/";

  /** The list of files made, relative to the output folder. */
  static final String LIST = "office/files.txt";

  private final Path root;
  private final FolderLock lock;
  private final Map<String, byte[]> files = new TreeMap<>();
  private final Set<String> left = new HashSet<>();

  /** What stands already, and how many of these files were new or differed. */
  private final Set<String> written = ConcurrentHashMap.newKeySet();

  private final AtomicInteger changed = new AtomicInteger();
  private Progress progress = Progress.NONE;

  private Output(Path root, FolderLock lock) {
    this.root = root;
    this.lock = lock;
  }

  /**
   * Opens an output folder, and waits a while for another press that is at work in it. What a press
   * that was killed left half-written is removed.
   *
   * @param root the folder: empty, not there yet, or made by an earlier press
   * @return the output, still empty
   * @throws IOException where the folder holds something else, is in use or cannot be written; the
   *     message is for the user
   */
  public static Output open(Path root) throws IOException {
    if (Files.exists(root) && !Files.isDirectory(root)) {
      throw new IOException(root + " is a file; name a folder with --out");
    }
    if (Files.isDirectory(root) && !Files.exists(root.resolve(LIST)) && isForeign(root)) {
      throw new IOException(
          root + " holds files that Curewindow did not make; name an empty folder with --out");
    }
    Path office = root.resolve(OFFICE);
    try {
      Files.createDirectories(office);
      AtomicFiles.closeToOthers(office);
    } catch (IOException e) {
      throw AtomicFiles.notWritten(root, e);
    }
    Output output = new Output(root, FolderLock.on(office));
    try {
      output.removeHalves();
    } catch (IOException e) {
      output.close();
      throw e;
    }
    return output;
  }

  /**
   * When a press last began or ended to work in a folder.
   *
   * @param root the output folder
   * @return the time, empty where none did
   * @throws IOException where the folder cannot be read
   */
  public static Optional<FileTime> lastUsed(Path root) throws IOException {
    return FolderLock.lastUsed(root.resolve(OFFICE));
  }

  /**
   * Whether no other press was at work since a time, so that what was read then still holds.
   *
   * @param before what {@link #lastUsed} said
   * @return false where it says something else now
   */
  public boolean isAsOf(Optional<FileTime> before) {
    return lock.lastUsed().equals(before);
  }

  /** A first press that was killed at once leaves its lock, and half a list. */
  private static boolean isForeign(Path root) throws IOException {
    try (Stream<Path> inside = Files.list(root)) {
      if (inside.anyMatch(path -> !path.equals(root.resolve(OFFICE)) || !Files.isDirectory(path))) {
        return true;
      }
    }
    try (Stream<Path> office = list(root.resolve(OFFICE))) {
      return office.anyMatch(path -> !path.endsWith(FolderLock.FILE) && !AtomicFiles.isHalf(path));
    }
  }

  private static Stream<Path> list(Path folder) throws IOException {
    return Files.isDirectory(folder) ? Files.list(folder) : Stream.empty();
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.findAny().isEmpty();
    }
  }

  /** The list names each file before it is written, so their folders are all that are written. */
  private void removeHalves() throws IOException {
    if (lock.isAfterCut()) {
      Set<Path> folders = new TreeSet<>();
      inList().forEach(name -> folders.add(root.resolve(name).getParent()));
      for (Path folder : folders) {
        lock.clear(folder);
        removeEmpty(folder);
      }
    }
  }

  /**
   * From now on somebody is told how far a press into this folder is.
   *
   * @param told who
   */
  public void tell(Progress told) {
    progress = told;
  }

  Progress progress() {
    return progress;
  }

  /**
   * The folder.
   *
   * @return where everything stands
   */
  public Path root() {
    return root;
  }

  @Override
  public void close() throws IOException {
    lock.close();
  }

  /**
   * Adds a file, to be written by {@link #write}.
   *
   * @param name relative to the output folder, with forward slashes
   * @param bytes its content
   */
  void put(String name, byte[] bytes) {
    refuseOutside(name);
    if (files.put(name, bytes) != null || written.contains(name)) {
      throw new IllegalArgumentException(name + " is made twice");
    }
  }

  private void refuseOutside(String name) {
    if (!root.resolve(name).normalize().startsWith(root.normalize())) {
      throw new IllegalArgumentException(name + " leaves the output folder");
    }
  }

  /**
   * Names files that will be written by {@link #writeNow}, so that a press that is cut off forgets
   * none of them.
   *
   * @param names relative to the output folder, with forward slashes
   * @throws IOException where the folder cannot be written
   */
  void announce(Collection<String> names) throws IOException {
    TreeSet<String> all = listed();
    names.forEach(this::refuseOutside);
    if (all.addAll(names)) {
      saveList(all);
    }
  }

  /**
   * Writes a file at once, so that it need not be kept until {@link #write}; one that differs is
   * replaced as a whole. May be called by several threads.
   *
   * @param name one of those that were announced
   * @param text its content
   * @return how many bytes it has
   * @throws IOException where the folder cannot be written
   */
  long writeNow(String name, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (!written.add(name)) {
      throw new IllegalArgumentException(name + " is made twice");
    }
    changed.addAndGet(writeIfDifferent(name, bytes) ? 1 : 0);
    return bytes.length;
  }

  /**
   * Adds a text file.
   *
   * @param name relative to the output folder, with forward slashes
   * @param text its content
   */
  void put(String name, String text) {
    put(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Leaves a file of an earlier press as it is.
   *
   * @param name relative to the output folder, with forward slashes
   */
  void leave(String name) {
    left.add(name);
  }

  /**
   * Writes all files that are new or differ, and removes what an earlier press made and is no
   * longer wanted.
   *
   * @param keep which other files of an earlier press stay although they are not made now
   * @return what was done
   * @throws IOException where the folder cannot be written
   */
  Written write(Predicate<String> keep) throws IOException {
    TreeSet<String> before = listed();
    TreeSet<String> after = new TreeSet<>(files.keySet());
    after.addAll(written);
    before.stream().filter(name -> left.contains(name) || keep.test(name)).forEach(after::add);
    // The list first names old and new files, so that an interrupted press forgets none of them.
    TreeSet<String> both = new TreeSet<>(before);
    both.addAll(after);
    saveList(both);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      changed.addAndGet(writeIfDifferent(file.getKey(), file.getValue()) ? 1 : 0);
    }
    int removed = 0;
    for (String name : before) {
      removed += !after.contains(name) && remove(name) ? 1 : 0;
    }
    saveList(after);
    int made = files.size() + written.size() + left.size();
    return new Written(made, changed.get(), removed);
  }

  /**
   * What a press did to the output folder.
   *
   * @param files how many files were made
   * @param changed how many of them were new or differed from what stood there
   * @param removed how many files of an earlier press were removed
   */
  record Written(int files, int changed, int removed) {}

  private boolean writeIfDifferent(String name, byte[] bytes) throws IOException {
    Path file = root.resolve(name);
    boolean isPrivate = name.startsWith(PRIVATE);
    if (Files.isRegularFile(file) && Arrays.equals(Files.readAllBytes(file), bytes)) {
      if (isPrivate) {
        AtomicFiles.closeToOthers(file);
      }
      return false;
    }
    if (isPrivate) {
      AtomicFiles.writePrivate(file, bytes);
    } else {
      AtomicFiles.write(file, bytes);
    }
    return true;
  }

  private boolean remove(String name) throws IOException {
    Path file = root.resolve(name);
    boolean gone = Files.deleteIfExists(file);
    removeEmpty(file.getParent());
    return gone;
  }

  /** Removes a folder, and those that it stands in, where nothing is in them. */
  private void removeEmpty(Path folder) throws IOException {
    for (Path p = folder;
        !p.equals(root) && Files.isDirectory(p) && isEmpty(p);
        p = p.getParent()) {
      Files.delete(p);
    }
  }

  /** The files of an earlier press that are there. */
  private TreeSet<String> listed() throws IOException {
    TreeSet<String> names = inList();
    names.removeIf(name -> !Files.isRegularFile(root.resolve(name)));
    names.removeAll(List.of(LIST, MadeBefore.FILE));
    return names;
  }

  /** What the list names in this folder, be it there or not. */
  private TreeSet<String> inList() throws IOException {
    TreeSet<String> names = new TreeSet<>();
    Path list = root.resolve(LIST);
    if (Files.isRegularFile(list)) {
      names.addAll(Files.readAllLines(list, StandardCharsets.UTF_8));
      Path normal = root.normalize();
      names.removeIf(n -> n.isBlank() || !root.resolve(n).normalize().startsWith(normal));
    }
    return names;
  }

  private void saveList(TreeSet<String> names) throws IOException {
    List<String> lines =
        Stream.concat(names.stream(), Stream.of(LIST, MadeBefore.FILE)).sorted().toList();
    byte[] bytes = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
    writeIfDifferent(LIST, bytes);
  }
}
