package curewindow.shop;

import java.util.regex.Pattern;

/** Text of a shop's own that stands inside an element of a page, and must not end it. */
public final class InPage {

  private static final Pattern END =
      Pattern.compile("</(?=style|script)", Pattern.CASE_INSENSITIVE);

  private InPage() {}

  /**
   * A style sheet or script that cannot close the element it stands in. In its strings, the only
   * place where an end tag has a meaning, it is the same text as before.
   *
   * @param text CSS or JavaScript
   * @return the same with the slash of such end tags escaped
   */
  public static String kept(String text) {
    return END.matcher(text).replaceAll("<\\\\/");
  }
}
