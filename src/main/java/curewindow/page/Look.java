package curewindow.page;

import curewindow.problem.Problems;
import curewindow.shop.ShopFiles;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * The style and script that stand inside every page, and the content security policy that allows
 * exactly these two by their hashes (W3C Content Security Policy Level 3) and nothing else.
 *
 * @param style the style sheet
 * @param script the script; may be empty
 * @param policy the policy
 */
record Look(String style, String script, String policy) {

  static Look read(ShopFiles files, Problems problems) {
    String style = files.text(Templates.FOLDER + "/page.css", problems).orElse("");
    String script = files.text(Templates.FOLDER + "/page.js", problems).orElse("");
    return of(Slim.style(style), Slim.script(script));
  }

  static Look of(String style, String script) {
    return new Look(
        style,
        script,
        "default-src 'none'; style-src "
            + hash(style)
            + "; script-src "
            + (script.isEmpty() ? "'none'" : hash(script))
            + "; img-src data:; base-uri 'none'; form-action 'none'");
  }

  /** The same look without a script. */
  Look still() {
    return of(style, "");
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
