package curewindow.desk;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a browser asks for.
 *
 * @param isPost whether it wants something done
 * @param path the path, decoded, such as {@code /job/Q-3101}
 * @param query the values behind the path
 * @param form the values of the form, in their order
 * @param cookies by name
 * @param site where this browser is shown the customers' site, a path that ends in a slash
 */
record Request(
    boolean isPost,
    String path,
    Values query,
    Values form,
    Map<String, String> cookies,
    String site) {

  /** Where a browser that carries what lets it in is shown the customers' site. */
  static final String SITE = "/site/";

  Request(boolean isPost, String path, Values query, Values form, Map<String, String> cookies) {
    this(isPost, path, query, form, cookies, SITE);
  }

  /** An address of the desk's own, and none elsewhere. */
  private static final Pattern OWN = Pattern.compile("/([\\w?=&%+.~*-][\\w/?=&%+.~*-]*)?");

  /** Whether a browser that is sent to an address stays at the desk. */
  static boolean isOwn(String address) {
    return OWN.matcher(address).matches();
  }

  /** Whether it comes from the machine on which the desk runs. */
  boolean isOwn() {
    return site.equals(SITE);
  }

  Request withSite(String other) {
    return new Request(isPost, path, query, form, cookies, other);
  }

  /** The button by which a form asks to be shown in another language, which is its value. */
  static final String SPEAK = "speak";

  /** What a form that is shown again does instead of what its buttons say. */
  private static final String AGAIN = "again";

  /**
   * The same in another language: a form is shown again with all that is in it, nothing is done.
   */
  Request in(String language) {
    String again = form.has(AGAIN) ? form.one(AGAIN) : "look";
    return new Request(
        isPost, path, query, form.with("do", again), Values.with(cookies, "language", language));
  }

  /** Where it is asked, with its query, but for what was just done. */
  String here() {
    String values =
        query.all().entrySet().stream()
            .filter(e -> !e.getKey().equals("done"))
            .flatMap(e -> e.getValue().stream().map(v -> coded(e.getKey()) + "=" + coded(v)))
            .collect(Collectors.joining("&"));
    String at =
        Arrays.stream(path.split("/", -1)).map(Request::coded).collect(Collectors.joining("/"));
    return values.isEmpty() ? at : at + "?" + values;
  }

  private static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  /** Values by name; a name may stand several times. */
  record Values(Map<String, List<String>> all) {

    private static final int LONGEST = 2000;
    private static final Pattern LINE_ENDS = Pattern.compile("[\\r\\n]+");

    static final Values NONE = new Values(Map.of());

    /** Values as URLs and forms write them (WHATWG URL, application/x-www-form-urlencoded). */
    static Values of(String encoded) {
      Map<String, List<String>> all = new LinkedHashMap<>();
      for (String pair : encoded.split("&")) {
        int sign = pair.indexOf('=');
        if (sign > 0) {
          String name = decoded(pair.substring(0, sign));
          all.computeIfAbsent(name, n -> new ArrayList<>()).add(decoded(pair.substring(sign + 1)));
        }
      }
      return new Values(all);
    }

    private static String decoded(String text) {
      try {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
      } catch (IllegalArgumentException e) {
        return "";
      }
    }

    /**
     * The first value of a name, without line ends; empty where there is none. No line that a
     * person types is longer than what is left of it, which its reader then finds too long.
     */
    String one(String name) {
      List<String> values = all.getOrDefault(name, List.of());
      return values.isEmpty() ? "" : LINE_ENDS.matcher(cut(values.get(0))).replaceAll(" ").strip();
    }

    private static String cut(String text) {
      return text.length() > LONGEST ? text.substring(0, LONGEST) : text;
    }

    List<String> list(String name) {
      return all.getOrDefault(name, List.of());
    }

    Values with(String name, String value) {
      return new Values(with(all, name, List.of(value)));
    }

    private static <T> Map<String, T> with(Map<String, T> all, String name, T value) {
      Map<String, T> more = new LinkedHashMap<>(all);
      more.put(name, value);
      return more;
    }

    boolean has(String name) {
      return all.containsKey(name);
    }
  }
}
