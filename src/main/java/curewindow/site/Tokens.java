package curewindow.site;

import java.security.SecureRandom;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;
import java.util.regex.Pattern;

/**
 * Makes the secret parts of page addresses: 20 letters and digits, 100 random bits, without the
 * letters that are mistaken for digits or for each other when somebody types them (I, L, O, U).
 * Earlier versions made 16, which stay as they are.
 */
public final class Tokens {

  static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  static final int LENGTH = 20;
  private static final int LENGTH_BEFORE = 16;

  /** Stands for a token where nothing is written. */
  static final String SAMPLE = "0".repeat(LENGTH);

  private static final Pattern FORM =
      Pattern.compile(
          "["
              + ALPHABET
              + "]{"
              + LENGTH_BEFORE
              + "}(["
              + ALPHABET
              + "]{"
              + (LENGTH - LENGTH_BEFORE)
              + "})?");

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

  /** Whether this or an earlier version made it. */
  static boolean isToken(String text) {
    return FORM.matcher(text).matches();
  }

  static String from(RandomGenerator random) {
    StringBuilder token = new StringBuilder(LENGTH);
    for (int i = 0; i < LENGTH; i++) {
      token.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
    }
    return token.toString();
  }
}
