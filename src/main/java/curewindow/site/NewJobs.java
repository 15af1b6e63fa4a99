package curewindow.site;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/**
 * Puts new job files, and maps for their import, into a shop folder, while nobody else writes into
 * it.
 */
public final class NewJobs implements AutoCloseable {

  private final FolderLock lock;
  private final Path shop;

  private NewJobs(FolderLock lock) {
    this.lock = lock;
    this.shop = lock.folder();
  }

  /**
   * Begins: from now on what stands in the folder stays as it is.
   *
   * @param shop the shop folder
   * @return to be closed when all is written
   * @throws IOException where somebody else is at work, or the folder cannot be written; the
   *     message is for the user
   */
  public static NewJobs in(Path shop) throws IOException {
    NewJobs jobs = new NewJobs(FolderLock.on(shop));
    try {
      jobs.lock.clear(shop.resolve("jobs"));
      return jobs;
    } catch (IOException e) {
      jobs.close();
      throw e;
    }
  }

  /** The addresses that jobs have, or had. */
  LinkLedger links() throws IOException {
    return Ledgers.links(lock);
  }

  /**
   * Writes a job file. It is whole on the disk when this returns; none that is there is written
   * over.
   *
   * @param id the job's id
   * @param text the text of its file
   * @return false where a file of its name is there
   * @throws IOException where it cannot be written; the message is for the user
   */
  public boolean write(String id, String text) throws IOException {
    return write(shop.resolve("jobs").resolve(id + ".yaml"), text);
  }

  /**
   * Writes the map of an import; none that is there is written over.
   *
   * @param name its name
   * @param text the text of its file
   * @return false where a map of its name is there
   * @throws IOException where it cannot be written; the message is for the user
   */
  public boolean writeMap(String name, String text) throws IOException {
    return write(shop.resolve("imports").resolve(name + ".yaml"), text);
  }

  /**
   * Changes the map of an import.
   *
   * @param name its name
   * @param before the text that its file has
   * @param text the text that its file gets
   * @return false where its file is not there or has another text, which stays
   * @throws IOException where it cannot be read or written; the message is for the user
   */
  public boolean changeMap(String name, String before, String text) throws IOException {
    Path file = shop.resolve("imports").resolve(name + ".yaml");
    if (!Files.isRegularFile(file) || !Files.readString(file).equals(before)) {
      return false;
    }
    AtomicFiles.replace(file, text.getBytes(StandardCharsets.UTF_8));
    return true;
  }

  private static boolean write(Path file, String text) throws IOException {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    AtomicFiles.writePrivate(file, text.getBytes(StandardCharsets.UTF_8));
    return true;
  }

  @Override
  public void close() throws IOException {
    lock.close();
  }
}
