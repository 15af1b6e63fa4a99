package curewindow.shop;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.Optional;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** The files that come with the program: what a new shop starts from. */
final class Starter {

  private static final String BASE = "curewindow/starter";
  private static final Starter BUNDLED = new Starter();

  private final TreeSet<String> files = new TreeSet<>();

  private Starter() {
    URL url = Starter.class.getClassLoader().getResource(BASE);
    if (url == null) {
      throw new IllegalStateException("the program's own files are missing from its jar");
    }
    try {
      if (url.getProtocol().equals("jar")) {
        index((JarURLConnection) url.openConnection());
      } else {
        index(Path.of(url.toURI()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private void index(Path base) throws IOException {
    try (Stream<Path> all = Files.walk(base)) {
      all.filter(Files::isRegularFile)
          .forEach(f -> files.add(base.relativize(f).toString().replace('\\', '/')));
    }
  }

  private void index(JarURLConnection jar) throws IOException {
    jar.setUseCaches(false);
    try (JarFile all = jar.getJarFile()) {
      for (Enumeration<JarEntry> e = all.entries(); e.hasMoreElements(); ) {
        String name = e.nextElement().getName();
        if (name.startsWith(BASE + "/") && !name.endsWith("/")) {
          files.add(name.substring(BASE.length() + 1));
        }
      }
    }
  }

  static Starter bundled() {
    return BUNDLED;
  }

  /** Relative paths of all files, with forward slashes. */
  TreeSet<String> all() {
    return new TreeSet<>(files);
  }

  /** Relative paths of the files right inside a folder. */
  TreeSet<String> list(String folder) {
    TreeSet<String> found = new TreeSet<>();
    for (String f : files) {
      if (f.startsWith(folder + "/") && f.indexOf('/', folder.length() + 1) < 0) {
        found.add(f);
      }
    }
    return found;
  }

  /** Names of the folders right inside a folder. */
  TreeSet<String> folders(String folder) {
    TreeSet<String> found = new TreeSet<>();
    for (String f : files) {
      int slash = f.indexOf('/', folder.length() + 1);
      if (f.startsWith(folder + "/") && slash > 0) {
        found.add(f.substring(folder.length() + 1, slash));
      }
    }
    return found;
  }

  Optional<byte[]> bytes(String file) throws IOException {
    if (!files.contains(file)) {
      return Optional.empty();
    }
    try (InputStream in = Starter.class.getClassLoader().getResourceAsStream(BASE + "/" + file)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    }
  }
}
