package curewindow.shop;

import curewindow.problem.Where;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads where the site is sent to, in shop.yaml. */
record SendToReader(Source source) {

  static final Keys KEYS = Keys.needs("to").allows("host-key", "key-file");

  private static final int LONGEST = 300;

  /** A password may have any signs in it, also such as no address can have; none is shown. */
  private static final Pattern PASSWORD = Pattern.compile("sftp://[^/@:]*:.*@");

  private static final Pattern FINGERPRINT = Pattern.compile("SHA256:[A-Za-z0-9+/]{43}=?");

  Optional<SendTo> read(Fields f) {
    Optional<URI> to = f.text("to", LONGEST).flatMap(t -> to(f, t));
    Optional<String> hostKey = f.text("host-key", LONGEST).flatMap(k -> hostKey(f, k));
    Optional<Path> keyFile =
        f.text("key-file", LONGEST).flatMap(k -> absolute("bad-key-file", f.where("key-file"), k));
    return to.map(t -> new SendTo(t, hostKey, keyFile));
  }

  private Optional<URI> to(Fields f, String text) {
    return text.startsWith("sftp:")
        ? host(f, text)
        : absolute("bad-destination", f.where("to"), text).map(Path::toUri);
  }

  private Optional<URI> host(Fields f, String text) {
    String what = "write USER, HOST and folder, such as sftp://quillhaven@files.example/site";
    if (PASSWORD.matcher(text).lookingAt()) {
      source.error(
          "password-written",
          f.where("to"),
          "a password does not belong in shop.yaml",
          "take it out, and put it into the environment as CUREWINDOW_SEND_PASSWORD");
      return Optional.empty();
    }
    try {
      URI uri = new URI(text);
      String user = uri.getUserInfo();
      boolean isWhole = user != null && uri.getHost() != null && uri.getPath().length() > 1;
      if (isWhole && uri.getQuery() == null && uri.getFragment() == null) {
        return Optional.of(uri);
      }
    } catch (URISyntaxException e) {
      // Told below.
    }
    return refuse("bad-destination", f.where("to"), text, what);
  }

  private Optional<String> hostKey(Fields f, String text) {
    return FINGERPRINT.matcher(text).matches()
        ? Optional.of(text.replaceAll("=$", ""))
        : refuse(
            "bad-host-key",
            f.where("host-key"),
            text,
            "write its fingerprint as OpenSSH does, SHA256: and 43 signs");
  }

  private Optional<Path> absolute(String code, Where where, String text) {
    try {
      Path path = Path.of(text);
      if (path.isAbsolute()) {
        return Optional.of(path.normalize());
      }
    } catch (InvalidPathException e) {
      // Told below.
    }
    return refuse(code, where, text, "write the whole path, from the top of the disk");
  }

  private <T> Optional<T> refuse(String code, Where where, String text, String what) {
    source.error(
        code,
        where,
        where.path().replaceFirst(".*[.]", "") + " cannot be used: " + Source.shown(text),
        what);
    return Optional.empty();
  }
}
