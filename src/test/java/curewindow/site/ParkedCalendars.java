package curewindow.site;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The calendars that a page has within itself, of the parkings beside the noted one. */
final class ParkedCalendars {

  private ParkedCalendars() {}

  /** The lines of each, unfolded; none where the page has none. */
  static List<List<String>> of(Document page) {
    List<List<String>> calendars = new ArrayList<>();
    Element data = page.selectFirst("#ics");
    if (data != null) {
      JsonNode json = JsonMapper.shared().readTree(data.data());
      for (JsonNode runs : json.get("cases")) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < runs.size(); i += 2) {
          for (int n = runs.get(i).asInt(); n <= runs.get(i + 1).asInt(); n++) {
            lines.add(json.get("lines").get(n).asString());
          }
        }
        calendars.add(lines);
      }
      calendars.remove(0);
    }
    return calendars;
  }
}
