package curewindow.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The parts of an address for those who keep them apart, such as a phone's address book. Any may be
 * empty.
 *
 * @param street the lines, or what is left of them without the other parts
 * @param city the town
 * @param region the state or province
 * @param postalCode the postal code
 * @param country the country
 */
public record AddressParts(
    List<String> street, String city, String region, String postalCode, String country) {

  /** Town, state and ZIP code as people write them on one line in the USA. */
  private static final Pattern US_TOWN =
      Pattern.compile(
          "(?:.*,\\s*)?([^,]*\\p{L}[^,]*),\\s*([A-Z]{2}),?\\s+([0-9]{5}(?:-[0-9]{4})?)");

  /** Copies the lines. */
  public AddressParts {
    street = List.copyOf(street);
  }

  /** An address of which no part is named. */
  static AddressParts of(List<String> lines) {
    AddressParts plain = new AddressParts(lines, "", "", "", "");
    if (lines.isEmpty()) {
      return plain;
    }
    Matcher town = US_TOWN.matcher(lines.get(lines.size() - 1));
    return town.matches()
        ? plain
            .with("postal-code", town.group(3))
            .flatMap(a -> a.with("region", town.group(2)))
            .flatMap(a -> a.with("city", town.group(1)))
            .orElse(plain)
        : plain;
  }

  /**
   * The same with one more part, which is taken off the lines.
   *
   * @return empty where no line has it as words of their own
   */
  Optional<AddressParts> with(String key, String part) {
    Pattern words =
        Pattern.compile("(?iu)(?<![\\p{L}\\p{N}])" + Pattern.quote(part) + "(?![\\p{L}\\p{N}])");
    // From the end, where towns stand: a street may be named after one.
    for (int i = street.size() - 1; i >= 0; i--) {
      Optional<MatchResult> last =
          words.matcher(street.get(i)).results().reduce((first, next) -> next);
      if (last.isPresent()) {
        return Optional.of(named(key, part, without(i, last.get())));
      }
    }
    return Optional.empty();
  }

  /** The same with one more part, whether the lines have it or not. */
  AddressParts named(String key, String part, List<String> lines) {
    return new AddressParts(
        lines,
        key.equals("city") ? part : city,
        key.equals("region") ? part : region,
        key.equals("postal-code") ? part : postalCode,
        key.equals("country") ? part : country);
  }

  private List<String> without(int index, MatchResult found) {
    List<String> lines = new ArrayList<>(street);
    String line = lines.remove(index);
    String left = tidy(line.substring(0, found.start()) + " " + line.substring(found.end()));
    if (!left.isEmpty()) {
      lines.add(index, left);
    }
    return lines;
  }

  /** A line without the marks that stood round what was taken off it. */
  private static String tidy(String line) {
    return line.replaceAll("\\(\\s*\\)", " ")
        .replaceAll("^[\\s,;/·-]+|[\\s,;/·-]+$", "")
        .replaceAll("\\s*,(\\s*,)+", ",")
        .replaceAll("\\s{2,}", " ");
  }
}
