package curewindow.handout;

import curewindow.shop.ShopColor;
import curewindow.shop.ShopLook;

/**
 * The one color of a paper beside ink: the shop's own, or the program's. Style sheets name no color
 * for it; what has the class {@code accent} is written and framed in it, what has {@code
 * accent-fill} lies on it.
 */
final class Accent {

  private static final String LIGHT = "#b4451f";
  private static final String DARK = "#f0966f";

  private Accent() {}

  /** The rules for paper, on one line, as lines of style sheets are counted from theirs. */
  static String rules(ShopLook look) {
    return rules(onPaper(look));
  }

  /** The color on paper: red, green and blue, eight bits each. */
  static int bits(ShopLook look) {
    return Integer.parseInt(onPaper(look).substring(1), 16);
  }

  private static String onPaper(ShopLook look) {
    return look.color().map(ShopColor::onLight).orElse(LIGHT);
  }

  /** The rules for a screen, which may be dark; it prints as by day. */
  static String screenRules(ShopLook look) {
    return rules(look)
        + "@media screen and (prefers-color-scheme:dark){"
        + rules(look.color().map(ShopColor::onDark).orElse(DARK))
        + "}";
  }

  private static String rules(String color) {
    return ".accent{color:%1$s;border-color:%1$s}.accent-fill{background-color:%1$s}"
        .formatted(color);
  }
}
