package curewindow.handout;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A page's address as it stands on paper. Scheme and host do not distinguish capitals (RFC 3986
 * section 6.2.2.1) and are set in capitals in the code, which makes it smaller; the path is left as
 * it is.
 *
 * @param code what the QR code says
 * @param site the host and folders that people type first, such as {@code care.example/C/}
 * @param groups the secret part in groups of at most four letters
 */
record PrintedAddress(String code, String site, List<String> groups) {

  private static final int GROUP = 4;

  /** A part of an address that is longer may be broken anywhere. */
  private static final int LONGEST_RUN = 12;

  PrintedAddress {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(site, "site");
    groups = List.copyOf(groups);
  }

  /**
   * The printed form of an address.
   *
   * @throws IllegalArgumentException where it has no scheme or host
   */
  static PrintedAddress of(URI address) {
    if (address.getScheme() == null || address.getRawAuthority() == null) {
      throw new IllegalArgumentException("address " + address + " has no scheme or host");
    }
    String start = address.getScheme() + "://" + address.getRawAuthority();
    String rest = address.toString().substring(start.length());
    String path = rest.endsWith("/") ? rest.substring(0, rest.length() - 1) : rest;
    int last = path.lastIndexOf('/') + 1;
    return new PrintedAddress(
        start.toUpperCase(Locale.ROOT) + rest,
        address.getRawAuthority().toLowerCase(Locale.ROOT) + path.substring(0, last),
        grouped(path.substring(last)));
  }

  /**
   * The site with {@link TextBox#MAY_BREAK} wherever a line may end that is too short for it: after
   * a slash, and before a dot or hyphen, so that nobody takes it for the end of a sentence or of a
   * part of a word.
   */
  String brokenSite() {
    StringBuilder broken = new StringBuilder();
    int run = 0;
    for (int i = 0; i < site.length(); i++) {
      char sign = site.charAt(i);
      boolean ends = ".-".indexOf(sign) >= 0 || i > 0 && site.charAt(i - 1) == '/';
      if (i > 0 && (ends || run == LONGEST_RUN)) {
        broken.append(TextBox.MAY_BREAK);
        run = 0;
      }
      broken.append(sign);
      run++;
    }
    return broken.toString();
  }

  private static List<String> grouped(String secret) {
    List<String> groups = new ArrayList<>();
    for (int at = 0; at < secret.length(); at += GROUP) {
      groups.add(secret.substring(at, Math.min(secret.length(), at + GROUP)));
    }
    return groups;
  }
}
