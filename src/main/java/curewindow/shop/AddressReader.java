package curewindow.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the shop's street address: its lines as people see them, and which parts they have. */
final class AddressReader {

  /** From the end of an address to its beginning, as they are taken off the lines. */
  static final List<String> PARTS = List.of("country", "postal-code", "region", "city");

  private static final int LONGEST = 80;

  private final Fields fields;
  private final Source source;

  AddressReader(Fields fields, Source source) {
    this.fields = fields;
    this.source = source;
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Node item : fields.items("street")) {
      if (item instanceof Node.Leaf leaf) {
        Values.text(leaf, LONGEST, source).ifPresent(lines::add);
      } else {
        Values.wrongType(item, "text", "write one line of the address", source);
      }
    }
    return lines;
  }

  /** The parts that are named, else what the lines tell by themselves. */
  AddressParts parts(List<String> lines) {
    AddressParts parts = new AddressParts(lines, "", "", "", "");
    boolean named = false;
    for (String key : PARTS) {
      Optional<String> part =
          key.equals("postal-code") ? fields.code(key, LONGEST) : fields.text(key, LONGEST);
      if (part.isPresent()) {
        named = true;
        parts = with(parts, key, part.get());
      }
    }
    return named ? parts : AddressParts.of(lines);
  }

  /** Only the country may go without saying among neighbours. */
  private AddressParts with(AddressParts parts, String key, String part) {
    Optional<AddressParts> more = parts.with(key, part);
    if (more.isPresent()) {
      return more.get();
    }
    if (key.equals("country")) {
      return parts.named(key, part, parts.street());
    }
    source.notice(
        "not-in-street",
        fields.where(key),
        key + " is not in the lines of street: " + Source.shown(part),
        "write it as it stands there; until then the contact card for phones goes without it");
    return parts;
  }
}
