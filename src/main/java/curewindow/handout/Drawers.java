package curewindow.handout;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;

/**
 * Several drawers as one, as the library takes only one.
 *
 * @param all each for objects of its own type
 */
record Drawers(List<FSObjectDrawerFactory> all) implements FSObjectDrawerFactory {

  /** For objects that are nobody's, such as the logo of a shop that has none. */
  private static final FSObjectDrawer NOTHING =
      (e, x, y, width, height, device, context, dotsPerPixel) -> Map.of();

  @Override
  public boolean isReplacedObject(Element e) {
    return all.stream().anyMatch(d -> d.isReplacedObject(e));
  }

  @Override
  public FSObjectDrawer createDrawer(Element e) {
    return all.stream()
        .filter(d -> d.isReplacedObject(e))
        .findFirst()
        .map(d -> d.createDrawer(e))
        .orElse(NOTHING);
  }
}
