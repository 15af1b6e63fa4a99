package curewindow.shop;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The hash SHA-256 (FIPS 180-4), which every Java has. */
public final class Sha256 {

  private Sha256() {}

  /**
   * The hash of some bytes.
   *
   * @param bytes any
   * @return 32 bytes
   */
  public static byte[] of(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /**
   * The hash of a text in UTF-8.
   *
   * @param text any
   * @return 32 bytes
   */
  public static byte[] of(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }
}
