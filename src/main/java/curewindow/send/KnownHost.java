package curewindow.send;

import com.jcraft.jsch.HostKey;
import com.jcraft.jsch.HostKeyRepository;
import com.jcraft.jsch.UserInfo;
import curewindow.shop.Sha256;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;

/** Holds a host's key against the fingerprint that the shop wrote down. */
final class KnownHost implements HostKeyRepository {

  private final Optional<String> expected;
  private String shown = "";

  KnownHost(Optional<String> expected) {
    this.expected = expected;
  }

  /** Whether the host has shown the key that was expected. */
  boolean isKnown() {
    return expected.filter(shown::equals).isPresent();
  }

  /** Whether the host has shown another key, or any where none was expected. */
  boolean isOther() {
    return !shown.isEmpty() && !isKnown();
  }

  /** What to tell the user about another key. */
  SendTrouble refusal(String host, Exception cause) {
    String text =
        expected.isEmpty()
            ? "shop.yaml does not say by which key %s is known; it shows %s. Compare that with what"
                + " your host says, then add it under send: host-key: %2$s"
            : "%s shows another key than shop.yaml says, %s. Nothing was sent. Ask your host"
                + " whether its key is new before you change host-key under send";
    return new SendTrouble(
        expected.isEmpty() ? SendTrouble.Kind.NO_KEY : SendTrouble.Kind.OTHER_KEY,
        Map.of("host", host, "key", shown),
        text.formatted(host, shown),
        cause);
  }

  @Override
  public int check(String host, byte[] key) {
    // As OpenSSH writes it: SHA-256 in base64 (RFC 4648) without padding.
    shown = "SHA256:" + Base64.getEncoder().withoutPadding().encodeToString(Sha256.of(key));
    return isKnown() ? OK : CHANGED;
  }

  @Override
  public void add(HostKey hostKey, UserInfo user) {
    throw new UnsupportedOperationException("a key is added by the shop, to shop.yaml");
  }

  @Override
  public void remove(String host, String type) {
    throw new UnsupportedOperationException("a key is taken out by the shop, from shop.yaml");
  }

  @Override
  public void remove(String host, String type, byte[] key) {
    remove(host, type);
  }

  @Override
  public String getKnownHostsRepositoryID() {
    return "shop.yaml";
  }

  @Override
  public HostKey[] getHostKey() {
    return new HostKey[0];
  }

  @Override
  public HostKey[] getHostKey(String host, String type) {
    return new HostKey[0];
  }
}
