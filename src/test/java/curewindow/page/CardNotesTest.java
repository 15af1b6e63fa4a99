package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import curewindow.told.JobView;
import curewindow.told.Printed;
import curewindow.told.PrintedDate;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** In {@link Demo#tint} the windows stay up until Friday, December 4, 2 PM. */
class CardNotesTest {

  private static PrintedDate windows(String card, String earliest, boolean slowed) {
    return new PrintedDate("windows-up", Demo.at(card), Demo.at(earliest)).slowed(slowed);
  }

  private static Document page(Demo demo, PrintedDate... dates) {
    JobView view = demo.view().withPrinted(new Printed(List.of(dates), Optional.empty()));
    Document page = Jsoup.parse(Demo.html(view));
    page.select("[hidden]").remove();
    return page;
  }

  private static String plain(String text) {
    return text.replace('\u00A0', ' ');
  }

  @Test
  void thatTheCardIsTooEarlyStandsBeforeAnythingElse() {
    Document page = page(Demo.tint(), windows("2026-12-03T14:00", "2026-12-03T14:00", true));
    Element first = page.selectFirst("main").child(0);
    assertEquals(
        "The card says Thursday, December 3, 2 PM for “Windows stay up”. It has been colder or"
            + " damper than usual: please wait until Friday, December 4, 2 PM.",
        plain(first.text()));
    assertEquals("card", first.className(), "told by its frame too");
    assertEquals(
        "windows-up", first.attr("data-to"), "a script takes it away when the new date has come");
  }

  @Test
  void inSpanishToo() {
    Demo demo = Demo.tint();
    demo.language = "es";
    String first =
        plain(
            page(demo, windows("2026-12-03T14:00", "2026-12-03T14:00", true))
                .selectFirst("main")
                .child(0)
                .text());
    assertTrue(first.startsWith("La tarjeta dice jueves 3 de diciembre"), first);
    assertTrue(first.contains("Ha hecho más frío"), first);
    assertTrue(first.contains("espere hasta el viernes 4 de diciembre"), first);
  }

  @Test
  void otherReasonsAreNotBlamedOnTheWeather() {
    String first =
        page(Demo.tint(), windows("2026-12-03T14:00", "2026-12-03T14:00", false))
            .selectFirst("main")
            .child(0)
            .text();
    assertTrue(first.contains("That date has moved: please wait until"), first);
  }

  @Test
  void aPromiseMadeSinceBindsToo() {
    Document page = page(Demo.tint(), windows("2026-12-06T14:00", "2026-12-02T14:00", false));
    assertTrue(
        plain(page.selectFirst("main").child(0).text())
            .startsWith("We told you Wednesday, December 2, 2 PM for"));
    assertTrue(plain(page.select(".now .note").text()).contains("sooner than the card says"));
  }

  @Test
  void aSoonerDateIsSaidToBeSooner() {
    Document page = page(Demo.tint(), windows("2026-12-06T14:00", "2026-12-04T14:00", false));
    assertTrue(page.select("main > .card").isEmpty());
    assertEquals(
        "“Windows stay up”: this is sooner than the card says (Sunday, December 6, 2 PM).",
        plain(page.select(".now .note").text()));
  }

  @Test
  void aDateAtTheLimitIsADateLikeAnyOther() {
    Document page = page(Demo.atLimit(), windows("2026-12-03T14:00", "2026-12-03T14:00", true));
    assertTrue(
        plain(page.selectFirst("main").child(0).text())
            .endsWith("please wait until Friday, December 4, 2 PM."));
  }

  /** The visit of {@link Demo#tint} is asked for from Monday, January 4, on. */
  @Test
  void aVisitThatMovedIsSaidBesideTheInvitation() {
    for (String day : List.of("2027-01-02", "2027-01-08", "2027-01-04")) {
      JobView view =
          Demo.tint().view().withPrinted(new Printed(List.of(), Optional.of(LocalDate.parse(day))));
      String page = plain(Jsoup.parse(Demo.html(view)).text());
      assertTrue(page.contains("any day we are open, starting Mon, Jan 4"), page);
      String moved = "We told you " + (day.endsWith("02") ? "Sat, Jan 2" : "Fri, Jan 8");
      assertEquals(!day.endsWith("04"), page.contains(moved + ". That has moved."), page);
    }
  }

  @Test
  void datesThatHoldOrHurtNobodyAreNotMentioned() {
    PrintedDate same = windows("2026-12-04T14:00", "2026-12-04T14:00", false);
    PrintedDate settled =
        new PrintedDate("haze", Demo.at("2026-12-02T14:00"), Demo.at("2026-12-02T14:00"));
    PrintedDate gone =
        new PrintedDate("wipers", Demo.at("2026-12-02T14:00"), Demo.at("2026-12-02T14:00"));
    Document page = page(Demo.tint(), same, settled, gone);
    assertTrue(page.select(".card").isEmpty());
    assertTrue(page.select(".now .note").isEmpty());
  }
}
