package curewindow.handout;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.view.ViewBox;
import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.OutputDeviceGraphicsDrawer;
import com.openhtmltopdf.render.RenderingContext;
import curewindow.shop.ShopLogo;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import javax.imageio.ImageIO;
import org.w3c.dom.Element;

/**
 * Draws the shop's logo wherever the template has {@code <object type="application/x-logo"/>}, as
 * large as the object's box lets it be, its sides in their ratio: shapes as shapes, dots as dots.
 * It stands in the middle of the box, or with {@code data-at="left"} or {@code "right"} there. In a
 * file it is kept once, however often it is drawn in a size.
 */
final class LogoDrawer implements FSObjectDrawerFactory, FSObjectDrawer {

  /** Dots an inch below which edges look like stairs; rule of printers, no source. */
  static final int FINE = 300;

  private static final String TYPE = "application/x-logo";
  private static final double PIXELS_AN_INCH = 96;

  private final ShopLogo logo;
  private final OutputDeviceGraphicsDrawer picture;
  private double coarsest = Double.MAX_VALUE;

  /** By these very objects the library knows what it has drawn before. */
  private final Map<Size, OutputDeviceGraphicsDrawer> sizes = new HashMap<>();

  /** How large it is drawn, pixels of CSS. */
  private record Size(float across, float down) {}

  LogoDrawer(ShopLogo logo) {
    this.logo = logo;
    this.picture = logo.kind() == ShopLogo.Kind.SVG ? shapes(logo) : dots(logo);
  }

  @Override
  public boolean isReplacedObject(Element e) {
    return e.getAttribute("type").equals(TYPE);
  }

  @Override
  public FSObjectDrawer createDrawer(Element e) {
    return this;
  }

  @Override
  public Map<Shape, String> drawObject(
      Element e,
      double x,
      double y,
      double width,
      double height,
      OutputDevice device,
      RenderingContext context,
      int dotsPerPixel) {
    double scale = Math.min(width / logo.width(), height / logo.height());
    float wide = (float) (scale * logo.width());
    float high = (float) (scale * logo.height());
    if (wide <= 0 || high <= 0) {
      return Map.of();
    }
    double left = x + (width - wide) * place(e.getAttribute("data-at"));
    double top = y + (height - high) / 2;
    coarsest = Math.min(coarsest, PIXELS_AN_INCH * dotsPerPixel / scale);
    // The library takes places in its own dots, and sizes in pixels, of which it cuts off parts.
    Size size = new Size(wide / dotsPerPixel, high / dotsPerPixel);
    OutputDeviceGraphicsDrawer drawn = sizes.computeIfAbsent(size, this::sized);
    float across = (float) Math.ceil(size.across());
    float down = (float) Math.ceil(size.down());
    device.drawWithGraphics((float) left, (float) top, across, down, drawn, drawn);
    return Map.of();
  }

  /** How much of the room that is left stands before the logo. */
  private static double place(String at) {
    return switch (at) {
      case "left" -> 0;
      case "right" -> 1;
      default -> 0.5;
    };
  }

  private OutputDeviceGraphicsDrawer sized(Size size) {
    return graphics -> {
      graphics.scale(size.across() / logo.width(), size.down() / logo.height());
      picture.render(graphics);
    };
  }

  private static OutputDeviceGraphicsDrawer shapes(ShopLogo logo) {
    LoaderContext shut =
        LoaderContext.builder().externalResourcePolicy(ResourcePolicy.DENY_ALL).build();
    SVGDocument document = new SVGLoader().load(new ByteArrayInputStream(logo.bytes()), null, shut);
    if (document == null) {
      throw new IllegalStateException(logo.file() + " was taken as SVG and cannot be drawn");
    }
    ViewBox box = new ViewBox((float) logo.width(), (float) logo.height());
    return graphics -> document.render(null, graphics, box);
  }

  private static OutputDeviceGraphicsDrawer dots(ShopLogo logo) {
    try {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(logo.bytes()));
      return (Graphics2D graphics) -> graphics.drawImage(image, 0, 0, null);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The dots an inch of a logo made of dots where it is coarse on this paper. */
  OptionalInt tooCoarse() {
    return logo.kind() == ShopLogo.Kind.PNG && coarsest < FINE
        ? OptionalInt.of((int) coarsest)
        : OptionalInt.empty();
  }
}
