package curewindow.shop;

import curewindow.problem.Where;
import curewindow.shop.Node.Branch;
import curewindow.shop.Node.Entry;
import curewindow.shop.Node.Leaf;
import curewindow.shop.Node.Row;
import curewindow.shop.Node.Type;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Reads YAML into nodes that know their line and column. Only plain data is taken: no anchors, no
 * aliases, one document, no key twice.
 */
final class YamlTree {

  private static final int DEEPEST = 16;
  private static final LoadSettings SETTINGS =
      LoadSettings.builder()
          .setCodePointLimit((int) ShopFiles.MAX_BYTES + 1024)
          .setAllowDuplicateKeys(true)
          .build();
  private static final YAMLFactory FACTORY = YAMLFactory.builder().loadSettings(SETTINGS).build();

  private final Source source;
  private final YAMLParser parser;

  private YamlTree(Source source, YAMLParser parser) {
    this.source = source;
    this.parser = parser;
  }

  /**
   * Reads a text.
   *
   * @param text the text of the file
   * @param source where problems go
   * @return the value of its only document, or empty where there is a problem
   */
  static Optional<Node> read(String text, Source source) {
    if (PlainText.hasOddCharacters(text, source) || shares(text, source)) {
      return Optional.empty();
    }
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
      return Optional.of(new YamlTree(source, (YAMLParser) parser).document());
    } catch (Stop e) {
      return Optional.empty();
    } catch (JacksonException e) {
      notYaml(e, source);
      return Optional.empty();
    }
  }

  /**
   * Whether there is an anchor or alias; asked first, as the parser drops those of plain values.
   */
  private static boolean shares(String text, Source source) {
    if (text.indexOf('&') < 0 && text.indexOf('*') < 0) {
      return false;
    }
    try {
      for (Event event : new Parse(SETTINGS).parseString(text)) {
        if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
          tellSharing(node, source);
          return true;
        }
      }
    } catch (YamlEngineException e) {
      // What is not YAML is told by the parser.
      return false;
    }
    return false;
  }

  private static void tellSharing(NodeEvent node, Source source) {
    Mark at = node.getStartMark().orElseThrow();
    source.error(
        "anchor-or-alias",
        at.getLine() + 1,
        at.getColumn() + 1,
        "an anchor (&name) or an alias (*name) stands here",
        "put text that begins with & or * in quotes; write a shared value out in each place");
  }

  private static void notYaml(JacksonException e, Source source) {
    String why = "a value stands where it cannot be read";
    int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
    int column = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getColumnNr());
    if (e.getCause() instanceof MarkedYamlEngineException marked) {
      why = String.valueOf(marked.getProblem());
      Optional<Mark> mark = marked.getProblemMark();
      line = mark.map(m -> m.getLine() + 1).orElse(line);
      column = mark.map(m -> m.getColumn() + 1).orElse(column);
    }
    source.error(
        "not-yaml",
        line,
        column,
        "this is not YAML: " + Source.shown(why, 100),
        "look at this line and the one above for a missing quote, bracket, colon or space");
  }

  private Node document() {
    JsonToken token = parser.nextToken();
    if (token == null || (token == JsonToken.VALUE_NULL && parser.getString().isEmpty())) {
      source.error("empty-file", "the file is empty", "fill it in, or delete it");
      throw new Stop();
    }
    Node node = value(token, "", 0);
    if (parser.nextToken() != null) {
      throw stop(
          "several-documents",
          "a second document begins here",
          "keep one document in a file: remove the line with --- and what follows");
    }
    return node;
  }

  private Node value(JsonToken token, String path, int depth) {
    if (depth > DEEPEST) {
      throw stop(
          "too-deep",
          "values are nested more than " + DEEPEST + " deep",
          "check the brackets and the indentation");
    }
    Where where = here(path);
    return switch (token) {
      case START_OBJECT -> branch(where, depth);
      case START_ARRAY -> row(where, depth);
      case VALUE_STRING -> new Leaf(where, Type.TEXT, parser.getString());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Leaf(where, Type.NUMBER, parser.getString());
      case VALUE_TRUE, VALUE_FALSE -> new Leaf(where, Type.FLAG, parser.getString());
      case VALUE_NULL -> new Leaf(where, Type.EMPTY, "");
      default ->
          throw stop("not-plain", "the value is not plain text", "write it as text in quotes");
    };
  }

  private Branch branch(Where where, int depth) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String key = parser.getString();
      String path =
          where.path().isEmpty() ? Source.shown(key) : where.path() + "." + Source.shown(key);
      Where at = here(path);
      Entry entry = new Entry(at, value(parser.nextToken(), path, depth + 1));
      Entry first = entries.putIfAbsent(key, entry);
      if (first != null) {
        source.error(
            "duplicate-key",
            at,
            "the key " + Source.shown(key) + " stands here again after line " + first.key().line(),
            "keep one of the two");
      }
    }
    return new Branch(where, entries, Map.of());
  }

  private Row row(Where where, int depth) {
    List<Node> items = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      items.add(value(t, where.path() + "[" + (items.size() + 1) + "]", depth + 1));
    }
    return new Row(where, items);
  }

  private Where here(String path) {
    TokenStreamLocation at = parser.currentTokenLocation();
    return new Where(
        source.file(), Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()), path);
  }

  private Stop stop(String code, String message, String fix) {
    source.error(code, here(""), message, fix);
    return new Stop();
  }

  /** Ends the reading of one file after its problem has been told. */
  private static final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Stop() {
      super(null, null, false, false);
    }
  }
}
