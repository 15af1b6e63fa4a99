package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of pages is opened in spreadsheets, and read again by the next press. */
class PageListTest {

  @TempDir Path out;

  @Test
  void noNameIsAFormulaAndEachIsReadAsItWas() throws IOException {
    List<PageList.Row> rows =
        Stream.of("=1+1", "+1", "-1", "@A1", "\t=1", "\r=1", "'=1", "''-", "'Ana", "Ana", "")
            .map(name -> new PageList.Row("Q-1", name, "C/X/", "https://care.example/C/X/"))
            .toList();
    String text = PageList.text(rows);
    assertTrue(text.contains("Q-1,'=1+1,C/X/") && text.contains("Q-1,'@A1,C/X/"), text);
    assertTrue(text.contains("Q-1,'Ana,C/X/") && text.contains("Q-1,''=1,C/X/"), text);
    assertTrue(!text.matches("(?s).*,\"?[=+@\\t\\r-].*"), text);
    Path file = out.resolve(PageList.FILE);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    assertEquals(rows, PageList.read(out));
  }
}
