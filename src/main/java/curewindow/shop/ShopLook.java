package curewindow.shop;

import java.util.Objects;
import java.util.Optional;

/**
 * What makes pages and papers look like the shop's own.
 *
 * @param logo its logo; without one its name stands there
 * @param color its color, in place of the program's
 */
public record ShopLook(Optional<ShopLogo> logo, Optional<ShopColor> color) {

  /** A shop with neither. */
  public static final ShopLook NONE = new ShopLook(Optional.empty(), Optional.empty());

  /** Refuses missing parts. */
  public ShopLook {
    Objects.requireNonNull(logo, "logo");
    Objects.requireNonNull(color, "color");
  }
}
