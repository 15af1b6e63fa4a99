package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A host that lists the files of a folder must not list the customers' addresses. */
class NoListTest {

  @Test
  void theFolderOfAllCustomersHasAPageThatTellsNothing() throws IOException {
    Path site = PressedDemo.get().site();
    String page = Files.readString(site.resolve("C/index.html"));
    assertTrue(page.contains("<meta name=robots content=noindex>"), page);
    assertTrue(page.contains("href=\"/\""), "home, from the top of the host");
    assertFalse(page.contains("/C/"), page);
    assertEquals(Files.readString(site.resolve("404.html")), page);
    assertFalse(Files.readString(site.resolve("index.html")).contains("noindex"));
  }

  @Test
  void hostsAreAskedToKeepCustomersFilesOutOfSearches() throws IOException {
    assertEquals(
        "/C/*\n  X-Robots-Tag: noindex\n",
        Files.readString(PressedDemo.get().site().resolve("_headers")));
    assertTrue(
        PagePaths.headers(URI.create("https://shop.example/care/")).startsWith("/care/C/*\n"));
  }

  @Test
  void itStaysAsThePublicPagesDo() {
    String name = "site/" + PagePaths.NO_LIST;
    assertTrue(new KeptPages(List.of(), Set.of(), List.of(), true, false).test(name));
    assertFalse(new KeptPages(List.of(), Set.of(), List.of(), false, false).test(name));
  }
}
