package curewindow.site;

import curewindow.page.Browser;
import java.util.List;
import java.util.Map;

/**
 * What can be seen of a customer's page in a browser, with everything opened that can be opened;
 * spaces of all kinds are one space.
 *
 * @param answers the holds of the answers at the top that can be seen
 * @param answer what the heading says
 * @param stamp the stamped date for machines; empty where there is none
 * @param more what stands below the heading
 * @param rows the dates, in their order
 * @param notes what is said above and beside the answer
 * @param parked what is said of the parking: the summary, and what the dates go by
 * @param calendars where the links to calendars lead
 * @param folds questions and care texts: the heading, and what is said under it
 */
record SeenPage(
    List<String> answers,
    String answer,
    String stamp,
    String more,
    List<Row> rows,
    List<String> notes,
    List<String> parked,
    List<String> calendars,
    List<List<String>> folds) {

  /**
   * A date; {@code bar} is where its two parts end, in percent of the line, and where the mark of
   * the present stands on it, each empty where it is not shown.
   */
  record Row(
      String hold, String what, String when, String time, String below, boolean over, Bar bar) {}

  record Bar(String sure, String may, String broken, String now) {}

  private static final String SCRIPT =
      "document.querySelectorAll('details').forEach(d=>d.open=true);"
          + "var S=(s,e)=>[...(e||document).querySelectorAll(s)].filter(x=>x.checkVisibility()),"
          + "V=e=>{var t='',w=document.createTreeWalker(e,4),n;"
          + "while(n=w.nextNode())if(n.parentElement.checkVisibility())t+=n.data;"
          + "return t.replace(/\\s+/g,' ').trim()},"
          + "W=(s,e)=>S(s,e).map(V),"
          + "P=(r,s,a)=>{var e=r.querySelector(s);return e&&e.checkVisibility()"
          + "&&e.getAttribute('display')!=='none'?e.getAttribute(a):''};return {"
          + "answers:S('h1 .answer').map(e=>e.dataset.answer),answer:W('h1')[0],"
          + "stamp:S('h1 time').map(e=>e.dateTime).join(),more:W('.rel')[0],"
          + "rows:[...document.querySelectorAll('.rows li')].map(r=>[r.dataset.hold,W('.what',r)[0],"
          + "W('.when',r)[0]||'',r.querySelector('time').dateTime,W('.safety,.set,.done',r).filter(t=>t).join(' '),"
          + "String(r.classList.contains('over')),P(r,'.sure','width'),P(r,'.may','width'),"
          + "P(r,'.cut','x'),P(r,'.at','x')]),"
          + "notes:W('.card,.now .note'),parked:W('#parking summary,.own~.note'),"
          + "calendars:S('#dates a').map(e=>e.getAttribute('href')),"
          + "folds:S('#normal details:not(.more),#care details').map(d=>"
          + "[V(d.firstElementChild),W(':scope>:not(summary)',d).join(' ')])}";

  /** Reads the open page. */
  static SeenPage of(Browser browser) {
    return of(browser, "");
  }

  /** Reads the open page after a script with some arguments has run. */
  @SuppressWarnings("unchecked")
  static SeenPage of(Browser browser, String first, Object... arguments) {
    Map<String, Object> seen = (Map<String, Object>) browser.run(first + SCRIPT, arguments);
    return new SeenPage(
        (List<String>) seen.get("answers"),
        (String) seen.get("answer"),
        (String) seen.get("stamp"),
        (String) seen.get("more"),
        ((List<List<String>>) seen.get("rows")).stream().map(SeenPage::row).toList(),
        (List<String>) seen.get("notes"),
        (List<String>) seen.get("parked"),
        (List<String>) seen.get("calendars"),
        (List<List<String>>) seen.get("folds"));
  }

  private static Row row(List<String> of) {
    return new Row(
        of.get(0),
        of.get(1),
        of.get(2),
        of.get(3),
        of.get(4),
        of.get(5).equals("true"),
        new Bar(of.get(6), of.get(7), of.get(8), of.get(9)));
  }
}
