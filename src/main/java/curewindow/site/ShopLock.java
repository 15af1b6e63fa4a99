package curewindow.site;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Keeps two presses from writing one link ledger at the same time. */
final class ShopLock implements AutoCloseable {

  private static final String FILE = ".curewindow.lock";

  private final Path shop;
  private final FileChannel channel;

  private ShopLock(Path shop, FileChannel channel) {
    this.shop = shop;
    this.channel = channel;
  }

  /**
   * Locks a shop folder until closed.
   *
   * @param shop the shop folder
   * @return the lock
   * @throws IOException where another press holds it or the folder cannot be written; the message
   *     is for the user
   */
  static ShopLock on(Path shop) throws IOException {
    Path file = shop.resolve(FILE);
    FileChannel channel;
    try {
      channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    } catch (IOException e) {
      throw new IOException("the shop folder " + shop + " cannot be written", e);
    }
    try {
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return new ShopLock(shop, channel);
      }
    } catch (OverlappingFileLockException e) {
      // held by this very program: the same answer as for another one
    }
    channel.close();
    throw new IOException("another press is at work on " + shop + "; wait until it is done");
  }

  /** The folder that is locked. */
  Path shop() {
    return shop;
  }

  @Override
  public void close() throws IOException {
    Files.deleteIfExists(shop.resolve(FILE));
    channel.close();
  }
}
