package curewindow.handout;

import java.io.IOException;

/** That a page has something that the inks chosen cannot print. */
final class Unprintable extends IOException {

  private static final long serialVersionUID = 1L;

  private final String fix;

  /**
   * Something that cannot be printed.
   *
   * @param what what is wrong, for the user
   * @param fix what to do instead
   */
  Unprintable(String what, String fix) {
    super(what);
    this.fix = fix;
  }

  String fix() {
    return fix;
  }
}
