package curewindow.words;

import curewindow.problem.Problem;
import curewindow.problem.Problems;
import curewindow.problem.Where;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** Stands in until the shop package reads YAML texts. */
final class FlatTexts {

  private FlatTexts() {}

  static List<FlatText> read(String file, String yaml, Problems problems) {
    List<FlatText> found = new ArrayList<>();
    try (JsonParser parser = YAMLMapper.shared().createParser(yaml)) {
      Deque<String> path = new ArrayDeque<>();
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token == JsonToken.PROPERTY_NAME) {
          path.addLast(parser.currentName());
        } else if (token.isScalarValue()) {
          String key = String.join(".", path);
          Where where =
              new Where(
                  file,
                  parser.currentTokenLocation().getLineNr(),
                  parser.currentTokenLocation().getColumnNr(),
                  key);
          found.add(new FlatText(key, parser.getString(), where));
          path.pollLast();
        } else if (token == JsonToken.END_OBJECT) {
          path.pollLast();
        }
      }
    } catch (JacksonException e) {
      problems.add(
          Problem.error(
              "not-yaml",
              Where.line(file, Math.max(1, e.getLocation().getLineNr()), 1),
              "this is not YAML: " + e.getOriginalMessage(),
              "check the spaces at the line's start and the quotes"));
    }
    return found;
  }
}
