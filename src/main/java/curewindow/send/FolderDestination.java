package curewindow.send;

import curewindow.site.AtomicFiles;
import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A folder of this machine, such as one that a host's own program looks after. */
record FolderDestination(Path root) implements Destination {

  @Override
  public void put(String path, byte[] bytes) throws IOException {
    Path file = root.resolve(path);
    try {
      Files.createDirectories(file.getParent());
    } catch (IOException e) {
      throw new IOException(file.getParent() + " cannot be made (" + e.getMessage() + ")", e);
    }
    AtomicFiles.write(file, bytes);
  }

  @Override
  public void remove(String path) throws IOException {
    Path file = root.resolve(path);
    Files.deleteIfExists(file);
    for (Path folder = file.getParent(); !folder.equals(root); folder = folder.getParent()) {
      try {
        Files.deleteIfExists(folder);
      } catch (DirectoryNotEmptyException e) {
        return;
      }
    }
  }

  @Override
  public void close() {
    // Nothing is held open.
  }
}
