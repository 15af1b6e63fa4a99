package curewindow.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.page.Browser;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Text of twice the size on the screen of a phone (WCAG 2.1, 1.4.4), and the narrowest screen that
 * has to do without scrolling to the side (1.4.10: 320 pixels), in languages written from either
 * side.
 */
class LargeTextTest {

  /** What sticks out of the screen; what only a screen reader reads has no place on it. */
  private static final String OUT =
      "document.documentElement.style.fontSize=arguments[0];var w=arguments[1],bad=[];"
          + "if(document.documentElement.scrollWidth>w)"
          + "bad.push('scrolls '+document.documentElement.scrollWidth);"
          + "document.querySelectorAll('body *').forEach(e=>{"
          + "if(e.closest('svg,.vh,.skip'))return;var r=e.getBoundingClientRect();"
          + "if(r.width&&(r.right>w+1||r.left<-1))"
          + "bad.push(e.tagName+' '+Math.round(r.left)+'..'+Math.round(r.right)"
          + "+' '+e.textContent.trim().slice(0,20))});return bad.slice(0,5)";

  /** Lines of one letter come of a box that has become too narrow for any word. */
  private static final String TORN =
      "var bad=[];document.querySelectorAll('caption,th,td,dt,dd,p,h1,h2,h3,.stamp b')"
          + ".forEach(e=>{var r=e.getBoundingClientRect(),"
          + "s=parseFloat(getComputedStyle(e).fontSize);"
          + "if(!e.closest('.vh')&&r.width&&r.width<2*s&&e.textContent.trim().length>4)"
          + "bad.push(e.tagName+' '+Math.round(r.width)+' '+e.textContent.trim().slice(0,20))});"
          + "return bad.slice(0,5)";

  /** On how many lines each word of the stamp stands; two fonts' boxes differ by a little. */
  private static final String STAMP_LINES =
      "var w=document.createTreeWalker(document.querySelector('.answer:not([hidden]) .stamp'),4),n,"
          + "r=document.createRange(),all=[];while(n=w.nextNode()){"
          + "if(n.parentElement.closest('.vh')||!n.parentElement.checkVisibility())continue;"
          + "all.push(...[...n.data.matchAll(/\\S+/g)].map(m=>{"
          + "r.setStart(n,m.index);r.setEnd(n,m.index+m[0].length);"
          + "var t=[...r.getClientRects()].map(c=>c.bottom).sort((x,y)=>x-y);"
          + "return t.filter((y,i)=>!i||y-t[i-1]>10).length}))}return all";

  /** Names, dates and bars of the list that are printed over each other. */
  private static final String OVER =
      "return [...document.querySelectorAll('.rows li')].flatMap(r=>{"
          + "var e=[...r.querySelectorAll('.what,.when,.bar,.safety,.set,.done')].filter(x=>x.checkVisibility()),"
          + "b=e.map(x=>x.getBoundingClientRect());"
          + "return e.flatMap((x,i)=>b.some((q,k)=>k>i&&b[i].left<q.right-1&&q.left<b[i].right-1"
          + "&&b[i].top<q.bottom-1&&q.top<b[i].bottom-1)?[x.textContent]:[])})";

  @ParameterizedTest
  @ValueSource(strings = {"en", "es", "ar"})
  void nothingScrollsToTheSide(String language) throws IOException {
    Map<String, Path> kinds = new TreeMap<>(PressedDemo.get().kinds(language));
    List<String> found = new ArrayList<>();
    try (Browser browser = Browser.open()) {
      for (int width : List.of(320, 390)) {
        for (Map.Entry<String, Path> kind : kinds.entrySet()) {
          browser.clock(PressedDemo.CLOCK.instant()).screen(width, 800, false);
          browser.go(kind.getValue());
          browser.run("document.querySelectorAll('details').forEach(d=>d.open=true)");
          for (String size : List.of("100%", "150%", "200%")) {
            String at = kind.getKey() + " at " + width + ", " + size + ": ";
            ((List<?>) browser.run(OUT, size, width)).forEach(bad -> found.add(at + bad));
            ((List<?>) browser.run(TORN)).forEach(bad -> found.add(at + bad));
            ((List<?>) browser.run(OVER)).forEach(bad -> found.add(at + "over " + bad));
          }
          if (kind.getKey().equals("job")) {
            List<?> lines = (List<?>) browser.run(STAMP_LINES);
            assertTrue(!lines.isEmpty(), "a stamped date is shown");
            assertEquals(
                List.of(1L), lines.stream().distinct().toList(), "words in two, at " + width);
          }
        }
      }
    }
    assertEquals(List.of(), found);
  }

  /** Where letters are too large to stand beside their dates, these stand below them. */
  @ParameterizedTest
  @ValueSource(strings = {"en", "ar"})
  void aDateStandsBelowItsNameWhereLettersAreTooLarge(String language) throws IOException {
    try (Browser browser = Browser.open()) {
      browser.clock(PressedDemo.CLOCK.instant()).screen(390, 800, false);
      browser.go(PressedDemo.get().kinds(language).get("job"));
      assertEquals(true, browser.run(BESIDE));
      browser.run("document.documentElement.style.fontSize='200%'");
      assertEquals(false, browser.run(BESIDE));
      assertTrue(!browser.seen(".rows .when time").isEmpty());
    }
  }

  private static final String BESIDE =
      "var r=document.querySelector('.rows li'),b=s=>r.querySelector(s).getBoundingClientRect();"
          + "return b('.when').top<b('.what').bottom";
}
