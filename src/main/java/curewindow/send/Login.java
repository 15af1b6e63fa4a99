package curewindow.send;

import java.util.Optional;

/**
 * The secrets with which the program logs in at a host. They come from the environment and are
 * never written down.
 *
 * @param password the password of the user
 * @param passphrase what the key file is locked with
 */
public record Login(Optional<String> password, Optional<String> passphrase) {

  /** The variable of the environment that has the password. */
  public static final String PASSWORD = "CUREWINDOW_SEND_PASSWORD";

  /** The variable of the environment that has the passphrase of the key file. */
  public static final String PASSPHRASE = "CUREWINDOW_SEND_PASSPHRASE";

  /**
   * The secrets that the environment has.
   *
   * @return what is there of them
   */
  public static Login ofEnvironment() {
    return new Login(
        Optional.ofNullable(System.getenv(PASSWORD)),
        Optional.ofNullable(System.getenv(PASSPHRASE)));
  }

  /** Does not tell the secrets. */
  @Override
  public String toString() {
    return "Login";
  }
}
