package curewindow.shop;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

/** Shops with a look of their own, for tests. */
public final class Looks {

  private Looks() {}

  /** A new shop in a folder, with some lines more in its shop.yaml. */
  static ShopRead read(Path folder, String lines) throws IOException {
    Path shop = folder.resolve("shop.yaml");
    if (!Files.exists(shop)) {
      NewShop.write(folder);
    }
    String text = NewShop.text("shop.yaml");
    Files.writeString(shop, text + lines + "\n");
    return ShopFolder.read(new ShopFiles(folder), Instant.parse("2026-11-25T00:00:00Z"));
  }

  /** A shop of that color. */
  public static ShopLook color(Path folder, String hex) throws IOException {
    return read(folder, "color: \"" + hex + '"').shop().orElseThrow().look();
  }

  /** A shop with that logo, and a color. */
  public static ShopLook logo(Path folder, String name, byte[] bytes) throws IOException {
    NewShop.write(folder);
    Files.write(folder.resolve(name), bytes);
    return read(folder, "color: \"#0b5d57\"\nlogo: " + name).shop().orElseThrow().look();
  }

  /** The same of an SVG. */
  public static ShopLook svg(Path folder, String svg) throws IOException {
    return logo(folder, "logo.svg", svg.getBytes(StandardCharsets.UTF_8));
  }
}
