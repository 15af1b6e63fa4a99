package curewindow.page;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What lets a phone keep a job's pages on its home screen (W3C Web Application Manifest) and open
 * them without a network (W3C Service Workers).
 */
public final class HomeScreen {

  /** The manifest's file, beside the page. */
  static final String MANIFEST = "care.webmanifest";

  /** The file of the script that keeps a copy, beside the page, as it may serve its folder only. */
  static final String WORKER = "offline.js";

  private final String worker;

  private HomeScreen(String worker) {
    this.worker = worker;
  }

  /**
   * Reads the script that keeps a copy.
   *
   * @param files the shop folder laid over the program's own files
   * @param problems where it is said that it is missing or cannot be read
   * @return what makes the two files
   */
  public static HomeScreen read(ShopFiles files, Problems problems) {
    return new HomeScreen(
        Slim.script(files.text(Templates.FOLDER + "/offline.js", problems).orElse("")));
  }

  /**
   * The two files. The script is told which files to keep from the start, the pages and the
   * calendars of all dates, and of which version they are; what else is opened is kept then.
   *
   * @param view the job as the shop noted it
   * @param files all other files of its folder, those of other parkings among them, by name
   * @return {@code care.webmanifest} and {@code offline.js}
   */
  public Map<String, String> files(JobView view, SortedMap<String, String> files) {
    SortedMap<String, String> kept = new TreeMap<>(files);
    kept.put(MANIFEST, manifest(view));
    String names =
        kept.keySet().stream()
            .filter(name -> !name.endsWith(".ics") || name.endsWith("care.ics"))
            .map(name -> quoted("./" + name.replaceFirst("(^|/)index\\.html$", "$1")))
            .collect(Collectors.joining(","));
    String lines =
        ",LANG="
            + quoted(view.words().language())
            + ",KEPT="
            + quoted(view.words().text("page.kept", Map.of("day", "{day}")))
            + ";\n";
    String head = "var VERSION=" + quoted(version(kept)) + ",FILES=[" + names + "]" + lines;
    return Map.of(MANIFEST, kept.get(MANIFEST), WORKER, head + worker + "\n");
  }

  private static String manifest(JobView view) {
    String car = view.car();
    return "{"
        + ("\"name\":" + quoted(car + ", " + view.shop().name()))
        + (",\"short_name\":" + quoted(car))
        + (",\"lang\":" + quoted(view.words().language()))
        + (",\"dir\":" + quoted(view.words().rightToLeft() ? "rtl" : "ltr"))
        + ",\"start_url\":\"./\",\"scope\":\"./\",\"display\":\"standalone\""
        + ",\"background_color\":\"#f3f2ea\",\"theme_color\":\"#f3f2ea\",\"icons\":["
        + (icon(180) + "," + icon(512))
        + "]}\n";
  }

  private static String icon(int size) {
    return "{\"src\":\"../../icon-%d.png\",\"sizes\":\"%<dx%<d\",\"type\":\"image/png\"}"
        .formatted(size);
  }

  /** A JSON string (RFC 8259 section 7), which is one of JavaScript, too. */
  private static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (char c : text.toCharArray()) {
      boolean plain = c >= ' ' && c < 0x7F && c != '"' && c != '\\' && c != '<';
      out.append(plain ? String.valueOf(c) : "\\u%04x".formatted((int) c));
    }
    return out.append('"').toString();
  }

  /** Changes with the content of any file. */
  private String version(SortedMap<String, String> files) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      digest.update(worker.getBytes(StandardCharsets.UTF_8));
      files.forEach(
          (name, text) -> digest.update((name + "\0" + text).getBytes(StandardCharsets.UTF_8)));
      return HexFormat.of().formatHex(digest.digest(), 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
