package curewindow.handout;

import java.io.IOException;

/** That a page has something that the inks chosen cannot print. */
final class Unprintable extends IOException {

  private static final long serialVersionUID = 1L;

  private final String fix;
  private final boolean inLogo;

  /**
   * Something that cannot be printed.
   *
   * @param what what is wrong, for the user
   * @param fix what to do instead
   */
  Unprintable(String what, String fix) {
    this(what, fix, false);
  }

  private Unprintable(String what, String fix, boolean inLogo) {
    super(what);
    this.fix = fix;
    this.inLogo = inLogo;
  }

  /** The same, found within the shop's logo. */
  Unprintable ofLogo() {
    return new Unprintable(getMessage(), fix, true);
  }

  boolean isInLogo() {
    return inLogo;
  }

  String fix() {
    return fix;
  }
}
