package curewindow.page;

import curewindow.shop.ShopLook;

/** What the style of all pages has that is a shop's own: its color, and where its logo stands. */
final class HouseStyle {

  private static final String COLOR =
      ":root{--stamp:%s}@media (prefers-color-scheme:dark){:root{--stamp:%s}}\n";

  /** A logo is drawn for light grounds, so it keeps one in the dark; on paper all grounds are. */
  private static final String LOGO =
      """
      .mast:has(.logo){align-items:center}
      .logo{display:block;height:2rem;width:auto;max-width:100%;object-fit:contain;margin:-.3rem 0}
      @media screen and (prefers-color-scheme:dark){.logo{--plate:#f3f2ea;background:var(--plate);padding:.2rem .4rem;border-radius:.3rem}}
      """;

  private HouseStyle() {}

  static String of(ShopLook look) {
    return look.color().map(c -> COLOR.formatted(c.onLight(), c.onDark())).orElse("")
        + (look.logo().isPresent() ? LOGO : "");
  }
}
