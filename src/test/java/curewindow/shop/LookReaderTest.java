package curewindow.shop;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code logo} and {@code color} of shop.yaml; the files of logos are not to be trusted. */
class LookReaderTest {

  private static final String OPEN =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 90 30\"";

  @TempDir Path temp;

  private Path shop() {
    return temp.resolve("shop");
  }

  private ShopRead read(String lines) throws IOException {
    return Looks.read(shop(), lines);
  }

  private ShopRead svg(String text) throws IOException {
    NewShop.write(shop());
    Files.writeString(shop().resolve("logo.svg"), text);
    return read("logo: logo.svg");
  }

  private static String clean(ShopRead read) {
    assertEquals(List.of(), TestShops.lines(read));
    return new String(
        read.shop().orElseThrow().look().logo().orElseThrow().bytes(), StandardCharsets.UTF_8);
  }

  /** The one error; the shop goes on without. */
  private static String refused(ShopRead read) {
    List<String> lines = TestShops.lines(read);
    assertEquals(1, lines.size(), lines.toString());
    ShopLook look = read.shop().orElseThrow().look();
    assertEquals(ShopLook.NONE, look);
    assertFalse(read.jobs().isEmpty());
    return lines.get(0);
  }

  @Test
  void aShopWithoutALookHasNone() throws IOException {
    ShopRead read = read("");
    assertEquals(List.of(), TestShops.lines(read));
    assertEquals(ShopLook.NONE, read.shop().orElseThrow().look());
  }

  @Test
  void aColorThatCanBeReadIsTaken() throws IOException {
    ShopColor color = Looks.color(shop(), "#0b5d57").color().orElseThrow();
    assertEquals("#0b5d57", color.onLight());
  }

  @Test
  void aColorThatCannotBeReadIsRefusedWithTheNearest() throws IOException {
    String line = refused(read("color: \"#f0a030\""));
    assertTrue(
        line.matches(
            "shop\\.yaml:\\d+:8 {2}text in the color #f0a030 has a contrast of 1\\.9\\d to 1 on a page,"
                + " under 4\\.5 {2}the nearest that can be read is (#[0-9a-f]{6}); write color: \"\\1\""),
        line);
    String nearest = line.replaceAll(".*is (#[0-9a-f]{6});.*", "$1");
    assertEquals(nearest, Looks.color(shop(), nearest).color().orElseThrow().onLight());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"color: teal", "color: \"0b5d57\"", "color: \"#0b5d5\"", "color: #0b5d57"})
  void whatIsNoColorIsToldWithQuotes(String line) throws IOException {
    assertTrue(
        refused(read(line)).endsWith("write it in quotes, such as color: \"#0b5d57\""), line);
  }

  @Test
  void theOtherSpellingIsPutRight() throws IOException {
    assertTrue(TestShops.lines(read("colour: \"#0b5d57\"")).get(0).endsWith("did you mean color?"));
  }

  @Test
  void theLogoOfTheDemoIsTaken() throws IOException {
    String text = Files.readString(Path.of("content/demo/logo.svg"));
    String clean = clean(svg(text));
    assertTrue(clean.startsWith(OPEN.replace("90 30", "64 64")), clean);
    assertFalse(clean.contains("<!--"), clean);
    assertEquals(
        text.split("<(path|circle) ").length, clean.split("<(path|circle) ").length, clean);
  }

  @Test
  void whatDrawsIsWrittenAnewAndWhatDoesNotShowIsLeftOut() throws IOException {
    String text =
        """
        <?xml version="1.0"?>
        <!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
        <svg xmlns="http://www.w3.org/2000/svg" xmlns:ink="https://drawing.example/" width="90mm" height="30mm"
            onload="alert(1)" data-by="somebody">
          <title>Mine</title><metadata><ink:who>Somebody</ink:who></metadata>
          <ink:view zoom="2"><path d="M0 0h9"/></ink:view>
          <defs><linearGradient id="a"><stop offset="0" style="stop-color:#0b5d57; -ink-font: x"/></linearGradient>
          <linearGradient id="b" xlink:href="#a" xmlns:xlink="http://www.w3.org/1999/xlink"/></defs>
          <rect width="9" height="3" onclick="alert(2)" style="fill:url('#b');stroke:none" fill="red"/>
        </svg>
        """;
    assertEquals(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 90 30\" width=\"90\" height=\"30\">"
            + "<defs><linearGradient id=\"a\"><stop offset=\"0\" stop-color=\"#0b5d57\"></stop>"
            + "</linearGradient><linearGradient href=\"#a\" id=\"b\"></linearGradient></defs>"
            + "<rect fill=\"url(#b)\" height=\"3\" stroke=\"none\" width=\"9\"></rect></svg>\n",
        clean(svg(text)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "<g><script href='https://bad.example/x.js'/></g>",
        "<foreignObject width='9' height='9'><p xmlns='http://www.w3.org/1999/xhtml'>x</p></foreignObject>",
        "<image href='https://bad.example/x.png' width='9' height='9'/>",
        "<image href='data:image/png;base64,AAAA' width='9' height='9'/>",
        "<use href='#a'/>",
        "<style>@import 'https://bad.example/x.css'</style>",
        "<a href='javascript:alert(1)'><rect width='1' height='1'/></a>",
        "<animate attributeName='href' values='javascript:alert(1)'/>",
        "<text>Quillhaven</text>",
        "<filter id='f'/>",
        "<svg><rect width='1' height='1'/></svg>",
        "<rect width='1' height='1' fill='url(https://bad.example/p.svg#a)'/>",
        "<rect width='1' height='1' style='fill:url(//bad.example/p.svg#a)'/>",
        "<rect width='1' height='1' style='fill:u\\72l(x)'/>",
        "<rect width='1' height='1' fill='&quot;&gt;&lt;script&gt;'/>",
        "<rect width='1' height='1' filter='url(#f)'/>",
        "<path d='M0 0h1e9'/>",
        "<path d='M0 0h9' stroke='red' stroke-dasharray='0.00001'/>",
        "<linearGradient id='a' href='#b'/><linearGradient id='b' href='#a'/>",
        "<linearGradient id='a' href='other.svg#b'/>",
        "<g id='a'/><g id='a'/>",
        "<clipPath id='a' clip-path='url(#a)'><path d='M0 0h9'/></clipPath>"
      })
  void whatIsHostileOrCannotBeDrawnIsRefusedWithItsLine(String inside) throws IOException {
    String line = refused(svg(OPEN + ">\n" + inside + "\n</svg>"));
    assertTrue(line.matches("logo\\.svg:[23]:1 {2}.*"), line);
    assertTrue(line.contains("save it as a plain SVG of paths"), line);
  }

  @ParameterizedTest
  @CsvSource({
    "<p>no</p>,does not begin with <svg",
    "<svg viewBox='0 0 9 9'/>,does not begin with <svg",
    "<svg xmlns='http://www.w3.org/2000/svg'/>,size of the logo is not known",
    "<svg xmlns='http://www.w3.org/2000/svg' width='100%' height='9'/>,size of the logo is not known",
    "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 900 9'/>,is 900 wide and 9 high",
    "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 NaN 9'/>,size of the logo is not known",
    "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 9 9'>,no SVG that can be read",
    "'',no SVG that can be read"
  })
  void whatIsNoLogoIsRefused(String text, String message) throws IOException {
    assertTrue(refused(svg(text)).contains(message), text);
  }

  /** The "billion laughs", and an entity that is another file. */
  @Test
  void entitiesAreNotFollowed() throws IOException {
    Path secret = Files.writeString(temp.resolve("secret"), "0 0h9");
    for (String entity :
        List.of("'ha'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;'", "SYSTEM '" + secret.toUri() + "'")) {
      String text = "<!DOCTYPE svg [<!ENTITY a " + entity + ">]>" + OPEN + "><g>&a;</g></svg>";
      String line = refused(svg(text));
      assertTrue(line.startsWith("logo.svg:"), line);
      refused(svg(text.replace("<g>&a;</g>", "<path d='M&a;'/>")));
    }
  }

  @Test
  void manyShapesAndDeepOnesAreRefused() throws IOException {
    clean(svg(OPEN + ">" + "<path d=\"M0 0h9\"/>".repeat(500) + "</svg>"));
    refused(svg(OPEN + ">" + "<path d=\"M0 0h9\"/>".repeat(501) + "</svg>"));
    refused(svg(OPEN + ">" + "<g>".repeat(25) + "</g>".repeat(25) + "</svg>"));
    String heavy = OPEN + "><path d=\"M0 0" + "h9".repeat(40_000) + "\"/></svg>";
    assertTrue(refused(svg(heavy)).contains("bytes, more than 65536"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../logo.svg",
        "/etc/logo.svg",
        "a/../../logo.svg",
        "logo.gif",
        ".hidden/logo.svg",
        "\"C:\\\\logo.svg\"",
        "https://bad.example/logo.svg",
        "link/logo.svg",
        "link.svg"
      })
  void noFileOutsideOfTheShopFolderIsRead(String name) throws IOException {
    NewShop.write(shop());
    Path outside = Files.createDirectories(temp.resolve("outside"));
    for (Path place : List.of(temp, outside)) {
      Files.writeString(place.resolve("logo.svg"), OPEN + "></svg>");
    }
    Files.createSymbolicLink(shop().resolve("link"), outside);
    Files.createSymbolicLink(shop().resolve("link.svg"), outside.resolve("logo.svg"));
    assertTrue(
        refused(read("logo: " + name)).contains("logo names no SVG or PNG of the shop folder"),
        name);
  }

  @Test
  void aFileThatIsNotThereIsTold() throws IOException {
    assertTrue(refused(read("logo: signs/logo.svg")).contains("there is no file signs/logo.svg"));
    Files.createDirectories(shop().resolve("signs/logo.svg"));
    assertTrue(refused(read("logo: signs/logo.svg")).contains("there is no file signs/logo.svg"));
  }

  static byte[] png(int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    for (int x = 0; x < width; x++) {
      for (int y = height / 4; y < height * 3 / 4; y++) {
        image.setRGB(x, y, 0xFF0B5D57);
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  /** A chunk of text, as cameras and programs write it, right behind the first chunk. */
  private static byte[] withNote(byte[] png, String note) {
    byte[] data = ("tEXtComment\0" + note).getBytes(StandardCharsets.ISO_8859_1);
    CRC32 sum = new CRC32();
    sum.update(data);
    int head = 8 + 25;
    return ByteBuffer.allocate(png.length + data.length + 8)
        .put(png, 0, head)
        .putInt(data.length - 4)
        .put(data)
        .putInt((int) sum.getValue())
        .put(png, head, png.length - head)
        .array();
  }

  @Test
  void ofAPngOnlyItsPictureIsTaken() throws IOException {
    byte[] plain = png(120, 40);
    byte[] noted = withNote(plain, "at home, 18 Tern Yard");
    assertTrue(ImageIO.read(new ByteArrayInputStream(noted)) != null);
    ShopLogo logo = Looks.logo(shop(), "logo.png", noted).logo().orElseThrow();
    assertArrayEquals(plain, logo.bytes());
    assertEquals("logo.png", logo.name());
    assertEquals(120, logo.width());
  }

  @Test
  void aTornPngIsRefused() throws IOException {
    byte[] good = png(120, 40);
    NewShop.write(shop());
    byte[] flipped = good.clone();
    flipped[good.length / 2] ^= 1;
    for (byte[] bad :
        List.of(
            new byte[0],
            Arrays.copyOf(good, good.length - 5),
            flipped,
            png(120, 9),
            png(2001, 400),
            OPEN.getBytes(StandardCharsets.UTF_8))) {
      Files.write(shop().resolve("logo.png"), bad);
      String line = refused(read("logo: logo.png"));
      assertTrue(line.startsWith("logo.png  the logo "), line);
    }
  }
}
