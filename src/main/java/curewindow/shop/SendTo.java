package curewindow.shop;

import java.net.URI;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * Where the site is sent to.
 *
 * @param to a folder, as {@code file:}, or a folder on a host, as {@code sftp://USER@HOST/FOLDER}
 * @param hostKey the fingerprint of the host's key as OpenSSH writes it, {@code SHA256:} and 43
 *     signs; without it nothing is sent to a host
 * @param keyFile a private key to log in with; a password is never written down
 */
public record SendTo(URI to, Optional<String> hostKey, Optional<Path> keyFile) {

  /** Refuses missing parts. */
  public SendTo {
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(hostKey, "hostKey");
    Objects.requireNonNull(keyFile, "keyFile");
  }

  /** Whether it is a folder on another host. */
  public boolean isOnHost() {
    return to.getScheme().equals("sftp");
  }
}
