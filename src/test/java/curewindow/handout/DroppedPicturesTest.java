package curewindow.handout;

import static org.junit.jupiter.api.Assertions.assertEquals;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.shop.Handout;
import curewindow.shop.ShopFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class DroppedPicturesTest {

  @TempDir Path dir;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<img src=\"logo.png\"/>",
        "<img\nth:src=\"@{data:image/png;base64,AAAA}\"/>",
        "<svg xmlns=\"http://www.w3.org/2000/svg\"><path d=\"M0 0\"/></svg>",
        "<object data=\"logo.svg\" type=\"image/svg+xml\"></object>",
        "<p style=\"background-image: url('data:image/png;base64,AA')\">x</p>",
        "<p style=\"color: red; background: #fff url(a.png)\">x</p>"
      })
  void aPictureOfAPageIsNamedWithItsLine(String picture) {
    List<Problem> found = DroppedPictures.ofPage("card.html", "<p>one</p>\n\n " + picture);
    assertEquals(1, found.size(), found.toString());
    assertEquals("card.html:3", found.get(0).file() + ":" + found.get(0).line());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<!-- <img src=\"logo.png\"/> -->",
        "<object class=\"code\" type=\"application/x-code\" th:attr=\"data-code=${card.code}\"/>",
        "<object type=\"application/x-logo\"></object>",
        "<p style=\"background: #fff\" title=\"url(a.png)\">imgs</p>"
      })
  void whatTheProgramDrawsIsNoSuchPicture(String page) {
    assertEquals(List.of(), DroppedPictures.ofPage("card.html", page));
  }

  @Test
  void aStyleSheetsPicturesAreNamedButNoFont() {
    String css =
        "/* background: url(old.png) */\n@font-face { src: url(a.ttf); }\n"
            + ".a { color: red;\n  background: url(a.png) }\n.b:before { content: url(b.svg); }\n";
    assertEquals(
        List.of("card.css:4:3", "card.css:5:13"),
        DroppedPictures.ofStyle("card.css", css).stream()
            .map(p -> p.file() + ":" + p.line() + ":" + p.column())
            .toList());
  }

  @Test
  void itIsToldWhereATemplateIsRead() throws Exception {
    Path page = dir.resolve("site-templates/card.html");
    Files.createDirectories(page.getParent());
    String own = Files.readString(Path.of("site-templates/card.html"));
    Files.writeString(page, own.replace("<body>", "<body>\n<img src=\"logo.png\"/>"));
    Problems problems = new Problems();
    HandoutPress.read(new ShopFiles(dir), Handout.WALLET, problems);
    Problem told = problems.all().get(0);
    assertEquals(1, problems.all().size());
    assertEquals("picture-dropped site-templates/card.html", told.code() + " " + told.file());
  }

  /** The program's own templates have none. */
  @ParameterizedTest
  @ValueSource(strings = {"WALLET", "WALLET_INCH", "HANG_TAG", "WINDOW_UP", "CARE_A5"})
  void theProgramsOwnTemplatesHaveNone(Handout kind) {
    Problems problems = new Problems();
    HandoutPress.read(new ShopFiles(dir), kind, problems);
    assertEquals(List.of(), problems.all());
  }
}
