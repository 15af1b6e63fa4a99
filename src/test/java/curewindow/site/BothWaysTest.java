package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Latin letters and digits inside Arabic (Unicode Standard Annex 9): a house number stays before
 * its street, the plus before its number, a batch, a film and an address in their order.
 */
class BothWaysTest {

  /**
   * Where, on one line, a character of a Latin name or a phone number stands left of the one before
   * it. A name starts and ends with a letter or digit and has a letter in it.
   */
  private static final String TURNED =
      "var bad=[],r=document.createRange(),"
          + "w=document.createTreeWalker(document.body,NodeFilter.SHOW_TEXT),n;"
          + "while(n=w.nextNode()){if(n.parentElement.closest('script,style,.vh,[hidden],svg'))"
          + "continue;"
          + "for(var m of n.data.matchAll(/[0-9A-Za-z+](?:[ -~]*[0-9A-Za-z])?/g)){"
          + "if(!/[A-Za-z]|^[+]\\d/.test(m[0]))continue;var p=null;"
          + "for(var i=0;i<m[0].length;i++){r.setStart(n,m.index+i);r.setEnd(n,m.index+i+1);"
          + "var b=r.getBoundingClientRect();if(!b.width)continue;"
          + "if(p&&Math.abs(b.bottom-p.bottom)<6&&b.left<p.left-1){bad.push(m[0]);break}p=b}}}"
          + "return [...new Set(bad)]";

  @TempDir Path temp;

  @Test
  void latinNamesAndNumbersKeepTheirOrderInArabic() throws IOException {
    Map<String, Path> kinds = new TreeMap<>(PressedDemo.get().kinds("ar"));
    List<String> found = new ArrayList<>();
    try (Browser browser = Browser.open()) {
      for (Map.Entry<String, Path> kind : kinds.entrySet()) {
        browser.screen(1000, 900, false).go(kind.getValue());
        browser.run("document.querySelectorAll('details').forEach(d=>d.open=true)");
        ((List<?>) browser.run(TURNED)).forEach(bad -> found.add(kind.getKey() + ": " + bad));
        if (kind.getKey().equals("home")) {
          assertTrue(browser.seen("address").contains("18 Tern Yard"));
        }
      }
    }
    assertEquals(List.of(), found);
  }

  @Test
  void whatIsTurnedIsSeen() throws IOException {
    try (Browser browser = Browser.open()) {
      String page = "<!DOCTYPE html><meta charset=utf-8><html dir=rtl><p>18 Tern Yard<p>+1 206";
      browser.go(Files.writeString(temp.resolve("a.html"), page));
      assertEquals(List.of("18 Tern Yard", "+1 206"), browser.run(TURNED));
    }
  }
}
