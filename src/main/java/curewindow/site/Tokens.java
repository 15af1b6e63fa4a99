package curewindow.site;

import java.security.SecureRandom;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;

/**
 * Makes the secret parts of page addresses: 16 letters and digits, 80 random bits, without the
 * letters that are mistaken for digits or for each other when somebody types them (I, L, O, U).
 */
public final class Tokens {

  static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  static final int LENGTH = 16;

  /** Stands for a token where nothing is written. */
  static final String SAMPLE = "0".repeat(LENGTH);

  private Tokens() {}

  /**
   * A maker of unguessable tokens.
   *
   * @return a supplier fed by the machine's secure random source
   */
  public static Supplier<String> secure() {
    return () -> from(Secure.RANDOM);
  }

  /** Made only when a token is: most commands make none. */
  private static final class Secure {
    static final SecureRandom RANDOM = new SecureRandom();
  }

  static String from(RandomGenerator random) {
    StringBuilder token = new StringBuilder(LENGTH);
    for (int i = 0; i < LENGTH; i++) {
      token.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
    }
    return token.toString();
  }
}
