package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Other users of the machine read the site, and nothing that is private. */
class PrivateFilesTest {

  @TempDir Path temp;

  @BeforeEach
  void whereFilesHaveRights() throws IOException {
    assumeTrue(Files.getFileStore(temp).supportsFileAttributeView("posix"));
    allow(temp, "rwxr-xr-x");
  }

  @Test
  void theOfficeIsClosedToOthersAlsoWhereItWasOpen() throws IOException {
    Path out = Files.createDirectory(temp.resolve("out"));
    allow(out, "rwxr-xr-x");
    press(out);
    allow(out.resolve("office"), "rwxr-xr-x");
    allow(out.resolve("office/pages.csv"), "rw-r--r--");
    press(out);
    assertEquals("rwx------", rights(out.resolve("office")));
    assertEquals("rw-------", rights(out.resolve("office/pages.csv")));
    assertEquals("rw-------", rights(out.resolve(Output.LIST)));
    assertEquals("rw-------", rights(out.resolve("office").resolve(FolderLock.FILE)));
    assertEquals("rw-r--r--", rights(out.resolve("site/index.html")));
  }

  @Test
  void aGroupThatSharesTheFolderSharesWhatIsInIt() throws IOException {
    Path out = Files.createDirectory(temp.resolve("out"));
    allow(out, "rwxrwxr-x");
    press(out);
    assertEquals("rwxrwx---", rights(out.resolve("office")));
    assertEquals("rw-rw----", rights(out.resolve("office/pages.csv")));
  }

  @Test
  void aLedgerIsForItsOwner() throws IOException {
    LedgerCsv csv = new LedgerCsv("a.csv", "a", "a", List.of("job"), "");
    Path file = Files.writeString(temp.resolve("a.csv"), "job\n");
    allow(file, "rw-r--r--");
    csv.write(temp, List.of(List.of("Q-1")));
    assertEquals("rw-------", rights(file));
  }

  private static void press(Path out) throws IOException {
    try (Output output = Output.open(out)) {
      output.put("site/index.html", "home");
      output.put("office/pages.csv", "pages");
      output.write(n -> false);
    }
  }

  private static void allow(Path path, String rights) throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(rights));
  }

  private static String rights(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }
}
