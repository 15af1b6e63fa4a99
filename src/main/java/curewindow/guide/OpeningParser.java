package curewindow.guide;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads what stands in a line that opens a clause. */
final class OpeningParser {

  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final String QUESTION =
      "write it like (? question haze ?) or (? question haze normal haze ?)";

  private final KnownNames known;
  private final GuideSource source;
  private final String text;
  private final int offset;

  private OpeningParser(ClauseMark mark, KnownNames known, GuideSource source) {
    this.known = known;
    this.source = source;
    this.text = mark.inner().toString();
    this.offset = mark.inner().getStartOffset();
  }

  /** Reads an opening, reporting what is wrong with it; empty where something was. */
  static Optional<Opening> parse(ClauseMark mark, KnownNames known, GuideSource source) {
    return new OpeningParser(mark, known, source).parse();
  }

  private Optional<Opening> parse() {
    List<String> words = List.of(text.split("\\s+"));
    return switch (words.get(0)) {
      case "question" -> question(words);
      case "photo" ->
          words.size() == 1
              ? Optional.of(new Opening.Photo())
              : malformed("\"photo\" stands alone", "write it as (? photo ?)");
      case "before", "setting" -> timed(words);
      default -> ConditionParser.parse(text, offset, known, source).map(Opening.If::new);
    };
  }

  private Optional<Opening> timed(List<String> words) {
    if (words.size() != 2) {
      return malformed("\"" + words.get(0) + "\" has one hold", "write it like (? before haze ?)");
    }
    return hold(words.get(1)).map(h -> new Opening.Timed(h, words.get(0).equals("setting")));
  }

  private Optional<Opening> question(List<String> words) {
    boolean later = words.size() == 3 && words.get(2).equals("later");
    boolean plain = words.size() == 2 || later;
    boolean stands = words.size() == 4 && List.of("normal", "wait").contains(words.get(2));
    if (!plain && !stands || !ID.matcher(words.get(1)).matches()) {
      return malformed("a question has an id, and at most one hold", QUESTION);
    }
    if (plain) {
      return Optional.of(new Opening.Question(words.get(1), later, Optional.empty()));
    }
    boolean normal = words.get(2).equals("normal");
    return hold(words.get(3))
        .map(h -> new GuideQuestion.Standing(normal, h))
        .map(s -> new Opening.Question(words.get(1), false, Optional.of(s)));
  }

  private Optional<String> hold(String name) {
    if (known.has("hold", name)) {
      return Optional.of(name);
    }
    source.error(
        "unknown-name",
        offset + text.lastIndexOf(name),
        "the hold \"" + name + "\" is not known",
        GuideSource.suggestion(name, known.namesOf("hold")));
    return Optional.empty();
  }

  private Optional<Opening> malformed(String message, String fix) {
    source.error("malformed-condition", offset, message, fix);
    return Optional.empty();
  }
}
