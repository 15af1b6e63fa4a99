package curewindow.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What a page says for each parking stands once. */
class SaidOnceTest {

  private static final String ROW = "<li data-hold=haze data-end=10,20><b data-to>Wait</b></li>";

  @Test
  void anInstantThatIsTheEndOfARowIsTheNameOfItsHold() {
    assertEquals(
        ROW + "<p data-to=haze>Haze</p><h1 data-rank=2 data-end=haze>",
        SaidOnce.of(ROW + "<p data-to=10,20>Haze</p><h1 data-rank=2 data-end=10,20>"));
    assertEquals(
        ROW + "<p data-to=\"haze\" data-from=\"10,21\" hidden>",
        SaidOnce.of(ROW + "<p data-to=\"10,20\" data-from=\"10,21\" hidden>"),
        "quoted, and another instant");
  }

  @Test
  void twoHoldsThatEndAtOnceKeepTheirOwnEnds() {
    String other = ROW.replace("haze", "bubbles");
    assertEquals(ROW + other, SaidOnce.of(ROW + other));
  }

  private static final String DAYS =
      "<span data-p=\"0 2\">Friday</span><span data-p=1 hidden>Monday</span>";

  @Test
  void wordsThatStandBeforeAreToldByTheirNumber() {
    String marked = DAYS.replaceFirst("<span", "<span data-g=0");
    assertEquals(
        "<b>"
            + marked
            + "</b> and <span data-g=0>Friday</span>, <i><span data-g=0>Friday</span></i>",
        SaidOnce.of("<b>" + DAYS + "</b> and " + DAYS + ", <i>" + DAYS + "</i>"));
  }

  @Test
  void whatStandsOnceStays() {
    String once = DAYS + " or " + DAYS.replace("Monday", "Sunday");
    assertEquals(once, SaidOnce.of(once));
    String alone = "<span data-p=0>x</span> <span data-p=0>x</span>";
    assertEquals(alone, SaidOnce.of(alone), "one case alone");
  }

  /** Two texts side by side have more than one for a case, and the script could not tell which. */
  @Test
  void textsSideBySideStay() {
    String both = DAYS + DAYS;
    assertEquals(both + "," + both, SaidOnce.of(both + "," + both));
  }

  @Test
  void theNotedCaseStandsWithoutAScriptWhereverItComes() {
    String late = "<span data-p=1 hidden>a $1</span><span data-p=0>b \\</span>";
    assertEquals(
        late.replaceFirst("<span", "<span data-g=0") + "-<span data-g=0>b \\</span>",
        SaidOnce.of(late + "-" + late));
    String none = "<span data-p=1 hidden>a</span><span data-p=2 hidden>b</span>";
    assertEquals(
        none.replaceFirst("<span", "<span data-g=0") + "-<span data-g=0></span>",
        SaidOnce.of(none + "-" + none));
  }
}
