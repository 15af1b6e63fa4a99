package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.shop.BodyType;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drawing of the car in a real browser, on the narrowest screen. */
class CarBrowserTest {

  private static Browser browser;

  @TempDir Path folder;

  @BeforeAll
  static void open() {
    browser = Browser.open();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static Demo everywhere(BodyType body) {
    Demo demo = Demo.tint();
    demo.body = body;
    demo.fit(
        "paint-film",
        "fieldcoat-gloss",
        "2026-11-30T18:00",
        -1,
        Demo.CATALOGUE.spots().keySet().toArray(String[]::new));
    return demo;
  }

  @Test
  void numbersAreApartAndWithinThePictureAndReadable() throws IOException {
    for (BodyType body : BodyType.values()) {
      Path page = Demo.onDisk(folder, everywhere(body).html());
      browser.screen(320, 800, true).go(page);
      assertEquals(
          List.of(),
          browser.run(
              "var c=[...document.querySelectorAll('.fig circle')].map(e=>e.getBoundingClientRect()),"
                  + "f=document.querySelector('.fig').getBoundingClientRect(),bad=[];"
                  + "c.forEach((p,i)=>{if(p.left<f.left||p.right>f.right||p.top<f.top||p.bottom>f.bottom)"
                  + "bad.push('outside '+i);c.forEach((q,k)=>{if(i<k&&Math.hypot(p.x-q.x,p.y-q.y)<p.width)"
                  + "bad.push(i+' over '+k)})});return bad"),
          body.toString());
      double size =
          ((Number)
                  browser.run(
                      "var f=document.querySelector('.fig');return parseFloat(getComputedStyle("
                          + "f.querySelector('text')).fontSize)*f.getScreenCTM().a"))
              .doubleValue();
      assertTrue(size >= 10, body + " letters of " + size + " pixels");
    }
  }

  /** A coating over a film: rings between lines, not one grey. Lines are 0.7 wide. */
  @Test
  void theSecondServicesRingsStandClearOfTheLinesOfAllOthers() {
    List<?> gaps =
        (List<?>)
            browser
                .go("about:blank")
                .run(
                    "var points=arguments[0].map(d=>{var p=document.createElementNS("
                        + "'http://www.w3.org/2000/svg','path');p.setAttribute('d',d);var a=[];"
                        + "for(var s=0;s<p.getTotalLength();s+=.05)a.push(p.getPointAtLength(s));"
                        + "return a});return points.map((o,i)=>i===1?9:Math.min(...o.flatMap(q=>"
                        + "points[1].filter((r,n)=>n%3===0).map(r=>Math.hypot(q.x-r.x,q.y-r.y)))))",
                    CarPicture.PATTERNS);
    assertEquals(CarPicture.PATTERNS.size(), gaps.size());
    for (Object gap : gaps) {
      assertTrue(((Number) gap).doubleValue() > 0.69, gaps.toString());
    }
  }

  @Test
  void nothingOfThePictureIsLeftOutOnPaper() throws IOException {
    Path page = Demo.onDisk(folder, everywhere(BodyType.VAN).html());
    browser.screen(320, 800, true).go(page);
    assertEquals(
        List.of(),
        browser.run(
            "return [...document.styleSheets[0].cssRules].filter(r=>r.media&&"
                + "r.media.mediaText==='print').flatMap(r=>[...r.cssRules]).filter(r=>"
                + "r.style&&r.style.display==='none'&&[...document.querySelectorAll('.fig *')]"
                + ".some(e=>e.matches(r.selectorText))).map(r=>r.selectorText)"));
    assertTrue((Long) browser.run("return document.querySelectorAll('.fig .in').length") > 0);
  }

  @Test
  void aSpotLeadsToItsEntryByTapAndByKey() throws IOException {
    Path page = Demo.onDisk(folder, Demo.tint().html());
    browser.scripts(false).screen(320, 800, true).go(page);
    browser.scripts(true);
    browser.run(
        "document.querySelector('.fig a[href=\"#f2\"] path').dispatchEvent("
            + "new MouseEvent('click',{bubbles:true,cancelable:true}))");
    assertEquals("f2", browser.run("return document.querySelector(':target').id"));
    assertEquals(
        "2: Window tint, rear window",
        browser.run(
            "return document.querySelector('.fig a[href=\"#f2\"]:not([tabindex])')"
                + ".querySelector('title').textContent"));
    assertEquals(
        2L,
        browser.run(
            "return [...document.querySelectorAll('.fig a')].filter(e=>e.tabIndex===0).length"));
  }

  /** The picture is of the same car in every language; only the list turns round. */
  @Test
  void thePictureDoesNotTurnWithTheScript() throws IOException {
    String html = Demo.tint().html();
    String places =
        "var f=document.querySelector('.fig').getBoundingClientRect();return"
            + " [...document.querySelectorAll('.fig circle')].map(e=>Math.round("
            + "e.getBoundingClientRect().x-f.x)).join()";
    Path page = Demo.onDisk(folder, html);
    Object leftToRight = browser.screen(320, 800, true).go(page).run(places);
    Demo.onDisk(folder, html.replaceFirst(" lang=en dir=ltr", " lang=ar dir=rtl"));
    assertEquals(leftToRight, browser.go(page).run(places));
    assertTrue(
        (Boolean)
            browser.run(
                "var k=document.querySelector('.key>li'),s=k.querySelector('svg');"
                    + "return s.getBoundingClientRect().x<k.querySelector('h3')"
                    + ".getBoundingClientRect().right-100"));
    assertEquals(320L, browser.run("return document.documentElement.scrollWidth"));
  }
}
