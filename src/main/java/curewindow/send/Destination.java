package curewindow.send;

import java.io.IOException;

/** Where files are put. A reader there sees the old file or the new, never half of one. */
interface Destination extends AutoCloseable {

  /**
   * Puts a file in its place, with the folders it needs.
   *
   * @param path the path in the site, with forward slashes
   * @param bytes its content
   * @throws IOException where it cannot be put; the message is for the user
   */
  void put(String path, byte[] bytes) throws IOException;

  /**
   * Takes a file away, and its folders where they are empty then; one that is not there is no
   * fault.
   *
   * @param path the path in the site, with forward slashes
   * @throws IOException where it cannot be taken away; the message is for the user
   */
  void remove(String path) throws IOException;

  @Override
  void close() throws IOException;
}
