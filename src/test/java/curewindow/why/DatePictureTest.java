package curewindow.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

/** The picture in the docs is that of the demo job as it is computed today. */
class DatePictureTest {

  /** Draws it anew: {@code mvn -q test -Dtest=DatePictureTest -Dredraw=true}. */
  @BeforeAll
  static void redraw() throws IOException {
    if (Boolean.getBoolean("redraw")) {
      DatePicture.main(new String[0]);
    }
  }

  @Test
  void theCommittedPictureIsTodaysDrawing() throws Exception {
    assertEquals(
        Files.readString(DatePicture.FILE),
        DatePicture.drawn(),
        "run this test with -Dredraw=true, then look at the picture");
  }

  @Test
  void isWellFormedNamedAndNeedsNothingFromElsewhere() throws Exception {
    String drawn = DatePicture.drawn();
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(drawn.getBytes(StandardCharsets.UTF_8)));
    assertEquals("svg", document.getDocumentElement().getTagName());
    assertEquals(1, document.getElementsByTagName("title").getLength());
    assertFalse(drawn.contains("href"), "no link");
    assertTrue(drawn.split("width=\"12.0\"").length - 1 >= 29, "a square for each weather");
    assertTrue(
        Files.readString(Path.of("docs/dates-for-shops.md"))
            .contains("(pictures/" + DatePicture.FILE.getFileName() + ")"));
  }
}
